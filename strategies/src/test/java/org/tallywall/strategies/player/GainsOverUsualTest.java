package org.tallywall.strategies.player;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Means and standard errors worked out by hand. */
class GainsOverUsualTest {
  /** Mean 15, variance (100 + 0 + 100 + 0) / 4 = 50, error sqrt(50 / 4) = 3.54: 4.24 errors. */
  @Test
  void surelyBetter_turnsWhereTheMeanIsThatManyErrors() {
    GainsOverUsual found = new GainsOverUsual(2);
    for (int points : new int[] {5, 15, 25, 15}) {
      found.add(1, points);
    }
    assertThat(found.mean(1)).isEqualTo(15);
    assertThat(found.surelyBetter(1, 4.24)).isTrue();
    assertThat(found.surelyBetter(1, 4.25)).isFalse();
  }

  @Test
  void surelyBetter_neverHoldsForWhatIsEqualOrWorse() {
    GainsOverUsual found = new GainsOverUsual(3);
    found.add(1, 0);
    found.add(2, -1);
    assertThat(found.surelyBetter(1, 0)).isFalse();
    assertThat(found.surelyBetter(2, 0)).isFalse();
  }
}
