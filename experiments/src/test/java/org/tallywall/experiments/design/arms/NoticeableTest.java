package org.tallywall.experiments.design.arms;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import org.apache.commons.math3.distribution.BinomialDistribution;
import org.junit.jupiter.api.Test;
import org.tallywall.core.random.Purpose;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.random.StreamKey;
import org.tallywall.experiments.study.Measure;
import org.tallywall.experiments.tally.PairTally;

/** How small a difference a run is said to notice, before it is played. */
class NoticeableTest {
  private static final int WORTH = 60;
  private static final int DRAWN = 1_000_000;

  /** Deals worth 60 or -60 in a tenth each, the one more often by half of a share of deals. */
  private static PairNumbers deals(RandomStream random, int number, double mean) {
    PairTally tally = new PairTally();
    int shift = (int) Math.round(mean / WORTH / 2 * DRAWN);
    for (int deal = 0; deal < number; deal++) {
      int drawn = random.below(DRAWN);
      long value = drawn < DRAWN / 10 + shift ? WORTH : drawn < DRAWN / 5 ? -WORTH : 0;
      tally.addDeal(new long[] {value}, new long[] {0});
    }
    return new PairNumbers(tally, Measure.POINTS, 1, 0.95);
  }

  private static RandomStream stream(int study, int place) {
    return new RandomStream(new StreamKey(43, study, Purpose.ROLLOUT, place, 0, 0));
  }

  /** The formula by hand: (1.959964 + 1.281552) · 26.83 / sqrt(1,000), the spread being known. */
  @Test
  void size_isSoManyStandardErrors() {
    double size = Noticeable.size(deals(stream(0, 0), 200_000, 0), 1, 1_000).getAsDouble();

    assertThat(size).isCloseTo(3.2415155501 * 26.8328 / Math.sqrt(1_000), within(0.02));
  }

  /**
   * H0: a run of 1,000 deals whose true difference is what 500 deals before it said that it will
   * notice finds that difference (p below 0.05) in nine of ten cases. 2,000 runs, seed 43; a number
   * beyond the 5e-7 quantiles of the binomial distribution (2,000, 0.9), 1,731 and 1,863, refutes
   * it; a fresh seed would do so about once in a million, as the normal approximation is off by far
   * less than the width. A run with half of that difference must be outside, or the test could not
   * fail.
   */
  @Test
  void runs_noticeTheDifferenceAsOftenAsIsSaid() {
    int runs = 2_000;
    BinomialDistribution said = new BinomialDistribution(null, runs, 0.9);
    int found = 0;
    int foundOfHalf = 0;
    for (int run = 0; run < runs; run++) {
      PairNumbers before = deals(stream(run, 1), 500, 0);
      double size = Noticeable.size(before, 1, 1_000).getAsDouble();
      found += isFound(deals(stream(run, 2), 1_000, size)) ? 1 : 0;
      foundOfHalf += isFound(deals(stream(run, 2), 1_000, size / 2)) ? 1 : 0;
    }

    int low = said.inverseCumulativeProbability(5e-7);
    assertThat(found).isBetween(low, said.inverseCumulativeProbability(1 - 5e-7));
    assertThat(foundOfHalf).isPositive().isLessThan(low);
  }

  private static boolean isFound(PairNumbers numbers) {
    return numbers.p().getAsDouble() < 0.05 && numbers.difference().value() > 0;
  }

  @Test
  void size_ofDealsThatHardlyDiffer_isNotSaid() {
    PairTally alike = new PairTally();
    for (int deal = 0; deal < 500; deal++) {
      alike.addDeal(new long[] {deal < 9 ? 1 : 0}, new long[] {0});
    }
    OptionalDouble size =
        Noticeable.size(new PairNumbers(alike, Measure.POINTS, 1, 0.95), 1, 1_000);

    assertThat(size).isEmpty();
  }
}
