package org.tallywall.experiments.design.roundrobin;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tallywall.experiments.stats.Estimate;
import org.tallywall.experiments.stats.Interval;
import org.tallywall.experiments.stats.Method;
import org.tallywall.experiments.stats.Sameness;
import org.tallywall.experiments.tally.ContestTally;

/**
 * The simulations fix their seed. Where a share of runs is held against a level, the allowed
 * distance is 4.891638 standard errors (normal quantile of a two-sided 1e-6) or 4.753424 (one
 * side), so a fresh seed would raise a false alarm about once in a million.
 */
@Tag("one-jdk")
class RatingFitTest {
  private static final double TWO_SIDES = 4.891638;
  private static final double ONE_SIDE = 4.753424;
  private static final int RUNS = 200;
  private static final int EQUAL = 6;

  /** One table, 30 deals: a wins 40 games, b 20, c 10, d none, the wall 50. */
  private static List<ContestTally> oneTable() {
    ContestTally tally = new ContestTally();
    for (int deal = 0; deal < 10; deal++) {
      tally.addDeal(new int[] {1, 1, 1, 0});
      tally.addDeal(new int[] {1, 1, 0, 0});
      tally.addDeal(new int[] {2, 0, 0, 0});
    }
    return List.of(tally);
  }

  @Test
  void rating_oneTable_hasTheClosedForm_andTheMiddleOfThoseThatWonIsZero() {
    RatingFit fit = new RatingFit(4, oneTable(), 0.95);
    double[] logs = {Math.log(40.5), Math.log(20.5), Math.log(10.5)};
    double mean = (logs[0] + logs[1] + logs[2]) / 3;

    for (int player = 0; player < 3; player++) {
      assertThat(fit.rating(player).orElseThrow().value())
          .isCloseTo(logs[player] - mean, within(1e-9));
    }
    assertThat(fit.rating(3)).isEmpty();
    assertThat(fit.below(0)).isEmpty();
  }

  /** No win in 30 deals: at least one in a deal by a chance of 1 - 0.025^(1/30) at most. */
  @Test
  void below_neverWon_isWhereTheExactLimitLies() {
    RatingFit fit = new RatingFit(4, oneTable(), 0.95);
    double share = 1 - Math.pow(0.025, 1 / 30.0);
    double others = 40.5 + 20.5 + 10.5 + 50.5;
    double mean = (Math.log(40.5) + Math.log(20.5) + Math.log(10.5)) / 3;

    assertThat(fit.below(3).orElseThrow())
        .isCloseTo(Math.log(share / (1 - share) * others) - mean, within(1e-7));
  }

  /** The rule of linear errors written out for the logarithm of a ratio: 30 / 29 times a sum. */
  @Test
  void errorOfDifference_oneTable_hasTheClosedForm() {
    double[][] ways = {{1, 1}, {1, 1}, {2, 0}}; // games of a and b, ten deals each
    double a = 120 * 40.5 / 122;
    double b = 120 * 20.5 / 122;
    double sum = 0;
    for (double[] way : ways) {
      double off = (way[0] - 40 / 30.0) / a - (way[1] - 20 / 30.0) / b;
      sum += 10 * off * off;
    }
    RatingFit fit = new RatingFit(4, oneTable(), 0.95);

    assertThat(fit.errorOfDifference(0, 1)).isCloseTo(Math.sqrt(30 / 29.0 * sum), within(1e-9));
    Interval limits = fit.difference(0, 1).interval().orElseThrow();
    // Student's t with 29 degrees, tables
    assertThat((limits.high() - limits.low()) / 2 / fit.errorOfDifference(0, 1))
        .isCloseTo(2.04523, within(1e-4));
  }

  @Test
  void rating_oneThatNeverWon_movesNobodyElse() {
    List<ContestTally> with = new SimulatedLadder(new double[] {0, 0, 0, 0, -60, 0}, 60).play(7, 0);
    RatingFit five = new RatingFit(5, with, 0.95);
    RatingFit four = new RatingFit(4, List.of(with.get(0)), 0.95);

    assertThat(five.rating(4)).isEmpty();
    double sum = 0;
    for (int player = 0; player < 4; player++) {
      sum += five.rating(player).orElseThrow().value();
      assertThat(five.rating(player).orElseThrow().value())
          .isCloseTo(four.rating(player).orElseThrow().value(), within(0.5));
    }
    assertThat(sum).isCloseTo(0, within(1e-9));
  }

  @Test
  void rating_nobodyButOneEverWon_hasNoRange() {
    ContestTally tally = new ContestTally();
    tally.addDeal(new int[] {4, 0, 0, 0});
    RatingFit fit = new RatingFit(4, List.of(tally), 0.95);
    assertThat(fit.rating(0).orElseThrow().interval()).isEmpty();
    assertThat(fit.below(1)).isPresent();

    ContestTally none = new ContestTally();
    none.addDeal(new int[] {0, 0, 0, 0});
    assertThat(new RatingFit(4, List.of(none), 0.95).below(1)).isEmpty();
  }

