package org.tallywall.experiments.club;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** How likely a tally is at a table, beside sums worked out by hand. */
class LikelihoodTest {
  private static final double EXACT = 1e-9;

  /** 3.5 x 4.5 x 5.5 / (9 x 10 x 11), the compound binomial without its coefficient. */
  @Test
  void log_twoBoxes_isTheFractionWorkedOutByHand() {
    double log = Likelihood.log(new long[][] {{2, 1}}, new long[][] {{3, 5}});
    assertThat(StrictMath.exp(log)).isCloseTo(86.625 / 990, within(EXACT));
  }

  @Test
  void log_threeBoxes_addUpToOneOverAllTallies() {
    long[][] played = {{4, 0, 9}};
    double sum = 0;
    for (int one = 0; one <= 4; one++) {
      for (int two = 0; one + two <= 4; two++) {
        int three = 4 - one - two;
        long ways = factorial(4) / (factorial(one) * factorial(two) * factorial(three));
        sum += ways * StrictMath.exp(Likelihood.log(new long[][] {{one, two, three}}, played));
      }
    }
    assertThat(sum).isCloseTo(1, within(EXACT));
  }

  private static long factorial(int n) {
    return n <= 1 ? 1 : n * factorial(n - 1);
  }

  @Test
  void log_whatWasNotCounted_saysNothing() {
    long[][] played = {{4, 96}, {30, 66}, {50, 46}};
    long[][] walls = {{2, 8}, {}, {}};
    assertThat(Likelihood.log(walls, played))
        .isEqualTo(Likelihood.log(new long[][] {{2, 8}}, new long[][] {{4, 96}}));
  }

  /** 2 (6 ln(6/4) + 4 ln(4/6)), with 39.5 + 0.5 and 59.5 + 0.5 games at the table. */
  @Test
  void distance_isTheStatisticGWorkedOutByHand() {
    double found = Likelihood.distance(new long[][] {{60, 40}}, new long[][] {{40, 60}});
    double first = 100 * 40.5 / 101;
    double byHand = 2 * (60 * StrictMath.log(60 / first) + 40 * StrictMath.log(40 / (100 - first)));
    assertThat(found).isCloseTo(byHand, within(EXACT));
    assertThat(Likelihood.distance(new long[][] {{1, 1}}, new long[][] {{7, 7}})).isZero();
  }

  @Test
  void shares_ofLogsFarBelowZero_addUpToOne() {
    double[] shares = Likelihood.shares(new double[] {-2000, -2000 + StrictMath.log(3)});
    assertThat(shares[0]).isCloseTo(0.25, within(EXACT));
    assertThat(shares[1]).isCloseTo(0.75, within(EXACT));
  }
}
