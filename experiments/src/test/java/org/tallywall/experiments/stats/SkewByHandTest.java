package org.tallywall.experiments.stats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigInteger;
import org.apache.commons.math3.distribution.TDistribution;
import org.junit.jupiter.api.Test;

/**
 * The test of a ratio with its skewness, beside one that goes through the deals in plain numbers.
 */
class SkewByHandTest {
  private static final long[] RARE_LOSSES = {5, 4, 6, 5, 3, 5, 4, 6, -20, 5, 4, -18};
  private static final long[] SOME = {1, 2, 1, 3, 1, 2, 2, 1, 4, 1, 2, 3};

  private static SkewTest of(long[] x, long[] y) {
    long[] sums = new long[9];
    for (int at = 0; at < x.length; at++) {
      long[] terms = {
        x[at],
        y[at],
        x[at] * x[at],
        x[at] * y[at],
        y[at] * y[at],
        x[at] * x[at] * x[at],
        x[at] * x[at] * y[at],
        x[at] * y[at] * y[at],
        y[at] * y[at] * y[at]
      };
      for (int sum = 0; sum < terms.length; sum++) {
        sums[sum] += terms[sum];
      }
    }
    PairMoments moments =
        new PairMoments(
            x.length, big(sums[0]), big(sums[1]), big(sums[2]), big(sums[3]), big(sums[4]));
    return new SkewTest(moments, big(sums[5]), big(sums[6]), big(sums[7]), big(sums[8]));
  }

  private static BigInteger big(long value) {
    return BigInteger.valueOf(value);
  }

  /** The two p-values, without and with the skewness removed. */
  private static double[] plain(long[] x, long[] y) {
    int n = x.length;
    double sumX = 0;
    double sumY = 0;
    for (int at = 0; at < n; at++) {
      sumX += x[at];
      sumY += y[at];
    }
    double ratio = sumX / sumY;
    double second = 0;
    double third = 0;
    for (int at = 0; at < n; at++) {
      double off = x[at] - ratio * y[at];
      second += off * off / n;
      third += off * off * off / n;
    }
    double g = third / Math.pow(second, 1.5);
    double t = ratio * (sumY / n) * Math.sqrt(n - 1.0) / Math.sqrt(second);
    double u = t / Math.sqrt(n);
    double straight = u + g * u * u / 3 + g * g * u * u * u / 27 + g / (6 * n);
    TDistribution curve = new TDistribution(null, n - 1.0);
    return new double[] {
      2 * curve.cumulativeProbability(-Math.abs(t)),
      2 * curve.cumulativeProbability(-Math.abs(straight * Math.sqrt(n))),
      g
    };
  }

  @Test
  void p_isTheLargerOfBoth_whicheverThatIs() {
    long[] gains = RARE_LOSSES.clone();
    for (int at = 0; at < gains.length; at++) {
      gains[at] = at < 8 ? 2 + at % 2 : 9 + 10L * (at % 3);
    }
    double[] losses = plain(RARE_LOSSES, SOME);
    double[] up = plain(gains, SOME);

    assertThat(of(RARE_LOSSES, SOME).skewness()).isCloseTo(losses[2], within(1e-12));
    assertThat(of(RARE_LOSSES, SOME).p()).isCloseTo(Math.max(losses[0], losses[1]), within(1e-12));
    assertThat(of(gains, SOME).p()).isCloseTo(Math.max(up[0], up[1]), within(1e-12));
    assertThat(losses[1] - losses[0]).isPositive();
    assertThat(up[1] - up[0]).isNegative();
  }

  @Test
  void p_withoutSpread_isRefused() {
    assertThatThrownBy(() -> of(new long[] {2, 2, 2}, new long[] {1, 1, 1}).p())
        .isInstanceOf(IllegalStateException.class);
  }
}
