package org.tallywall.experiments.gauges.calibration;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.tallywall.core.hand.Reach;
import org.tallywall.core.play.Position;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.Seats;
import org.tallywall.core.random.Purpose;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;
import org.tallywall.strategies.guess.Guess;

/**
 * What guesses of hidden tiles say of opponents beside what is true: the share of guessed worlds in
 * which she holds a kind, waits for it, is nearest to a line, or is so many tiles away. All guesses
 * are asked about the same positions.
 */
final class GuessTally {
  private static final int FARTHEST = 9;

  /** So that a share of just three tenths, as it is computed, is no less. */
  private static final double NO_LESS = 1e-9;

  private final List<Guess> guesses;
  private final int worlds;
  private final Position position = new Position();
  private final List<Shares> placed = new ArrayList<>();
  private final List<Shares> said = new ArrayList<>();
  private final RackFacts facts = new RackFacts();
  private final List<Map<Fact, Bins>> bins = new ArrayList<>();
  private final List<Map<Fact, Score>> scores = new ArrayList<>();
  private long positions;

  /** What is said of an opponent. */
  enum Fact {
    /** She holds at least one tile of a kind. */
    HOLDS("holds one of a kind"),
    /** She is one away, and a tile of a kind completes her hand. */
    WAITS("waits for a kind"),
    /** No line is nearer to her rack. */
    LINE("is nearest to a line"),
    /** Her rack is so many tiles away from the nearest hand. */
    AWAY("is so many tiles away");

    private final String words;

    Fact(String words) {
      this.words = words;
    }

    /** What she does, in words. */
    String words() {
      return words;
    }
  }

  /**
   * A tally.
   *
   * @param guesses what is tried; the first is the one that the others are compared with
   * @param worlds how often each guesses in a position, an even number
   */
  GuessTally(List<Guess> guesses, int worlds) {
    this.guesses = List.copyOf(guesses);
    this.worlds = worlds;
    for (int guess = 0; guess < guesses.size(); guess++) {
      placed.add(new Shares());
      said.add(new Shares());
      Map<Fact, Bins> ofBins = new EnumMap<>(Fact.class);
      Map<Fact, Score> ofScores = new EnumMap<>(Fact.class);
      for (Fact fact : Fact.values()) {
        ofBins.put(fact, new Bins(0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9));
        ofScores.put(fact, new Score());
      }
      bins.add(ofBins);
      scores.add(ofScores);
    }
  }

  /**
   * Guesses in a position and compares.
   *
   * @param view what the seat that guesses knows
   * @param truth what is true
   * @param random numbers that came with the question
   */
  void visit(SeatView view, List<Rack> truth, RandomStream random) {
    positions++;
    List<Rack[][]> guessed = new ArrayList<>();
    for (Guess guess : guesses) {
      guessed.add(worlds(guess, view, random));
    }
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      if (seat != view.seat()) {
        for (int guess = 0; guess < guesses.size(); guess++) {
          Rack[] racks = guessed.get(guess)[seat];
          placed.get(guess).count(view.reach(seat), racks, 0, worlds / 2);
          said.get(guess).count(view.reach(seat), racks, worlds / 2, worlds);
        }
        compare(view, seat, truth.get(seat));
      }
    }
  }

  /** By seat and world, the racks guessed. */
  private Rack[][] worlds(Guess guess, SeatView view, RandomStream random) {
    Rack[][] guessed = new Rack[Seats.COUNT][worlds];
    position.begin(view, random);
    guess.look(view);
    for (int world = 0; world < worlds; world++) {
      guess.deal(view, random.beside(Purpose.ROLLOUT, 2 * world), position);
      for (int seat = 0; seat < Seats.COUNT; seat++) {
        guessed[seat][world] = position.rack(seat).copy();
      }
    }
    return guessed;
  }

  private void compare(SeatView view, int seat, Rack rack) {
    facts.look(view.reach(seat), rack);
    for (int kind = 0; kind < Tile.KINDS; kind++) {
      int number = kind;
      if (view.unseen(kind) > 0) {
        note(Fact.HOLDS, shares -> shares.held[number], (facts.held() >>> kind & 1) != 0);
        note(Fact.WAITS, shares -> shares.waited[number], (facts.waits() >>> kind & 1) != 0);
      }
    }
    for (int line = 0; line < view.reach(seat).hands().lines(); line++) {
      int number = line;
      if (facts.possible(line)) {
        note(Fact.LINE, shares -> shares.nearest[number], facts.nearest(line));
      }
    }
    for (int tiles = 1; tiles <= FARTHEST; tiles++) {
      int number = tiles;
      note(Fact.AWAY, shares -> shares.away[number], Math.min(FARTHEST, facts.least()) == tiles);
    }
  }

  private void note(Fact fact, ToDoubleFunction<Shares> chance, boolean came) {
    double first = all(0, chance);
    for (int guess = 0; guess < guesses.size(); guess++) {
      double place = chance.applyAsDouble(placed.get(guess)) + NO_LESS;
      bins.get(guess).get(fact).note(place, chance.applyAsDouble(said.get(guess)), came);
      scores.get(guess).get(fact).note(all(guess, chance), first, came);
    }
  }

  private double all(int guess, ToDoubleFunction<Shares> chance) {
    return (chance.applyAsDouble(placed.get(guess)) + chance.applyAsDouble(said.get(guess))) / 2;
  }

  /** The game is over. */
  void endGame() {
    bins.forEach(of -> of.values().forEach(Bins::endGame));
    scores.forEach(of -> of.values().forEach(Score::endGame));
  }

  /** How many positions were looked at. */
  long positions() {
    return positions;
  }

  /** What a guess said, in tenths, beside what was true. */
  Bins bins(int guess, Fact fact) {
    return bins.get(guess).get(fact);
  }

  /** How well what a guess said fits, also beside the first guess. */
  Score score(int guess, Fact fact) {
    return scores.get(guess).get(fact);
  }

  /** In what share of the worlds each fact holds. */
  private final class Shares {
    private final double[] held = new double[Tile.KINDS];
    private final double[] waited = new double[Tile.KINDS];
    private final double[] away = new double[FARTHEST + 1];
    private double[] nearest = {};

    private void count(Reach reach, Rack[] racks, int from, int to) {
      nearest = new double[reach.hands().lines()];
      Arrays.fill(held, 0);
      Arrays.fill(waited, 0);
      Arrays.fill(away, 0);
      for (int world = from; world < to; world++) {
        facts.look(reach, racks[world]);
        away[Math.min(FARTHEST, facts.least())]++;
        for (int kind = 0; kind < Tile.KINDS; kind++) {
          held[kind] += facts.held() >>> kind & 1;
          waited[kind] += facts.waits() >>> kind & 1;
        }
        for (int line = 0; line < nearest.length; line++) {
          nearest[line] += facts.nearest(line) ? 1 : 0;
        }
      }
      for (double[] counts : List.of(held, waited, away, nearest)) {
        for (int at = 0; at < counts.length; at++) {
          counts[at] /= to - from;
        }
      }
    }
  }
}
