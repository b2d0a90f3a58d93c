package org.tallywall.experiments.stats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.tallywall.core.random.Purpose;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.random.StreamKey;

/**
 * Deals drawn again, on published data: Student's sleep data (Biometrika 6, 1908) and the mouse
 * data of Efron and Tibshirani (1993, table 2.1). Limits of all 10^10 and 7^7 equally likely
 * resamples were worked out exactly outside the project; 100,000 drawn ones must come to them
 * within one step of the data.
 */
class BootstrapTest {
  private static final double[] SLEEP = {1.2, 2.4, 1.3, 1.3, 0.0, 1.0, 1.8, 0.8, 4.6, 1.4};
  private static final double[] TREATED = {94, 197, 16, 38, 99, 141, 23};
  private static final double[] CONTROL = {52, 104, 146, 10, 51, 30, 40, 27, 46};

  private static Bootstrap drawn(double[] values) {
    return new Bootstrap(
        values, 100_000, new RandomStream(new StreamKey(4, 0, Purpose.RESAMPLING, 0, 0, 0)));
  }

  @Test
  void idealError_ofTheMouseData_isThatOfTheBook() {
    double treated = Bootstrap.idealStandardError(TREATED);
    double control = Bootstrap.idealStandardError(CONTROL);

    assertThat(treated).isCloseTo(23.3635234373, within(1e-9));
    assertThat(control).isCloseTo(13.3488592732, within(1e-9));
    assertThat(Math.sqrt(treated * treated + control * control))
        .isCloseTo(26.9081079101, within(1e-9));
    assertThat(Bootstrap.idealStandardError(SLEEP)).isCloseTo(0.3689986450, within(1e-9));
  }

  /** 0.005 is about six standard errors of the error of 100,000 resamples. */
  @Test
  void drawnError_ofTheSleepData_isNearTheIdealOne() {
    assertThat(drawn(SLEEP).standardError()).isCloseTo(0.3690, within(0.005));
  }

  @Test
  void percentiles_ofAllResamples_areFoundByDrawing() {
    Interval sleep = drawn(SLEEP).percentile(0.95);
    Interval mice = drawn(TREATED).percentile(0.95);

    assertThat(sleep.low()).isCloseTo(0.95, within(0.0101));
    assertThat(sleep.high()).isCloseTo(2.38, within(0.0201));
    assertThat(mice.low()).isCloseTo(304 / 7.0, within(0.6));
    assertThat(mice.high()).isCloseTo(941 / 7.0, within(0.6));
  }

  @Test
  void correctedLimits_ofTheSleepData_areThoseOfAllResamples() {
    Interval corrected = drawn(SLEEP).corrected(0.95);

    assertThat(corrected.low()).isCloseTo(1.05, within(0.0101));
    assertThat(corrected.high()).isCloseTo(2.64, within(0.0301));
  }

  @Test
  void accelerationAndLevels_ofTheSleepData_areTheExactOnes() {
    assertThat(Bootstrap.acceleration(SLEEP)).isCloseTo(0.0775799855, within(1e-9));
    assertThat(Bootstrap.level(0.025, 0.0803041604, 0.0775799855))
        .isCloseTo(0.0593634453, within(1e-8));
    assertThat(Bootstrap.level(0.975, 0.0803041604, 0.0775799855))
        .isCloseTo(0.9938643135, within(1e-8));
  }

  @Test
  void alike_values_giveALimitWithoutWidth() {
    Bootstrap alike = drawn(new double[] {3, 3, 3});

    assertThat(alike.corrected(0.95)).isEqualTo(new Interval(3, 3));
    assertThat(alike.standardError()).isZero();
  }

  @Test
  void oneDeal_isRefused() {
    assertThatThrownBy(() -> drawn(new double[] {1})).hasMessageContaining("two deals");
  }
}
