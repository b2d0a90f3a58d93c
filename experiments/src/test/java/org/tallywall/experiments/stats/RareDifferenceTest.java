package org.tallywall.experiments.stats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.distribution.BinomialDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Limits of a difference of two rare shares: known cases, and their coverage added up exactly. */
class RareDifferenceTest {
  /** The rule of three, from both sides: 1 − 0.025^(1/31) = 0.1122, worked out by hand. */
  @Test
  void nothingDiffered_theLimitsAreThoseOfNoEventInAllDeals() {
    Interval limits = new RareDifference(0, 0, 31).interval(0.95);

    assertThat(limits.high()).isEqualTo(1 - Math.pow(0.025, 1 / 31.0), within(1e-12));
    assertThat(limits.low()).isEqualTo(-limits.high());
    assertThat(new RareDifference(0, 0, 31).p()).isEqualTo(1);
  }

  /** Five more and none fewer: 2 · (1/2)^5. */
  @Test
  void test_isTheSignTest() {
    assertThat(new RareDifference(5, 0, 40).p()).isEqualTo(1 / 16.0, within(1e-15));
    assertThat(new RareDifference(2, 8, 40).p()).isEqualTo(2 * 56 / 1024.0, within(1e-15));
  }

  @Test
  void turnedRound_theLimitsTurnToo() {
    Interval one = new RareDifference(7, 2, 50).interval(0.99);
    Interval other = new RareDifference(2, 7, 50).interval(0.99);

    assertThat(other.low()).isEqualTo(-one.high(), within(1e-15));
    assertThat(other.high()).isEqualTo(-one.low(), within(1e-15));
  }

  /**
   * Every pair of counts with its exact chance (trinomial): the true difference is left out no more
   * often than the level says. No chance is simulated, so a fresh seed has no part in it.
   */
  @ParameterizedTest
  @CsvSource({
    "30, 0.0, 0.0", "30, 0.01, 0.01", "30, 0.03, 0.0", "30, 0.1, 0.02", "30, 0.25, 0.25",
    "30, 0.5, 0.4", "30, 0.9, 0.05", "30, 0.06, 0.3", "60, 0.005, 0.01", "60, 0.05, 0.05",
    "60, 0.2, 0.01", "60, 0.48, 0.48", "150, 0.002, 0.0", "150, 0.01, 0.02", "150, 0.08, 0.02"
  })
  void limits_leaveOutTheTruth_noMoreOftenThanTheLevelSays(int deals, double up, double down) {
    double missed = 0;
    BinomialDistribution more = new BinomialDistribution(null, deals, up);
    for (int ups = 0; ups <= deals; ups++) {
      double chance = more.probability(ups);
      BinomialDistribution fewer =
          new BinomialDistribution(null, deals - ups, up == 1 ? 0 : down / (1 - up));
      for (int downs = 0; chance > 1e-9 && downs <= deals - ups; downs++) {
        double both = chance * fewer.probability(downs);
        if (both > 1e-9) {
          Interval limits = new RareDifference(ups, downs, deals).interval(0.95);
          boolean out = limits.low() > up - down + 1e-12 || limits.high() < up - down - 1e-12;
          missed += out ? both : 0;
        }
      }
    }
    assertThat(missed).isLessThanOrEqualTo(0.05);
  }
}
