package org.tallywall.experiments.stats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.distribution.BinomialDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tallywall.core.random.Purpose;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.random.StreamKey;

/** Ranges of differences that hardly any deal shows. */
class FewDealsTest {
  private static final int STUDIES = 2_000;

  private static FewDeals of(int deals, int seats, long... fromLowest) {
    return new FewDeals(deals, seats, size -> fromLowest[size + seats]);
  }

  /** One seat, 3 with more and 1 with fewer in 50: limits of 3 / 50 and 1 / 50 at 97.5 % each. */
  @Test
  void oneSeat_isTheDifferenceOfTwoExactLimits() {
    Estimate estimate = of(50, 1, 1, 46, 3).estimate(0.95);
    Interval more = new Proportion(3, 50).clopperPearson(0.975);
    Interval fewer = new Proportion(1, 50).clopperPearson(0.975);

    assertThat(estimate.value()).isCloseTo(0.04, within(1e-12));
    assertThat(estimate.interval().orElseThrow().low())
        .isCloseTo(more.low() - fewer.high(), within(1e-12));
    assertThat(estimate.interval().orElseThrow().high())
        .isCloseTo(more.high() - fewer.low(), within(1e-12));
  }

  @Test
  void noDealThatDiffers_hasTheLimitOfNoneOfSoMany() {
    Interval range = of(30, 4, 0, 0, 0, 0, 30, 0, 0, 0, 0).estimate(0.95).interval().orElseThrow();

    assertThat(range.high()).isCloseTo(1 - Math.pow(0.025, 1.0 / 30), within(1e-9));
    assertThat(range.low()).isEqualTo(-range.high());
  }

  /** The p-value is the allowance at which the range begins to leave out 0. */
  @Test
  void p_isTheAllowanceAtWhichTheRangeLeavesOutZero() {
    FewDeals nine = of(40, 1, 0, 31, 9);
    double p = nine.p();

    assertThat(p).isBetween(0.01, 0.1);
    assertThat(nine.estimate(1 - 1.01 * p).interval().orElseThrow().low()).isPositive();
    assertThat(nine.estimate(1 - 0.99 * p).interval().orElseThrow().low()).isNegative();
    assertThat(of(40, 1, 1, 38, 1).p()).isGreaterThan(0.99);
  }

  /**
   * H0: the range misses the truth in at most 5 % of studies. Deals differ in 2.8 % (as with wall
   * games), 3 % or 0.3 %, by one seat more in 8 of 10 and by one fewer else, or by one seat more
   * always; 2,000 studies each, seed 21; more than the 1 - 1e-6 quantile of the binomial
   * distribution refutes it. Student's interval on the same studies has to exceed that bound, or
   * there would be no need.
   */
  @ParameterizedTest
  @CsvSource({"30, 28, 8", "100, 30, 10", "1000, 3, 10"})
  void fewDeals_missAsRarelyAsTheySay(int deals, int thousandths, int moreOfTen) {
    int bound =
        new BinomialDistribution(null, STUDIES, 0.05).inverseCumulativeProbability(1 - 1e-6);
    double truth = thousandths / 1000.0 * (2 * moreOfTen - 10) / 10 / 4;
    int missed = 0;
    int missedByStudent = 0;
    for (int study = 0; study < STUDIES; study++) {
      RandomStream random =
          new RandomStream(new StreamKey(21, study, Purpose.ROLLOUT, deals, thousandths, 0));
      long[] values = new long[deals];
      long[] sizes = new long[9];
      for (int deal = 0; deal < deals; deal++) {
        if (random.below(1000) < thousandths) {
          values[deal] = random.below(10) < moreOfTen ? 1 : -1;
        }
        sizes[(int) values[deal] + 4]++;
      }
      missed += leavesOut(of(deals, 4, sizes).estimate(0.95), truth);
      missedByStudent += leavesOut(Moments.of(values).estimate(0.95, 4), truth);
    }

    assertThat(missed).isLessThanOrEqualTo(bound);
    assertThat(missedByStudent).isGreaterThan(bound);
  }

  /** 1 where the range, or the value that has none, leaves out the truth. */
  private static int leavesOut(Estimate estimate, double truth) {
    return estimate.interval().isPresent()
            && estimate.interval().get().low() <= truth
            && truth <= estimate.interval().get().high()
        ? 0
        : 1;
  }
}
