package org.tallywall.experiments.stats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** What a deal puts to a sequential test, in logarithms worked out from the formulas. */
class SequentialFactorsTest {
  private static final SequentialTest TEST = new SequentialTest(0.1, 0.05, 0.1, 0.4);

  @Test
  void factorForMore_isOnePlusStakeTimesValue() {
    assertThat(TEST.forMore(1)).isCloseTo(Math.log(1.25), within(1e-15));
    assertThat(TEST.forMore(-1)).isCloseTo(Math.log(0.75), within(1e-15));
    assertThat(TEST.forMore(0)).isZero();
  }

  /** The stake is 0.1 over 0.4 + 0.01. */
  @Test
  void factorAgainstMore_isThatOfTheOtherSide() {
    double stake = 0.1 / 0.41;

    assertThat(TEST.againstMore(1)).isCloseTo(Math.log(1 - 0.9 * stake), within(1e-15));
    assertThat(TEST.againstMore(-1)).isCloseTo(Math.log(1 + 1.1 * stake), within(1e-15));
  }

  /** Ville's bound needs it: the mean factor is 1 where the supposition is true. */
  @Test
  void factors_whereTheirSuppositionHolds_haveTheMeanOne() {
    double none = 0.2 * Math.exp(TEST.forMore(1)) + 0.6 + 0.2 * Math.exp(TEST.forMore(-1));
    double there =
        0.25 * Math.exp(TEST.againstMore(1))
            + 0.6 * Math.exp(TEST.againstMore(0))
            + 0.15 * Math.exp(TEST.againstMore(-1));

    assertThat(none).isCloseTo(1, within(1e-15));
    assertThat(there).isCloseTo(1, within(1e-15));
  }

  @Test
  void stake_isNeverMoreThanThreeQuarters() {
    SequentialTest bold = new SequentialTest(0.5, 0.05, 0.1, 0.1);

    assertThat(bold.forMore(-1)).isCloseTo(Math.log(0.25), within(1e-15));
    assertThat(bold.againstMore(1)).isCloseTo(Math.log(1 - 0.75 * 0.5), within(1e-15));
  }

  @Test
  void bounds_areOneOverTheChances() {
    assertThat(TEST.found()).isCloseTo(Math.log(20), within(1e-14));
    assertThat(TEST.ruledOut()).isCloseTo(Math.log(10), within(1e-14));
  }
}
