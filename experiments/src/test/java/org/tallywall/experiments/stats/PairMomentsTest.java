package org.tallywall.experiments.stats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigInteger;
import org.junit.jupiter.api.Test;

/** The ratio of two sums over deals. */
class PairMomentsTest {

  /**
   * Four deals worked by hand: x 1 0 2 1, y 2 1 3 2. Ratio 1/2; residuals 0, −1/2, 1/2, 0 with
   * squares summing to 1/2; error = sqrt(1/2 · 4/3) / 8.
   */
  @Test
  void estimate_fourDealsByHand_agrees() {
    PairMoments deals = of(new long[] {1, 0, 2, 1}, new long[] {2, 1, 3, 2});

    assertThat(deals.ratio()).isEqualTo(0.5);
    assertThat(deals.standardError()).isCloseTo(Math.sqrt(2.0 / 3) / 8, within(1e-16));
    // The t quantile for three degrees of freedom, 3.1824463053, is in every printed table.
    assertThat(deals.estimate(0.95).interval().orElseThrow().high())
        .isCloseTo(0.5 + 3.1824463053 * Math.sqrt(2.0 / 3) / 8, within(1e-10));
  }

  /** With the same number below the line in every deal the ratio is a mean, and so is its error. */
  @Test
  void standardError_sameNumberBelowInEveryDeal_isThatOfTheMean() {
    PairMoments ratio = of(new long[] {3, 1, 0, 2, 4, 1}, new long[] {4, 4, 4, 4, 4, 4});
    Moments mean = Moments.of(3, 1, 0, 2, 4, 1);

    assertThat(ratio.ratio()).isCloseTo(mean.mean() / 4, within(1e-15));
    assertThat(ratio.standardError()).isCloseTo(mean.standardError() / 4, within(1e-15));
  }

  @Test
  void ratio_nothingBelowTheLine_isRefused() {
    PairMoments empty = of(new long[] {0, 0}, new long[] {0, 0});

    assertThatThrownBy(empty::ratio).isInstanceOf(IllegalStateException.class);
    assertThatThrownBy(empty::standardError).isInstanceOf(IllegalStateException.class);
  }

  private static PairMoments of(long[] x, long[] y) {
    long[] sums = new long[5];
    for (int i = 0; i < x.length; i++) {
      sums[0] += x[i];
      sums[1] += y[i];
      sums[2] += x[i] * x[i];
      sums[3] += x[i] * y[i];
      sums[4] += y[i] * y[i];
    }
    return new PairMoments(
        x.length, big(sums[0]), big(sums[1]), big(sums[2]), big(sums[3]), big(sums[4]));
  }

  private static BigInteger big(long value) {
    return BigInteger.valueOf(value);
  }
}
