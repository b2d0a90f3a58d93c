package org.tallywall.strategies.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Rows read at their columns, between them and beyond them, worked out by hand. */
class WallColumnsTest {
  private static final double[] ROW = {1, 5, 4};

  @ParameterizedTest
  @CsvSource({"0, 1", "9, 1", "10, 1", "11, 1.2", "20, 3", "30, 5", "40, 4.5", "50, 4", "99, 4"})
  void value_liesOnStraightLinesBetweenTheColumns(int wall, double value) {
    assertThat(WallColumns.between(ROW, wall)).isCloseTo(value, within(1e-12));
  }

  @ParameterizedTest
  @CsvSource({"0", "10", "30", "99"})
  void rowOfOneColumn_isLevel(int wall) {
    assertThat(WallColumns.between(new double[] {7}, wall)).isEqualTo(7);
  }
}
