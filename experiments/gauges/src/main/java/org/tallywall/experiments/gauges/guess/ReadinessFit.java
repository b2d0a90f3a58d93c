package org.tallywall.experiments.gauges.guess;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.tallywall.core.card.CardFile;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.hand.NearHands;
import org.tallywall.core.hand.RackMeter;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.Seats;
import org.tallywall.core.tile.Rack;
import org.tallywall.strategies.read.OpponentReader;
import org.tallywall.strategies.read.Readiness;
import org.tallywall.strategies.read.Tells;

/**
 * Fits how likely a player is one away by what can be seen of her, and writes the table; then tries
 * it on further deals of the same games, and on a card that it was not fitted to.
 */
public final class ReadinessFit {
  private static final int EVERY = 5;
  private static final double PENALTY = 1;
  private static final int FRESH = 1_000_000;

  private ReadinessFit() {}

  /** Whether an opponent is one away, and what can be seen of her. */
  private record Seen(int shown, int[] places, float[] values, boolean ready) {}

  /**
   * Plays, fits and writes.
   *
   * @param args the table, the seed, how many games of each kind on each card, the kinds of players
   *     with commas between them, the files of the cards to fit on, and last the one to try it on
   * @throws IOException if a card cannot be read or the table not be written
   */
  public static void main(String[] args) throws IOException {
    long seed = Long.parseLong(args[1]);
    int games = Integer.parseInt(args[2]);
    List<String> kinds = List.of(args[3].split(","));
    List<String> files = Arrays.asList(args).subList(4, args.length);
    int names = Tells.names().size();
    ConditionalLogit base = new ConditionalLogit(names);
    ConditionalLogit all = new ConditionalLogit(names);
    for (String kind : kinds) {
      for (String file : files.subList(0, files.size() - 1)) {
        for (Seen seen : play(file, kind, seed, 0, games)) {
          add(base, seen, Tells.base());
          add(all, seen, names);
        }
      }
    }
    double[] byBase = base.fit(PENALTY);
    double[] byAll = all.fit(PENALTY);
    write(Path.of(args[0]), args, files, byBase, byAll);
    Readiness fitted = Readiness.of(byBase, byAll);
    for (String file : files) {
      for (String kind : kinds) {
        tryOut(file, kind, play(file, kind, seed, FRESH, games / 2), fitted);
      }
    }
  }

  private static List<Seen> play(String file, String kind, long seed, int from, int games)
      throws IOException {
    ConcreteHands card = new ConcreteHands(CardFile.read(Path.of(file)).orThrow());
    OpponentReader reader = new OpponentReader();
    Tells tells = new Tells();
    RackMeter meter = new RackMeter();
    NearHands near = new NearHands();
    List<Seen> all = new ArrayList<>();
    new SeenPositions(card, kind, seed, EVERY)
        .play(
            from,
            games,
            (view, racks, random) -> {
              if (view.offered() < 0) {
                reader.look(view);
                for (int other = 0; other < Seats.COUNT; other++) {
                  if (other != view.seat() && !view.dead(other)) {
                    tells.look(view, other, reader);
                    all.add(seen(view, other, tells, ready(view, other, racks, meter, near)));
                  }
                }
              }
            },
            () -> {});
    return all;
  }

  private static boolean ready(
      SeatView view, int other, List<Rack> racks, RackMeter meter, NearHands near) {
    meter.hold(racks.get(other), view.reach(other));
    meter.nearest(0, near);
    return near.least() == 1;
  }

  private static Seen seen(SeatView view, int other, Tells tells, boolean ready) {
    int count = 0;
    int[] places = new int[Tells.names().size()];
    float[] values = new float[places.length];
    for (int at = 0; at < places.length; at++) {
      if (tells.value(at) != 0) {
        places[count] = at;
        values[count++] = (float) tells.value(at);
      }
    }
    return new Seen(
        view.exposures(other).size(),
        Arrays.copyOf(places, count),
        Arrays.copyOf(values, count),
        ready);
  }

  /** A yes or no is a choice between what is seen and nothing. */
  private static void add(ConditionalLogit model, Seen seen, int names) {
    int count = 0;
    while (count < seen.places().length && seen.places()[count] < names) {
      count++;
    }
    int[] places = Arrays.copyOf(seen.places(), count);
    float[] values = Arrays.copyOf(seen.values(), count);
    model.beginSet();
    if (seen.ready()) {
      model.add(places, values, 0);
      model.add(new int[0], new float[0], 0);
    } else {
      model.add(new int[0], new float[0], 0);
      model.add(places, values, 0);
    }
  }

  private static void write(
      Path table, String[] args, List<String> files, double[] base, double[] all)
      throws IOException {
    StringBuilder text = new StringBuilder();
    text.append(
        String.format(
            Locale.ROOT,
            "# How likely a player is one away, by what can be seen of her (Readiness).%n"
                + "# Written by strategies/fit-readiness %s %s: %s; %s; every %dth question.%n",
            args[1],
            args[2],
            args[3],
            String.join(
                ", ",
                files.subList(0, files.size() - 1).stream()
                    .map(file -> Path.of(file).getFileName().toString())
                    .toList()),
            EVERY));
    text.append("# what is seen\tby exposures and wall alone\tby all\n");
    for (int at = 0; at < all.length; at++) {
      text.append(
          String.format(Locale.ROOT, "%s\t%.4f\t%.4f\n", Tells.names().get(at), base[at], all[at]));
    }
    Files.writeString(table, text.toString().replace("\r", ""), StandardCharsets.UTF_8);
  }

  private static void tryOut(String file, String kind, List<Seen> seen, Readiness fitted) {
    Tried all = new Tried();
    Tried two = new Tried();
    for (Seen one : seen) {
      double base = fitted.byExposures(one.places(), one.values());
      double told = fitted.byAll(one.places(), one.values());
      all.note(base, told, one.ready());
      if (one.shown() == 2) {
        two.note(base, told, one.ready());
      }
    }
    System.out.printf(
        Locale.ROOT,
        "%s, four %s: %s; two exposures: %s%n",
        Path.of(file).getFileName(),
        kind,
        all,
        two);
  }
}
