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
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.Seats;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;
import org.tallywall.strategies.guess.RackProposal;
import org.tallywall.strategies.guess.RackTraits;
import org.tallywall.strategies.guess.TraitWeights;

/**
 * Fits what the traits of racks count for, and writes the table: in games of each kind of player on
 * several cards, the true rack of an opponent among racks proposed for her out of the same tiles,
 * the two others being where they are.
 */
public final class WeightFit {
  private static final int PROPOSED = 40;
  private static final int EVERY = 37;
  private static final double PENALTY = 1;

  private WeightFit() {}

  /**
   * Plays, fits and writes.
   *
   * @param args the table, the seed, how many games of each kind on each card, the kinds of players
   *     with commas between them, and the files of the cards
   * @throws IOException if a card cannot be read or the table not be written
   */
  public static void main(String[] args) throws IOException {
    long seed = Long.parseLong(args[1]);
    int games = Integer.parseInt(args[2]);
    List<String> kinds = List.of(args[3].split(","));
    List<ConcreteHands> cards = new ArrayList<>();
    List<String> names = new ArrayList<>();
    for (String file : Arrays.asList(args).subList(4, args.length)) {
      cards.add(new ConcreteHands(CardFile.read(Path.of(file)).orThrow()));
      names.add(Path.of(file).getFileName().toString());
    }
    int traits = RackTraits.names().size();
    ConditionalLogit all = new ConditionalLogit(traits);
    List<double[]> columns = new ArrayList<>();
    for (String kind : kinds) {
      ConditionalLogit own = new ConditionalLogit(traits);
      for (ConcreteHands card : cards) {
        collect(new SeenPositions(card, kind, seed, EVERY), games, List.of(own, all));
      }
      columns.add(own.fit(PENALTY));
    }
    columns.add(all.fit(PENALTY));
    String head =
        String.format(
            Locale.ROOT,
            "# What each trait of a rack counts for, by kind of player (TraitWeights).%n"
                + "# Written by strategies/fit-guess %d %d: %s; every %dth question, %d racks"
                + " proposed.%n",
            seed,
            games,
            String.join(", ", names),
            EVERY,
            PROPOSED);
    write(Path.of(args[0]), head, kinds, columns);
  }

  private static void write(Path file, String head, List<String> kinds, List<double[]> columns)
      throws IOException {
    StringBuilder text = new StringBuilder(head);
    text.append("trait\t").append(String.join("\t", kinds));
    text.append('\t').append(TraitWeights.ANYBODY).append('\n');
    List<String> names = RackTraits.names();
    for (int trait = 0; trait < names.size(); trait++) {
      text.append(names.get(trait));
      for (double[] column : columns) {
        text.append(String.format(Locale.ROOT, "\t%.4f", column[trait]));
      }
      text.append('\n');
    }
    Files.writeString(file, text.toString().replace("\r", ""), StandardCharsets.UTF_8);
  }

  private static void collect(SeenPositions positions, int games, List<ConditionalLogit> into) {
    RackProposal proposal = new RackProposal();
    RackTraits traits = new RackTraits();
    Rack rack = new Rack();
    positions.play(
        0,
        games,
        (view, racks, random) -> {
          for (int seat = 0; seat < Seats.COUNT; seat++) {
            if (seat != view.seat()) {
              set(view, seat, racks, random, proposal, traits, rack, into);
            }
          }
        },
        () -> {});
  }

  private static void set(
      SeatView view,
      int seat,
      List<Rack> racks,
      RandomStream random,
      RackProposal proposal,
      RackTraits traits,
      Rack rack,
      List<ConditionalLogit> into) {
    proposal.look(view, seat, racks.get(seat).total());
    traits.look(view, seat, proposal);
    int[] left = new int[Tile.KINDS];
    for (int kind = 0; kind < Tile.KINDS; kind++) {
      left[kind] = view.unseen(kind);
      for (int other = 0; other < Seats.COUNT; other++) {
        left[kind] -= other == view.seat() || other == seat ? 0 : racks.get(other).held(kind);
      }
    }
    RandomStream lots = random.beside(org.tallywall.core.random.Purpose.ROLLOUT, seat);
    double own = proposal.weight(racks.get(seat), left, lots);
    if (own <= 0) {
      return;
    }
    traits.of(racks.get(seat));
    into.forEach(ConditionalLogit::beginSet);
    add(traits, own, into);
    for (int tried = 0; tried < PROPOSED; tried++) {
      double ratio = proposal.draw(left, lots, rack);
      if (ratio > 0) {
        traits.of(rack);
        add(traits, ratio, into);
      }
    }
  }

  private static void add(RackTraits traits, double weight, List<ConditionalLogit> into) {
    int[] places = new int[traits.count()];
    float[] values = new float[traits.count()];
    for (int at = 0; at < places.length; at++) {
      places[at] = traits.index(at);
      values[at] = (float) traits.value(at);
    }
    for (ConditionalLogit model : into) {
      model.add(places, values, StrictMath.log(weight));
    }
  }
}
