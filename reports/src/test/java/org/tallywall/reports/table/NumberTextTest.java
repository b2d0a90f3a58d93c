package org.tallywall.reports.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NumberTextTest {

  /**
   * Digits: Python 3.11.7, {@code '%.17g' % x}; the point moved by hand where it gives an exponent.
   */
  @ParameterizedTest
  @CsvSource({
    "0.1, 0.10000000000000001",
    "0.66666666666666666, 0.66666666666666663",
    "0.2237, 0.22370000000000001",
    "-0.41, -0.40999999999999998",
    "0.2156393512, 0.2156393512",
    "123456789.123456789, 123456789.12345679",
    "1e-7, 0.000000099999999999999995",
    "1e23, 99999999999999992000000",
    "2.98023223876953125e-8, 0.000000029802322387695312",
    "1000000000000000.25, 1000000000000000.2",
    "9007199254740992, 9007199254740992",
    "100, 100",
    "3e5, 300000",
    "0.5, 0.5"
  })
  void number_inFull_hasSeventeenDigitsAndNoExponent(double value, String text) {
    assertThat(NumberText.of(value)).isEqualTo(text);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.0, -0.0})
  void zero_ofEitherSign_isPlain(double zero) {
    assertThat(NumberText.of(zero)).isEqualTo("0");
  }

  @Test
  void smallestNumber_inFull_hasNoExponent() {
    assertThat(NumberText.of(Double.MIN_VALUE)).hasSize(2 + 323 + 17).endsWith("49406564584124654");
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
  void number_notFinite_isRefused(double value) {
    assertThatThrownBy(() -> NumberText.of(value))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("empty cell where there is no value");
  }

  /** IEEE 754-2019, 5.12.2: 17 significant digits bring the same double back. */
  @Test
  void text_readBack_isTheSameDouble() {
    SplittableRandom random = new SplittableRandom(20261125);
    for (int i = 0; i < 20_000; i++) {
      double value = Double.longBitsToDouble(random.nextLong());
      if (Double.isFinite(value)) {
        assertThat(new BigDecimal(NumberText.of(value)).doubleValue()).isEqualTo(value + 0.0);
      }
    }
  }
}
