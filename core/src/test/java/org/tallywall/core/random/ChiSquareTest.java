package org.tallywall.core.random;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** The yardstick itself, against worked examples. */
class ChiSquareTest {
  /** Mendel's peas, 315 101 108 32 against 9:3:3:1: 0.470 in the textbooks (from memory). */
  @Test
  void statistic_ofMendelsPeas_isTheTextbooks() {
    double statistic =
        ChiSquare.statistic(
            new long[] {315, 101, 108, 32}, new double[] {9 / 16.0, 3 / 16.0, 3 / 16.0, 1 / 16.0});
    assertThat(statistic).isCloseTo(0.4700239808, within(1e-9));
  }

  @Test
  void even_ofThreeCells_isWorkedByHand() {
    assertThat(ChiSquare.even(new long[] {10, 20, 30})).isCloseTo(10.0, within(1e-12));
  }

  @Test
  void statistic_ofChancesThatDoNotSumToOne_isRefused() {
    assertThatThrownBy(() -> ChiSquare.statistic(new long[] {1, 2}, new double[] {0.5, 0.4}))
        .hasMessageContaining("0.9");
  }
}
