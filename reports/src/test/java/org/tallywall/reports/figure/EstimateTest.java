package org.tallywall.reports.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EstimateTest {

  /**
   * Value 10.05762 with uncertainty 0.027 becomes 10.058: JCGM 100:2008 (GUM), 7.2.6. The second
   * row is the Wilson interval of 2237 in 10,000, as in the test of tables.
   */
  @ParameterizedTest
  @CsvSource({
    "10.05762, 10.03062, 10.08462, 10.058 (10.030 to 10.085)",
    "22.37, 21.56393512, 23.19728463, 22.37 (21.56 to 23.20)",
    "-1234.5, -1300, -1169, '−1,235 (−1,300 to −1,169)'",
    "0, 0, 0, 0.0 (0.0 to 0.0)"
  })
  void level_forPeople_isRoundedByItsRange(double value, double low, double high, String text) {
    assertThat(new PlotValue(value, low, high).text(Sign.MINUS_ONLY)).isEqualTo(text);
  }

  @ParameterizedTest
  @CsvSource({
    "1.04, 0.41, 1.67, +1.04 (+0.41 to +1.67)",
    "-0.004, -0.41, 0.402, 0.00 (−0.41 to +0.41)",
    "-6.5, -7.2, -5.8, −6.50 (−7.20 to −5.80)"
  })
  void difference_forPeople_carriesItsSign(double value, double low, double high, String text) {
    assertThat(new PlotValue(value, low, high).text(Sign.PLUS_AND_MINUS)).isEqualTo(text);
  }

  @ParameterizedTest
  @CsvSource({"0.1, 2, 1", "0, 2, 0", "-1, 1, 0", "-2, 0, 0", "-2, -0.1, -1"})
  void sign_ofARange_isClearOnlyWithoutZero(double low, double high, int sign) {
    assertThat(new PlotValue(0.5, low, high).clearSign()).isEqualTo(sign);
  }

  @Test
  void zero_withPlusAndMinus_hasNoSign() {
    assertThat(PlotValue.number(new BigDecimal("0.00"), Sign.PLUS_AND_MINUS)).isEqualTo("0.00");
  }

  @Test
  void limits_inTheWrongOrder_areRefused() {
    assertThatThrownBy(() -> new PlotValue(1, 2, 1))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("an estimate: the lower limit is above the upper limit");
  }

  @Test
  void number_withoutEnd_isRefused() {
    assertThatThrownBy(() -> new PlotValue(Double.NaN, 0, 1))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("an estimate: a figure shows finite numbers");
  }
}