  /**
   * Nine players of known strength, 126 tables of two deals each, of which the games hang together:
   * the range of a rating, and of a difference, holds the true one in 95 of 100 runs. Two deals a
   * table, so that the spread without d / (d - 1) would hold it in 83, games taken as independent
   * in fewer still.
   */
  @Test
  void ranges_knownStrengths_holdThemAsOftenAsTheySay() {
    double[] logs = {0.8, 0.5, 0.4, 0.3, 0.2, 0.1, -0.1, -0.2, -0.3, 0.2};
    SimulatedLadder ladder = new SimulatedLadder(logs, 2);
    double mean = IntStream.range(0, 9).mapToDouble(at -> logs[at]).sum() / 9;
    int rating = 0;
    int difference = 0;
    for (int run = 0; run < RUNS; run++) {
      RatingFit fit = new RatingFit(9, ladder.play(20_261_125, run), 0.95);
      rating += holds(fit.rating(3).orElseThrow(), logs[3] - mean);
      difference += holds(fit.difference(0, 7), logs[0] - logs[7]);
    }
    double error = Math.sqrt(RUNS * 0.95 * 0.05);
    assertThat((double) rating).isCloseTo(0.95 * RUNS, within(TWO_SIDES * error));
    assertThat((double) difference).isCloseTo(0.95 * RUNS, within(TWO_SIDES * error));
  }

  private static int holds(Estimate estimate, double truth) {
    Interval limits = estimate.interval().orElseThrow();
    return limits.low() <= truth && truth <= limits.high() ? 1 : 0;
  }

  /**
   * A player that wins some three games of 1,344, and often none: its exact range, or its limit,
   * holds the true strength in 95 of 100 runs or more.
   */
  @Test
  void ranges_oneThatHardlyEverWins_holdItsStrength() {
    double[] logs = {0.3, 0.2, 0.1, 0.1, 0, 0, -0.3, -0.4, -4.6, 0.2};
    SimulatedLadder ladder = new SimulatedLadder(logs, 6); // the first eight have the mean 0
    int held = 0;
    int never = 0;
    for (int run = 0; run < RUNS; run++) {
      RatingFit fit = new RatingFit(9, ladder.play(20_261_126, run), 0.95);
      double truth = logs[8];
      double middle = 0;
      for (int player = 0; player < 8; player++) {
        middle += fit.rating(player).orElseThrow().value();
      }
      assertThat(middle).isCloseTo(0, within(1e-9));
      if (fit.rating(8).isEmpty()) {
        never++;
        held += truth < fit.below(8).orElseThrow() ? 1 : 0;
      } else {
        assertThat(fit.rating(8).get().method()).isEqualTo(Method.CLOPPER_PEARSON_CARRIED);
        held += holds(fit.rating(8).get(), truth);
      }
    }
    assertThat(never).isBetween(5, RUNS / 2);
    assertThat((double) held).isGreaterThan(0.95 * RUNS - ONE_SIDE * Math.sqrt(RUNS * 0.95 * 0.05));
  }

  /**
   * Six equal players: in 5 of 100 runs at most are two neighbors in the order told apart, though
   * there are five such pairs; and the joint test on four such ladders finds a difference in 5 of
   * 100.
   */
  @Test
  void equalPlayers_areHardlyEverToldApart_andDoNotDependOnTheCard() {
    SimulatedLadder ladder = new SimulatedLadder(new double[EQUAL + 1], 20);
    int apart = 0;
    int found = 0;
    List<RatingFit> cards = new ArrayList<>();
    for (int run = 0; run < 4 * RUNS; run++) {
      RatingFit fit = new RatingFit(EQUAL, ladder.play(20_261_127, run), 0.95);
      cards.add(fit);
      apart += neighborsApart(fit) ? 1 : 0;
      if (cards.size() == 4) {
        Sameness test = joint(cards);
        found += test.statistic() > test.critical(0.05) ? 1 : 0;
        cards.clear();
      }
    }
    double four = 4 * RUNS;
    assertThat((double) apart).isLessThan(0.05 * four + ONE_SIDE * Math.sqrt(four * 0.05 * 0.95));
    assertThat((double) found)
        .isCloseTo(0.05 * RUNS, within(TWO_SIDES * Math.sqrt(RUNS * 0.05 * 0.95)));
  }

  private static boolean neighborsApart(RatingFit fit) {
    List<Integer> order =
        IntStream.range(0, EQUAL)
            .boxed()
            .sorted(
                Comparator.comparingDouble((Integer at) -> -fit.rating(at).orElseThrow().value()))
            .toList();
    return IntStream.range(0, EQUAL - 1)
        .anyMatch(
            at ->
                fit.difference(order.get(at), order.get(at + 1)).interval().orElseThrow().low()
                    > 0);
  }

  private static Sameness joint(List<RatingFit> cards) {
    List<double[]> differences = new ArrayList<>();
    List<double[][]> covariances = new ArrayList<>();
    for (RatingFit fit : cards) {
      double[] from = new double[EQUAL - 1];
      double[][] covariance = new double[EQUAL - 1][EQUAL - 1];
      for (int a = 0; a < EQUAL - 1; a++) {
        from[a] = fit.difference(a + 1, 0).value();
        for (int b = 0; b < EQUAL - 1; b++) {
          covariance[a][b] =
              (square(fit, a + 1, 0) + square(fit, b + 1, 0) - square(fit, a + 1, b + 1)) / 2;
        }
      }
      differences.add(from);
      covariances.add(covariance);
    }
    return Sameness.of(differences, covariances);
  }

  private static double square(RatingFit fit, int player, int other) {
    double error = fit.errorOfDifference(player, other);
    return error * error;
  }
}
