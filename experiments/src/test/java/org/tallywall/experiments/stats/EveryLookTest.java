package org.tallywall.experiments.stats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.distribution.BinomialDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tallywall.core.random.Purpose;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.random.StreamKey;

/** Ranges and p-values that hold at every look. */
class EveryLookTest {
  private static final double LEVEL = 0.95;

  /** The closed form with r² = 1/rho, as its authors print it, against the same by our band. */
  @ParameterizedTest
  @ValueSource(longs = {1_000, 5_000, 20_000, 1_000_000, 500_000_000})
  void reach_isThatOfTheAsymptoticBand(long deals) {
    double r2 = (2 * Math.log(20) + Math.log(1 + 2 * Math.log(20))) / 5_000;
    double printed =
        Math.sqrt(2 * (deals * r2 + 1) / (deals * r2) * Math.log(Math.sqrt(deals * r2 + 1) / 0.05));

    EveryLook look = new EveryLook(deals, LEVEL);

    assertThat(look.reach()).isCloseTo(printed, within(1e-12));
    assertThat(look.reach())
        .isCloseTo(
            AlwaysValid.asymptotic(deals, 7, 7 * AlwaysValid.tuning(5_000, 0.05), 0.05)
                / Math.sqrt(7.0 / deals),
            within(1e-9));
    assertThat(Normal.quantile(1 - (1 - look.level()) / 2)).isCloseTo(look.reach(), within(1e-4));
  }

  /** At the edge of the range the chance is just what the level leaves; a smaller p gives less. */
  @Test
  void chance_agreesWithTheRange() {
    for (long deals : new long[] {1_000, 7_500, 200_000}) {
      EveryLook look = new EveryLook(deals, LEVEL);
      double edge = 1 - look.level();

      assertThat(look.chance(edge)).isCloseTo(0.05, within(1e-6));
      assertThat(look.chance(edge / 2)).isLessThan(0.05);
      assertThat(look.chance(edge * 2)).isGreaterThan(0.05);
      assertThat(look.chance(1)).isEqualTo(1);
      assertThat(look.chance(0)).isPositive().isLessThan(1e-6);
    }
  }

  @Test
  void look_atTooFewDeals_isRefused() {
    assertThatThrownBy(() -> new EveryLook(999, LEVEL)).hasMessageContaining("1000 deals, not 999");
  }

  /** A level so near 1 that no number is nearer has no ranges rather than too short ones. */
  @Test
  void level_beyondAllNumbers_isOne() {
    assertThat(new EveryLook(1_000, 1 - 1e-14).level()).isEqualTo(1);
    assertThat(new EveryLook(1_000, 0.999).level()).isBetween(0.999, 1 - 1e-9);
  }

  /**
   * H0: a null run's range leaves out 0, and its p-value falls below 0.05, at some of 38 looks from
   * 1,000 to 20,000 deals in at most 5 % of runs. 400 runs of deals worth 1 or -1 in 5.5 % each,
   * seed 41; more than the 1 - 1e-6 quantile of the binomial distribution (400, 0.05), 42, refutes
   * it, and a fresh seed would do so once in a million. The same looks with ordinary 95 % ranges
   * must exceed that bound, or the test could not fail.
   */
  @Test
  void nullRuns_lookedAtAfterEveryBlock_areFoundAsRarelyAsTheySay() {
    int runs = 400;
    int bound = new BinomialDistribution(null, runs, 0.05).inverseCumulativeProbability(1 - 1e-6);
    int missed = 0;
    int found = 0;
    int peeked = 0;
    for (int run = 0; run < runs; run++) {
      RandomStream random = new RandomStream(new StreamKey(41, run, Purpose.ROLLOUT, 0, 0, 0));
      List<Double> ordinary = new ArrayList<>();
      boolean out = false;
      boolean low = false;
      long sum = 0;
      long differing = 0;
      for (int deal = 1; deal <= 20_000; deal++) {
        int drawn = random.below(2_000);
        sum += drawn < 110 ? 1 : drawn < 220 ? -1 : 0;
        differing += drawn < 220 ? 1 : 0;
        if (deal % 500 == 0 && deal >= EveryLook.LEAST) {
          EveryLook look = new EveryLook(deal, LEVEL);
          double z = Math.abs(sum) / Math.sqrt(differing - (double) sum * sum / deal);
          out |= z > look.reach();
          low |= look.chance(2 * (1 - phi(z))) < 0.05;
          ordinary.add(z);
        }
      }
      missed += out ? 1 : 0;
      found += low ? 1 : 0;
      peeked += ordinary.stream().anyMatch(z -> z > 1.959963984540) ? 1 : 0;
    }

    assertThat(missed).isPositive().isLessThanOrEqualTo(bound);
    assertThat(found).isEqualTo(missed);
    assertThat(peeked).isGreaterThan(bound);
  }

  private static double phi(double z) {
    return 1 - org.apache.commons.math3.special.Erf.erfc(z / Math.sqrt(2)) / 2;
  }
}
