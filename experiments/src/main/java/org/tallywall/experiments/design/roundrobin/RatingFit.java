package org.tallywall.experiments.design.roundrobin;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.apache.commons.math3.distribution.TDistribution;
import org.apache.commons.math3.util.FastMath;
import org.tallywall.experiments.stats.Estimate;
import org.tallywall.experiments.stats.Interval;
import org.tallywall.experiments.stats.Method;
import org.tallywall.experiments.stats.TopOneRatings;
import org.tallywall.experiments.stats.TopOneRatings.Contests;
import org.tallywall.experiments.tally.ContestTally;

/**
 * Ratings of a round-robin's players: what {@link TopOneRatings} makes of who won each game, the
 * wall taking part as one more contestant. Who never won is left out of the fit, as one that is
 * worth nothing, and gets an upper limit instead of a rating; who won rarely gets exact limits. 0
 * is the mean of the players that did not win rarely, of all that won where there are less than
 * two.
 */
final class RatingFit {
  /**
   * In fewer deals with a win, and in less than a quarter of all, the spread is not to be trusted.
   */
  private static final long FEW = 20;

  private static final long PART = 4;

  private static final double FURTHEST = 700;
  private static final double ACCURACY = 1e-14;

  private final List<RatedTable> tables;
  private final double confidence;
  private final int players;
  private final int[] numbers;
  private final RareWins[] wins;
  private final TopOneRatings fit;
  private final RatingSpread spread;
  private final double[] yardstick;

  /**
   * Fits.
   *
   * @param players how many there are
   * @param tallies what was counted at each table
   * @param confidence the level of the ranges
   */
  RatingFit(int players, List<ContestTally> tallies, double confidence) {
    this.tables = RatedTable.of(players, tallies);
    this.confidence = confidence;
    this.players = players;
    long[] won = new long[players + 1];
    tables.forEach(table -> Arrays.setAll(won, at -> won[at] + table.wins(players)[at]));
    this.wins = new RareWins[players];
    Arrays.setAll(wins, player -> wins(player, won[player]));
    this.numbers = new int[players + 1];
    int contestants = 0;
    for (int at = 0; at <= players; at++) {
      numbers[at] = won[at] > 0 ? contestants++ : -1;
    }
    this.fit = TopOneRatings.fit(contestants, contests(contestants));
    this.spread = new RatingSpread(tables, fit, numbers);
    this.yardstick = yardstick(contestants);
  }

  private RareWins wins(int player, long won) {
    long deals = 0;
    long with = 0;
    for (RatedTable table : tables) {
      int place = table.seated().indexOf(player);
      if (place >= 0) {
        deals += table.deals();
        with += table.dealsWon(place);
      }
    }
    return new RareWins(deals, with, won);
  }

  private List<Contests> contests(int contestants) {
    List<Contests> contests = new ArrayList<>();
    tables.forEach(table -> contests.add(table.contests(numbers, contestants)));
    return contests;
  }

  /** The weights of the contestants in what counts as 0. */
  private double[] yardstick(int contestants) {
    boolean often = IntStream.range(0, players).filter(this::isSpreadKnown).count() >= 2;
    double[] weights = new double[contestants];
    double sum = 0;
    for (int player = 0; player < players; player++) {
      if (often ? isSpreadKnown(player) : numbers[player] >= 0) {
        weights[numbers[player]] = 1;
        sum++;
      }
    }
    for (int at = 0; at < contestants; at++) {
      weights[at] /= Math.max(1, sum);
    }
    return weights;
  }

  /** The rating of a player beside the mean of those that won; none if it never won. */
  Optional<Estimate> rating(int player) {
    if (numbers[player] < 0) {
      return Optional.empty();
    }
    double[] weights = minus(one(player), yardstick);
    double value = sum(weights);
    if (isSpreadKnown(player) && players(numbers) > 1) {
      return Optional.of(estimate(value, weights));
    } else if (players(numbers) < 2) {
      return Optional.of(new Estimate(value, Optional.empty(), Method.CLOPPER_PEARSON_CARRIED));
    }
    Interval share = wins[player].share(confidence);
    Interval limits =
        new Interval(
            Math.min(value, ratingOf(player, share.low())),
            Math.max(value, ratingOf(player, share.high())));
    return Optional.of(Estimate.of(value, limits, Method.CLOPPER_PEARSON_CARRIED));
  }

  /** Below what the rating of a player lies that never won; none if nobody won, or it did. */
  OptionalDouble below(int player) {
    if (numbers[player] >= 0 || players(numbers) == 0 || wins[player].deals() == 0) {
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(ratingOf(player, wins[player].share(confidence).high()));
  }

  /** Whether a player won often enough for its spread to be known. */
  boolean isSpreadKnown(int player) {
    RareWins one = wins[player];
    return one.won() >= FEW || one.won() > 0 && PART * one.won() >= one.deals();
  }

  /** By how much one player's rating lies above another's; both of known spread. */
  Estimate difference(int player, int other) {
    double[] weights = minus(one(player), one(other));
    return estimate(sum(weights), weights);
  }

  /** The standard error of such a difference. */
  double errorOfDifference(int player, int other) {
    return error(minus(one(player), one(other)));
  }

  private int players(int[] numbered) {
    int count = 0;
    for (int player = 0; player < players; player++) {
      count += numbered[player] >= 0 ? 1 : 0;
    }
    return count;
  }

  private double[] one(int player) {
    double[] weights = new double[yardstick.length];
    weights[numbers[player]] = 1;
    return weights;
  }

  private static double[] minus(double[] one, double[] other) {
    double[] weights = new double[one.length];
    Arrays.setAll(weights, at -> one[at] - other[at]);
    return weights;
  }

  private double sum(double[] weights) {
    double[] logs = fit.logs();
    double sum = 0;
    for (int at = 0; at < weights.length; at++) {
      sum += weights[at] * logs[at];
    }
    return sum;
  }

  private double error(double[] weights) {
    double variance = 0;
    for (int a = 0; a < weights.length; a++) {
      for (int b = 0; b < weights.length; b++) {
        variance += weights[a] * weights[b] * spread.covariances()[a][b];
      }
    }
    return Math.sqrt(Math.max(0, variance));
  }

  private Estimate estimate(double value, double[] weights) {
    double t =
        new TDistribution(null, spread.degrees(), ACCURACY)
            .inverseCumulativeProbability((1 + confidence) / 2);
    double half = t * error(weights);
    return Estimate.of(value, new Interval(value - half, value + half), Method.FITTED_OVER_DEALS);
  }

  /**
   * The rating with which a player would win a share of its games, if the others are as strong as
   * they were found to be.
   */
  private double ratingOf(int player, double share) {
    double low = -FURTHEST;
    double high = FURTHEST;
    while (high - low > 1e-12 * FURTHEST) {
      double middle = (low + high) / 2;
      if (expected(player, middle) < share) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return (low + high) / 2 - sum(yardstick);
  }

  /** The share of its games that a player wins with a logarithm of its worth. */
  private double expected(int player, double log) {
    double[] logs = fit.logs();
    double sum = 0;
    double deals = 0;
    for (RatedTable table : tables) {
      if (table.seated().contains(player)) {
        double others = 0;
        for (int place = 0; place <= ContestTally.PLAYERS; place++) {
          int one = table.contestant(place, players);
          others += one == player || numbers[one] < 0 ? 0 : FastMath.exp(logs[numbers[one]] - log);
        }
        sum += table.deals() / (1 + others);
        deals += table.deals();
      }
    }
    return sum / deals;
  }
}
