package org.tallywall.experiments.stats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Bands against the figures of their authors' own test file (Howard, Ramdas, McAuliffe and Sekhon),
 * published to seven digits, and against a worked stream of deals.
 */
class AlwaysValidTest {
  private static final double ALPHA = 0.05;

  @Test
  void bounds_authorsFigures_agree() {
    double rho = AlwaysValid.tuning(100, ALPHA);
    double oneSided = AlwaysValid.tuning(100, 2 * ALPHA);

    assertThat(rho).isCloseTo(12.60056, within(5e-6));
    assertThat(AlwaysValid.normalMixture(100, rho, ALPHA)).isCloseTo(30.35209, within(5e-6));
    assertThat(oneSided).isCloseTo(15.8006349069, within(1e-9));
    assertThat(AlwaysValid.logGammaExponential(10, 100, oneSided, 2))
        .isCloseTo(-0.2490165, within(5e-8));
    assertThat(AlwaysValid.gammaExponential(100, oneSided, ALPHA, 2))
        .isCloseTo(33.02017, within(5e-6));
  }

  /**
   * A block of 100 deals with six gains and five losses, repeated; the half-widths were worked out
   * by a second program.
   */
  @ParameterizedTest
  @CsvSource({
    "100, 11.5733712504, 0.3469040796, 0.3014132386",
    "1000, 110.7395443820, 0.0453737927, 0.0404330919",
    "10000, 1100.0929284181, 0.0106854674, 0.0100625896",
    "50000, 5496.2698351190, 0.0048292357, 0.0046744624"
  })
  void halfWidths_ofAWorkedStream_agree(
      int n, double squares, double bernstein, double asymptotic) {
    double rho = AlwaysValid.tuning(1100, ALPHA);
    double sum = 0;
    double v = 0;
    double all = 0;
    for (int deal = 0; deal < n; deal++) {
      int x = value(deal % 100);
      double guess = deal == 0 ? 0 : sum / deal;
      v += (x - guess) * (x - guess);
      sum += x;
      all += x * x;
    }
    double variance = (all - sum * sum / n) / (n - 1);

    assertThat(v).isCloseTo(squares, within(1e-8));
    assertThat(AlwaysValid.empiricalBernstein(n, v, rho, ALPHA, 2))
        .isCloseTo(bernstein, within(1e-9));
    assertThat(AlwaysValid.asymptotic(n, variance, rho, ALPHA)).isCloseTo(asymptotic, within(1e-9));
  }

  private static int value(int place) {
    for (int gain : new int[] {3, 19, 37, 55, 73, 91}) {
      if (place == gain) {
        return 1;
      }
    }
    for (int loss : new int[] {11, 29, 47, 65, 83}) {
      if (place == loss) {
        return -1;
      }
    }
    return 0;
  }
}
