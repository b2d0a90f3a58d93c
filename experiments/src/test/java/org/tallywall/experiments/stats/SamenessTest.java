package org.tallywall.experiments.stats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class SamenessTest {
  /** Two places: the square of the difference over its variance, as on paper. */
  @Test
  void statistic_oneNumberInTwoPlaces_isTheSquareOfZ() {
    Sameness test =
        Sameness.of(
            List.of(new double[] {1}, new double[] {3}),
            List.of(new double[][] {{0.5}}, new double[][] {{1.5}}));

    assertThat(test.statistic()).isCloseTo(2, within(1e-12));
    assertThat(test.degrees()).isEqualTo(1);
    assertThat(test.p()).isCloseTo(0.1572992, within(1e-6)); // 2 (1 - Phi(1.4142136)), tables
    assertThat(test.critical(0.05)).isCloseTo(3.8415, within(1e-4)); // tables of chi-squared
  }

  /** Two places and two numbers: d' (V1 + V2)^-1 d, with the inverse written out. */
  @Test
  void statistic_numbersThatHangTogether_minds() {
    Sameness test =
        Sameness.of(
            List.of(new double[] {1, 0}, new double[] {0, 1}),
            List.of(new double[][] {{1, 0.5}, {0.5, 1}}, new double[][] {{1, 0.5}, {0.5, 1}}));

    // V1 + V2 = {{2, 1}, {1, 2}}, its inverse {{2, -1}, {-1, 2}} / 3, d = (1, -1)
    assertThat(test.statistic()).isCloseTo(6.0 / 3, within(1e-12));
    assertThat(test.degrees()).isEqualTo(2);
  }

  @Test
  void critical_twentyOneDegrees_isThatOfTheTables() {
    assertThat(new Sameness(0, 21).critical(0.05)).isCloseTo(32.6706, within(1e-4));
  }
}
