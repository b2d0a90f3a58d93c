package org.tallywall.experiments.gauges.guess;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.tallywall.core.card.CardFile;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.hand.HandMeter;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.Seats;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;
import org.tallywall.strategies.read.OpponentReader;
import org.tallywall.strategies.read.TileRisk;

/**
 * Fits how likely a player wins on a tile that is thrown, by what can be seen, and writes the
 * table: every kind that a seat in its turn could throw is held against the true racks of the
 * others. Then tries it, beside the usual reading, on further deals and on a card that it was not
 * fitted to.
 */
public final class RiskFit {
  private static final int EVERY = 11;
  private static final double PENALTY = 1;
  private static final int FRESH = 1_000_000;

  private RiskFit() {}

  /** Takes a tile that could be thrown. */
  private interface Thrown {
    void could(OpponentReader reader, TileRisk risk, int other, int kind, boolean wins);
  }

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
    ConditionalLogit model = new ConditionalLogit(TileRisk.names().size());
    TileRisk signs = new TileRisk();
    for (String file : files.subList(0, files.size() - 1)) {
      for (String kind : kinds) {
        play(
            card(file),
            kind,
            seed,
            0,
            games,
            signs,
            (reader, risk, other, tile, wins) ->
                model.addYesOrNo(risk.seen(other, tile, reader.waited(other, tile)), wins));
      }
    }
    double[] weights = model.fit(PENALTY);
    write(Path.of(args[0]), args, files, weights);
    for (String file : files) {
      for (String kind : kinds) {
        tryOut(file, kind, seed, games / 2, new TileRisk(weights));
      }
    }
  }

  private static ConcreteHands card(String file) throws IOException {
    return new ConcreteHands(CardFile.read(Path.of(file)).orThrow());
  }

  private static void play(
      ConcreteHands card, String player, long seed, int from, int games, TileRisk risk, Thrown to) {
    OpponentReader reader = new OpponentReader();
    HandMeter meter = new HandMeter();
    new SeenPositions(card, player, seed, EVERY)
        .play(
            from,
            games,
            (view, racks, random) -> {
              if (view.offered() < 0) {
                reader.look(view);
                risk.look(view);
                for (int other = 0; other < Seats.COUNT; other++) {
                  if (other != view.seat() && !view.dead(other)) {
                    risk.look(other, reader);
                    hold(view, other, racks.get(other), meter, reader, risk, to);
                  }
                }
              }
            },
            () -> {});
  }

  private static void hold(
      SeatView view,
      int other,
      Rack rack,
      HandMeter meter,
      OpponentReader reader,
      TileRisk risk,
      Thrown to) {
    meter.hold(rack);
    boolean ready = meter.least(view.reach(other)) == 1;
    for (int kind = 0; kind < Tile.NATURALS; kind++) {
      if (view.held(kind) > 0) {
        boolean wins = false;
        if (ready) {
          Rack with = rack.copy();
          with.add(kind);
          meter.hold(with);
          wins = meter.least(view.reach(other)) == 0;
        }
        to.could(reader, risk, other, kind, wins);
      }
    }
  }

  private static void write(Path table, String[] args, List<String> files, double[] weights)
      throws IOException {
    StringBuilder text = new StringBuilder();
    text.append(
        String.format(
            Locale.ROOT,
            "# How likely a player wins on a tile that is thrown, by what can be seen (TileRisk).%n"
                + "# Written by strategies/fit-risks %s %s: four %s on %s; every %dth question.%n",
            args[1],
            args[2],
            args[3],
            String.join(
                ", ",
                files.subList(0, files.size() - 1).stream()
                    .map(file -> Path.of(file).getFileName().toString())
                    .toList()),
            EVERY));
    for (int at = 0; at < weights.length; at++) {
      text.append(String.format(Locale.ROOT, "%s\t%.4f\n", TileRisk.names().get(at), weights[at]));
    }
    Files.writeString(table, text.toString().replace("\r", ""), StandardCharsets.UTF_8);
  }

  private static void tryOut(String file, String kind, long seed, int games, TileRisk fitted)
      throws IOException {
    Tried all = new Tried();
    Tried two = new Tried();
    play(
        card(file),
        kind,
        seed,
        FRESH,
        games,
        fitted,
        (reader, risk, other, tile, wins) -> {
          double before = Math.max(1e-6, reader.winChance(other, tile));
          double after = risk.chance(other, tile, reader.waited(other, tile));
          all.note(before, after, wins);
          if (reader.live(other) > 0 && reader.lines(other) <= 2) {
            two.note(before, after, wins);
          }
        });
    System.out.printf(
        Locale.ROOT,
        "%s, four %s: %s; one or two lines left: %s%n",
        Path.of(file).getFileName(),
        kind,
        all,
        two);
  }
}
