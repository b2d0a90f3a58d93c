package org.tallywall.reports.svg;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TicksTest {

  @ParameterizedTest
  @CsvSource({
    "0, 100, 5, '0 20 40 60 80 100'",
    "-0.73, 0.5, 6, '-1.0 -0.5 0.0 0.5'",
    "0.1, 0.3, 2, '0.1 0.2 0.3'",
    "3, 3, 5, '2.6 2.8 3.0 3.2 3.4'",
    "0, 0, 4, '-1.0 -0.5 0.0 0.5 1.0'",
    "-2500, 12000, 4, '-5000 0 5000 10000 15000'",
    "21.9, 22.1, 3, '21.9 22.0 22.1'"
  })
  void ticks_ofARange_areRoundNumbersAroundIt(double low, double high, int most, String expected) {
    List<BigDecimal> values = Ticks.of(low, high, most).values();
    assertThat(values.stream().map(BigDecimal::toPlainString)).containsExactly(expected.split(" "));
  }

  /** One step cannot reach to both sides of zero: it is taken as two. */
  @Test
  void ticks_inOneStepAroundZero_areThree() {
    List<BigDecimal> values = Ticks.of(-3, 4, 1).values();
    assertThat(values.stream().map(BigDecimal::toPlainString)).containsExactly("-5", "0", "5");
  }

  /** Over ranges of all sizes: never more steps than wished, and nothing lies outside. */
  @Test
  void ticks_ofAnyRange_holdItWithFewSteps() {
    for (double low = -977.3; low < 1000; low += 61.7) {
      for (double length = 0.0013; length < 1e6; length *= 3.7) {
        for (int most = 2; most <= 12; most++) {
          Ticks ticks = Ticks.of(low, low + length, most);
          assertThat(ticks.values()).hasSizeBetween(2, Math.max(most, 2) + 1);
          assertThat(ticks.low()).isLessThanOrEqualTo(low);
          assertThat(ticks.high()).isGreaterThanOrEqualTo(low + length);
        }
      }
    }
  }
}
