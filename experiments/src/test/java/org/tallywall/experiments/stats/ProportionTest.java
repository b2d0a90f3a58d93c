package org.tallywall.experiments.stats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Intervals of a proportion against Table I of Newcombe, Statistics in Medicine 17 (1998) 857–872
 * (method 3 is Wilson's, method 5 the exact one), published to four places. The ten places were
 * worked out with fractions by a second program.
 */
class ProportionTest {
  private static final double LEVEL = 0.95;

  @ParameterizedTest
  @CsvSource({
    "81, 263, 0.2552885199, 0.3662095770, 0.2553, 0.3662",
    "15, 148, 0.0623863995, 0.1604872417, 0.0624, 0.1605",
    "0, 20, 0, 0.1611251581, 0.0000, 0.1611",
    "1, 29, 0.0061132143, 0.1717552188, 0.0061, 0.1718"
  })
  void wilson_publishedExamples_agree(
      int wins, int games, double low, double high, double lowPrinted, double highPrinted) {
    Interval interval = new Proportion(wins, games).wilson(LEVEL);

    assertThat(interval.low()).isCloseTo(low, within(1e-10));
    assertThat(interval.high()).isCloseTo(high, within(1e-10));
    assertThat(interval.low()).isCloseTo(lowPrinted, within(5e-5));
    assertThat(interval.high()).isCloseTo(highPrinted, within(5e-5));
  }

  /** The first row is quoted from memory, the others were seen in print. */
  @ParameterizedTest
  @CsvSource({
    "81, 263, 0.2527367456, 0.3676219226, 0.2527, 0.3676",
    "15, 148, 0.0578440101, 0.1616504903, 0.0578, 0.1617",
    "0, 20, 0, 0.1684334710, 0.0000, 0.1684",
    "1, 29, 0.0008726469, 0.1776442955, 0.0009, 0.1776"
  })
  void clopperPearson_publishedExamples_agree(
      int wins, int games, double low, double high, double lowPrinted, double highPrinted) {
    Interval interval = new Proportion(wins, games).clopperPearson(LEVEL);

    assertThat(interval.low()).isCloseTo(low, within(1e-10));
    assertThat(interval.high()).isCloseTo(high, within(1e-10));
    assertThat(interval.low()).isCloseTo(lowPrinted, within(5e-5));
    assertThat(interval.high()).isCloseTo(highPrinted, within(5e-5));
  }

  @Test
  void wilson_noneOrAll_limitsAreExact() {
    double z2 = 1.959963984540054 * 1.959963984540054;

    assertThat(new Proportion(0, 37).wilson(LEVEL).low()).isZero();
    assertThat(new Proportion(0, 37).wilson(LEVEL).high()).isCloseTo(z2 / (37 + z2), within(1e-14));
    assertThat(new Proportion(37, 37).wilson(LEVEL).high()).isEqualTo(1);
    assertThat(new Proportion(37, 37).wilson(LEVEL).low()).isCloseTo(37 / (37 + z2), within(1e-14));
  }

  @Test
  void clopperPearson_noneOrAll_limitsAreExact() {
    double edge = 1 - StrictMath.pow(0.025, 1 / 20.0);

    assertThat(new Proportion(0, 20).clopperPearson(LEVEL).low()).isZero();
    assertThat(new Proportion(0, 20).clopperPearson(LEVEL).high()).isCloseTo(edge, within(1e-13));
    assertThat(new Proportion(20, 20).clopperPearson(LEVEL).high()).isEqualTo(1);
    assertThat(new Proportion(20, 20).clopperPearson(LEVEL).low())
        .isCloseTo(1 - edge, within(1e-13));
  }

  @Test
  void estimate_fewTrialsOrNoSuccess_takesTheExactInterval() {
    assertThat(new Proportion(5, 99).estimate(LEVEL).method()).isEqualTo(Method.CLOPPER_PEARSON);
    assertThat(new Proportion(0, 500).estimate(LEVEL).method()).isEqualTo(Method.CLOPPER_PEARSON);
    assertThat(new Proportion(500, 500).estimate(LEVEL).method()).isEqualTo(Method.CLOPPER_PEARSON);
    assertThat(new Proportion(5, 100).estimate(LEVEL).method()).isEqualTo(Method.WILSON);
  }

  @Test
  void counts_outOfRange_areRefused() {
    assertThatThrownBy(() -> new Proportion(0, 0)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Proportion(3, 2)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Proportion(-1, 2)).isInstanceOf(IllegalArgumentException.class);
  }
}
