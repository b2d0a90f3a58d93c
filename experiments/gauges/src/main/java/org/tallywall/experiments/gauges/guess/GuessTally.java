package org.tallywall.experiments.gauges.guess;

import java.util.Arrays;
import java.util.List;
import org.tallywall.core.hand.HandMeter;
import org.tallywall.core.hand.Reach;
import org.tallywall.core.play.Position;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.Seats;
import org.tallywall.core.random.Purpose;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;
import org.tallywall.experiments.gauges.calibration.Deciles;
import org.tallywall.strategies.guess.Guess;

/**
 * What guesses say of opponents beside what is true: the share of guessed worlds in which she holds
 * a kind, waits for it, is nearest to a line, or is so many tiles away.
 */
final class GuessTally {
  private static final int FARTHEST = 9;

  private final Guess guess;
  private final int worlds;
  private final Position position = new Position();
  private final HandMeter meter = new HandMeter();
  private final Facts facts = new Facts();
  private final double[] held = new double[Tile.KINDS];
  private final double[] waited = new double[Tile.KINDS];
  private final double[] away = new double[FARTHEST + 1];
  private double[] nearest = {};
  private int[] lines = {};
  private final Deciles[] deciles = new Deciles[Fact.values().length];

  /** What is said of an opponent. */
  enum Fact {
    HOLDS("holds one of a kind"),
    WAITS("waits for a kind"),
    LINE("is nearest to a line"),
    AWAY("is so many tiles away");

    private final String words;

    Fact(String words) {
      this.words = words;
    }

    String words() {
      return words;
    }
  }

  /**
   * A tally.
   *
   * @param guess what is tried
   * @param worlds how often it guesses in each position
   */
  GuessTally(Guess guess, int worlds) {
    this.guess = guess;
    this.worlds = worlds;
    Arrays.setAll(deciles, at -> new Deciles());
  }

  /**
   * Guesses in a position and compares.
   *
   * @param view what the seat that guesses knows
   * @param racks what is true
   * @param random numbers
   */
  void visit(SeatView view, List<Rack> racks, RandomStream random) {
    Rack[][] guessed = new Rack[worlds][Seats.COUNT];
    position.begin(view, random);
    guess.look(view);
    for (int world = 0; world < worlds; world++) {
      guess.deal(view, random.beside(Purpose.ROLLOUT, 2 * world), position);
      for (int seat = 0; seat < Seats.COUNT; seat++) {
        guessed[world][seat] = position.rack(seat).copy();
      }
    }
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      if (seat != view.seat()) {
        compare(view, seat, racks.get(seat), guessed);
      }
    }
  }

  private void compare(SeatView view, int seat, Rack truth, Rack[][] guessed) {
    Reach reach = view.reach(seat);
    if (nearest.length < reach.hands().lines()) {
      nearest = new double[reach.hands().lines()];
      lines = new int[reach.hands().lines()];
    }
    Arrays.fill(held, 0);
    Arrays.fill(waited, 0);
    Arrays.fill(away, 0);
    Arrays.fill(nearest, 0);
    for (Rack[] world : guessed) {
      look(reach, world[seat]);
      add(1.0 / worlds);
    }
    look(reach, truth);
    for (int kind = 0; kind < Tile.KINDS; kind++) {
      if (view.unseen(kind) > 0) {
        note(Fact.HOLDS, held[kind], (facts.held >>> kind & 1) != 0);
        note(Fact.WAITS, waited[kind], (facts.waits >>> kind & 1) != 0);
      }
    }
    for (int line = 0; line < nearest.length; line++) {
      if (possible(reach, line)) {
        note(Fact.LINE, nearest[line], lines[line] == facts.least);
      }
    }
    for (int tiles = 1; tiles <= FARTHEST; tiles++) {
      note(Fact.AWAY, away[tiles], Math.min(FARTHEST, facts.least) == tiles);
    }
  }

  private boolean possible(Reach reach, int line) {
    return lines[line] < HandMeter.NONE;
  }

  private void note(Fact fact, double said, boolean came) {
    deciles[fact.ordinal()].note(said, came);
  }

  private void add(double weight) {
    for (int kind = 0; kind < Tile.KINDS; kind++) {
      held[kind] += (facts.held >>> kind & 1) != 0 ? weight : 0;
      waited[kind] += (facts.waits >>> kind & 1) != 0 ? weight : 0;
    }
    away[Math.min(FARTHEST, facts.least)] += weight;
    for (int line = 0; line < nearest.length; line++) {
      nearest[line] += lines[line] == facts.least ? weight : 0;
    }
  }

  private void look(Reach reach, Rack rack) {
    facts.held = rack.kinds();
    meter.hold(rack);
    meter.leastByLine(reach, lines);
    facts.least = Arrays.stream(lines).min().orElse(HandMeter.NONE);
    facts.waits = facts.least == 1 ? meter.waits(reach) : 0;
  }

  /** The game is over. */
  void endGame() {
    for (Deciles one : deciles) {
      one.endGame();
    }
  }

  Deciles of(Fact fact) {
    return deciles[fact.ordinal()];
  }

  private static final class Facts {
    private long held;
    private long waits;
    private int least;
  }
}
