package org.tallywall.experiments.club;

import java.util.List;
import java.util.OptionalInt;

/** How often tables are told from one another by tallies that they fill themselves. */
final class Telling {
  /** Told apart: the right one of two is named in this share of tallies, whichever is true. */
  static final double OFTEN = 0.9;

  /** Tallies from each table. */
  static final int TALLIES = 1_000;

  private static final int FEWER = 400;
  private static final List<Integer> TIMES = List.of(1, 2, 3, 4, 6, 8, 12, 16, 24, 32, 48, 64);

  private final List<GameCells> tables;
  private final List<long[][]> boxes;
  private final ClubTally like;
  private final FreshTallies fresh;

  Telling(List<GameCells> tables, ClubTally like, long seed) {
    this.tables = tables;
    this.boxes = tables.stream().map(GameCells::boxes).toList();
    this.like = like;
    this.fresh = new FreshTallies(like, seed);
  }

  /** The table that makes a tally likeliest; the first of equals. */
  int named(long[][] tally) {
    int best = 0;
    double most = Double.NEGATIVE_INFINITY;
    for (int at = 0; at < boxes.size(); at++) {
      double log = Likelihood.log(tally, boxes.get(at));
      if (log > most) {
        most = log;
        best = at;
      }
    }
    return best;
  }

  /** How many of {@link #TALLIES} tallies of a table are said to be its own. */
  int right(int table) {
    int right = 0;
    for (int which = 0; which < TALLIES; which++) {
      right += named(fresh.draw(tables.get(table), table, which, 1)) == table ? 1 : 0;
    }
    return right;
  }

  /** The share in which the right one of two is named, with the one that is named less often. */
  double apart(int one, int other, int times) {
    return StrictMath.min(ahead(one, other, times), ahead(other, one, times));
  }

  private double ahead(int right, int wrong, int times) {
    int ahead = 0;
    for (int which = 0; which < FEWER; which++) {
      long[][] tally = fresh.draw(tables.get(right), right, which, times);
      double more =
          Likelihood.log(tally, boxes.get(right)) - Likelihood.log(tally, boxes.get(wrong));
      ahead += more > 0 ? 1 : 0;
    }
    return (double) ahead / FEWER;
  }

  /**
   * How many games it takes to tell two tables apart; empty where even as many as were played there
   * are too few. More would not help, for the tables themselves are not known better than that.
   */
  OptionalInt gamesNeeded(int one, int other) {
    for (int times : TIMES) {
      long games = (long) times * like.games();
      if (games > tables.get(one).games()) {
        return OptionalInt.empty();
      }
      if (apart(one, other, times) >= OFTEN) {
        return OptionalInt.of((int) games);
      }
    }
    return OptionalInt.empty();
  }

  /** The chance of a tally at least as far off, were the club such a table. */
  double chanceOfAsFar(int table, long[][] tally) {
    double found = Likelihood.distance(tally, boxes.get(table));
    int asFar = 1;
    for (int which = 0; which < TALLIES; which++) {
      long[][] drawn = fresh.draw(tables.get(table), table, TALLIES + which, 1);
      asFar += Likelihood.distance(drawn, boxes.get(table)) >= found ? 1 : 0;
    }
    return asFar / (1.0 + TALLIES);
  }
}
