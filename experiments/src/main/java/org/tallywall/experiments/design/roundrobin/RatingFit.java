package org.tallywall.experiments.design.roundrobin;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.util.FastMath;
import org.tallywall.core.random.Purpose;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.random.StreamKey;
import org.tallywall.experiments.stats.Estimate;
import org.tallywall.experiments.stats.Interval;
import org.tallywall.experiments.stats.Method;
import org.tallywall.experiments.stats.TopOneRatings;
import org.tallywall.experiments.stats.TopOneRatings.Contests;
import org.tallywall.experiments.study.Study;
import org.tallywall.experiments.tally.ContestTally;

/**
 * Fits ratings to who won each game, the wall taking part as one more contestant, and finds how far
 * they may be off by drawing whole deals again. No more than 5,000 deals of a table are drawn each
 * time; the spread of the ratings then is taken down in proportion to the root of the deals played.
 */
final class RatingFit {
  private static final int RESAMPLES = 400;
  private static final int MOST_DRAWN = 5_000;

  /** With fewer wins somebody may win nothing at all when deals are drawn again. */
  private static final long RARE = 20;

  private final Study study;
  private final int players;
  private final RoundRobinTables tables;
  private final List<ContestTally> tallies;
  private final boolean helped;

  RatingFit(Study study, int players, List<ContestTally> tallies) {
    this.study = study;
    this.players = players;
    this.tables = new RoundRobinTables(players);
    this.tallies = tallies;
    long[] wins = new long[players + 1];
    for (int table = 0; table < tallies.size(); table++) {
      addWins(wins, table, counts(table));
    }
    this.helped = Arrays.stream(wins).anyMatch(won -> won < RARE);
  }

  /** Whether half a win was lent to everybody, because somebody, or the wall, hardly ever won. */
  boolean helped() {
    return helped;
  }

  /** The logarithms of the worths beside the mean of all players, with intervals. */
  List<Estimate> ratings(double confidence) {
    List<long[]> all = new ArrayList<>();
    double scale = 0;
    for (int table = 0; table < tallies.size(); table++) {
      long[] counts = counts(table);
      long deals = Arrays.stream(counts).sum();
      scale = Math.max(scale, Math.min(1, Math.sqrt((double) MOST_DRAWN / deals)));
      all.add(counts);
    }
    double[] fitted = fit(all);
    double[] errors = errors(all);
    double z = new NormalDistribution().inverseCumulativeProbability((1 + confidence) / 2);
    List<Estimate> ratings = new ArrayList<>();
    for (int player = 0; player < players; player++) {
      double half = z * errors[player] * scale;
      ratings.add(
          Estimate.of(
              fitted[player],
              new Interval(fitted[player] - half, fitted[player] + half),
              Method.RESAMPLED_DEALS));
    }
    return ratings;
  }

  private long[] counts(int table) {
    long[] counts = new long[ContestTally.PATTERNS];
    Arrays.setAll(counts, pattern -> tallies.get(table).deals(pattern));
    return counts;
  }

  private double[] errors(List<long[]> all) {
    double[] sum = new double[players];
    double[] squares = new double[players];
    for (int sample = 0; sample < RESAMPLES; sample++) {
      List<long[]> drawn = new ArrayList<>();
      for (int table = 0; table < all.size(); table++) {
        drawn.add(drawAgain(all.get(table), table, sample));
      }
      double[] fitted = fit(drawn);
      for (int player = 0; player < players; player++) {
        sum[player] += fitted[player];
        squares[player] += fitted[player] * fitted[player];
      }
    }
    double[] errors = new double[players];
    for (int player = 0; player < players; player++) {
      double mean = sum[player] / RESAMPLES;
      double variance = (squares[player] - RESAMPLES * mean * mean) / (RESAMPLES - 1);
      errors[player] = Math.sqrt(Math.max(0, variance));
    }
    return errors;
  }

  private long[] drawAgain(long[] counts, int table, int sample) {
    long[] upTo = counts.clone();
    Arrays.parallelPrefix(upTo, Long::sum);
    int deals = (int) upTo[upTo.length - 1];
    RandomStream random =
        new RandomStream(
            new StreamKey(study.extent().seed(), table, Purpose.RESAMPLING, 0, sample, 0));
    long[] drawn = new long[counts.length];
    for (int draw = 0; draw < Math.min(deals, MOST_DRAWN); draw++) {
      long which = random.below(deals) + 1L;
      int pattern = 0;
      while (upTo[pattern] < which) {
        pattern++;
      }
      drawn[pattern]++;
    }
    return drawn;
  }

  private double[] fit(List<long[]> counts) {
    List<Contests> contests = new ArrayList<>();
    for (int table = 0; table < counts.size(); table++) {
      int[] places = new int[players + 1];
      tables.players(table).forEach(player -> places[player] = 1);
      places[players] = 1;
      long[] wins = new long[players + 1];
      addWins(wins, table, counts.get(table));
      for (int at = 0; at < wins.length; at++) {
        wins[at] = 2 * wins[at] + places[at] * lent();
      }
      contests.add(new Contests(places, wins));
    }
    double[] worth = TopOneRatings.fit(players + 1, contests);
    double[] logs = new double[players];
    double mean = 0;
    for (int player = 0; player < players; player++) {
      logs[player] = FastMath.log(worth[player]);
      mean += logs[player] / players;
    }
    for (int player = 0; player < players; player++) {
      logs[player] -= mean;
    }
    return logs;
  }

  /** Half a win to everybody where somebody hardly ever won. */
  private int lent() {
    return helped ? 1 : 0;
  }

  private void addWins(long[] wins, int table, long[] counts) {
    List<Integer> four = tables.players(table);
    for (int pattern = 0; pattern < counts.length; pattern++) {
      if (counts[pattern] == 0) {
        continue;
      }
      int won = 0;
      for (int at = 0; at < ContestTally.PLAYERS; at++) {
        int one = ContestTally.wins(pattern, at);
        won += one;
        wins[four.get(at)] += counts[pattern] * one;
      }
      wins[players] += counts[pattern] * (ContestTally.GAMES - won);
    }
  }
}
