package org.tallywall.experiments.stats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigInteger;
import org.junit.jupiter.api.Test;

/** The t interval of a mean over deals, against published examples. */
class MomentsTest {

  /**
   * Student, Biometrika 6 (1908): hours of sleep gained, differences of ten patients, in tenths.
   * Published: t = 4.0621, 95 % interval 0.7001142 to 2.4598858; more places worked out anew.
   */
  @Test
  void estimate_sleepOfStudent_agreesWithThePublishedInterval() {
    Moments tenths = Moments.of(12, 24, 13, 13, 0, 10, 18, 8, 46, 14);

    Estimate hours = tenths.estimate(0.95, 10);

    assertThat(hours.value()).isCloseTo(1.58, within(1e-15));
    assertThat(tenths.standardError() / 10).isCloseTo(0.3889587239, within(1e-10));
    assertThat(hours.value() / (tenths.standardError() / 10)).isCloseTo(4.0621276834, within(1e-9));
    assertThat(hours.interval().orElseThrow().low()).isCloseTo(0.7001142367, within(1e-10));
    assertThat(hours.interval().orElseThrow().high()).isCloseTo(2.4598857633, within(1e-10));
    assertThat(hours.method()).isEqualTo(Method.T_OVER_DEALS);
  }

  /**
   * Law, Simulation Modeling and Analysis (2013), example 4.27, in hundredths: mean 1.343, variance
   * 0.16751222; the book prints the 90 % interval as 1.34 ± 0.24 (from memory), more places worked
   * out anew.
   */
  @Test
  void estimate_exampleOfLaw_agreesWithTheBook() {
    Moments hundredths = Moments.of(120, 150, 168, 189, 95, 149, 158, 155, 50, 109);

    assertThat(hundredths.variance() / 10_000).isCloseTo(0.16751222, within(5e-9));
    assertThat(half(hundredths.estimate(0.9, 100))).isCloseTo(0.23725341, within(5e-9));
    assertThat(half(hundredths.estimate(0.95, 100))).isCloseTo(0.29278311, within(5e-9));
    assertThat(hundredths.estimate(0.9, 100).value()).isCloseTo(1.343, within(1e-14));
  }

  /**
   * Six deals of four games, the value of a deal being the difference of two players' wins. The
   * deal is the unit: were each game one, the error would come out as 0.0983, which is wrong.
   */
  @Test
  void standardError_gamesThatShareADeal_countsDeals() {
    Moments quarters = Moments.of(1, -1, 2, 0, 1, 1);

    Estimate estimate = quarters.estimate(0.95, 4);

    assertThat(estimate.value()).isCloseTo(0.1666666667, within(1e-10));
    assertThat(quarters.standardError() / 4).isCloseTo(0.1054092553, within(1e-10));
    assertThat(half(estimate)).isCloseTo(0.2709631171, within(1e-10));
  }

  @Test
  void variance_hugeAndNearlyEqualValues_losesNothing() {
    long big = 4_000_000_000_000_000_000L;

    assertThat(Moments.of(big, big + 2).variance()).isEqualTo(2.0);
  }

  @Test
  void estimate_oneDeal_hasNoLimits() {
    assertThat(Moments.of(8).estimate(0.95, 4).value()).isEqualTo(2.0);
    assertThat(Moments.of(8).estimate(0.95, 4).interval()).isEmpty();
    assertThatThrownBy(() -> Moments.of(8).variance()).isInstanceOf(IllegalStateException.class);
    assertThatThrownBy(() -> new Moments(0, BigInteger.ZERO, BigInteger.ZERO).mean())
        .isInstanceOf(IllegalStateException.class);
  }

  private static double half(Estimate estimate) {
    Interval interval = estimate.interval().orElseThrow();
    return (interval.high() - interval.low()) / 2;
  }
}
