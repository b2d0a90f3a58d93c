package org.tallywall.reports.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class RoundingTest {

  /**
   * JCGM 100:2008 (GUM), 7.2.6: y = 10.057 62 ohm with u(y) = 27 milliohm is given as 10.058 ohm.
   */
  @Test
  void estimate_ofTheGuide_isRoundedToThePlaceOfItsUncertainty() {
    assertThat(Rounding.places(0.027)).isEqualTo(3);
    assertThat(Rounding.nearest(10.05762, Rounding.places(0.027))).hasToString("10.058");
  }

  /**
   * 2237 of 10000 with Wilson's 95 % interval (E. B. Wilson, J. Am. Stat. Assoc. 22 (1927)
   * 209-212): 0.2156393512 to 0.2319728463, half-width 0.0082, is 22.37 % (21.56 % to 23.20 %).
   */
  @Test
  void interval_ofWilson_goesOutward() {
    Rounding.Rounded shown = Rounding.interval(0.2237, 0.2156393512, 0.2319728463, 9);
    assertThat(shown.estimate()).hasToString("0.2237");
    assertThat(shown.low()).hasToString("0.2156");
    assertThat(shown.high()).hasToString("0.2320");
  }

  /** Worked by hand from the definition: the place of the second significant digit. */
  @ParameterizedTest
  @CsvSource({
    "0.0081667, 4",
    "0.0995, 3",
    "0.1, 2",
    "0.99, 2",
    "1, 1",
    "9.96, 1",
    "10, 0",
    "123.4, -1",
    "99999, -3",
    "1e-12, 13"
  })
  void places_ofAnUncertainty_areThoseOfItsSecondDigit(double halfWidth, int places) {
    assertThat(Rounding.places(halfWidth)).isEqualTo(places);
  }

  @ParameterizedTest
  @CsvSource({
    "0.125, 2, 0.13",
    "-0.125, 2, -0.13",
    "2.675, 2, 2.68",
    "-0.004, 2, 0.00",
    "-0.0, 1, 0.0",
    "0.5, 0, 1"
  })
  void estimate_halfway_goesUpAndZeroHasNoSign(double value, int places, String shown) {
    assertThat(Rounding.nearest(value, places)).hasToString(shown);
  }

  /** Worked by hand: estimate, low, high, then the three as shown. */
  @ParameterizedTest
  @CsvSource({
    "-0.004, -0.41, 0.402, 0.00, -0.41, 0.41",
    "0.5, 0.3, 0.7, 0.50, 0.30, 0.70",
    "0.1, 0.1, 0.3, 0.10, 0.10, 0.30",
    "-0.0004, -0.0011, -0.0001, -0.00040, -0.00110, -0.00010",
    "0, 0, 0.0003, 0.00000, 0.00000, 0.00030",
    "2, 2, 2, 2.000, 2.000, 2.000",
    "1234.5, 1100.1, 1340.2, 1230, 1100, 1350"
  })
  void interval_rounded_coversTheOneComputed(
      double estimate, double low, double high, String e, String l, String h) {
    Rounding.Rounded shown = Rounding.interval(estimate, low, high, 3);
    assertThat(shown.estimate().toPlainString()).isEqualTo(e);
    assertThat(shown.low().toPlainString()).isEqualTo(l);
    assertThat(shown.high().toPlainString()).isEqualTo(h);
  }

  /** Limits close to 0, worked by hand: a sign that is there is shown, at either edge. */
  @ParameterizedTest
  @CsvSource({
    "11.2, 0.31, 22.09, 11.2, 0.3, 22.1",
    "-295.2, -589.9, -0.5, -295.2, -589.9, -0.5",
    "11.2, 0.04, 22.36, 11.20, 0.04, 22.36",
    "11, 1, 21, 11, 1, 21",
    "11.5, 1, 22, 12, 1, 22",
    "11.4, 0.99, 21.81, 11.4, 0.9, 21.9",
    "11, 0, 22, 11, 0, 22",
    "11, -0.31, 22, 11, -1, 22",
    "11, 1e-17, 22, 11, 0, 22",
    "-11, -22, -1e-17, -11, -22, 0",
    "-11, -22, 0, -11, -22, 0"
  })
  void interval_thatLeavesOutZero_isShownToLeaveItOut(
      double estimate, double low, double high, String e, String l, String h) {
    Rounding.Rounded shown = Rounding.interval(estimate, low, high, 3);
    assertThat(shown.estimate().toPlainString()).isEqualTo(e);
    assertThat(shown.low().toPlainString()).isEqualTo(l);
    assertThat(shown.high().toPlainString()).isEqualTo(h);
  }

  @Test
  void limits_inTheWrongOrder_areRefused() {
    assertThatThrownBy(() -> Rounding.interval(1, 2, 1, 3))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("the lower limit is above the upper limit");
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
  void uncertainty_notAboveZeroOrNotFinite_isRefused(double halfWidth) {
    assertThatThrownBy(() -> Rounding.places(halfWidth))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
