package org.tallywall.experiments.gauges.guess;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class ConditionalLogitTest {
  private static final int[] NONE = {};
  private static final int[] FIRST = {0};

  private static void set(ConditionalLogit model, boolean chosenHasIt, double weightOfOther) {
    model.beginSet();
    float[] one = {1};
    float[] nothing = {};
    model.add(chosenHasIt ? FIRST : NONE, chosenHasIt ? one : nothing, 0);
    model.add(chosenHasIt ? NONE : FIRST, chosenHasIt ? nothing : one, Math.log(weightOfOther));
  }

  /** Of 40 pairs, one with the trait and one without, 30 times the one with it: its log odds. */
  @Test
  void oneTrait_hasTheLogarithmOfTheOdds() {
    ConditionalLogit model = new ConditionalLogit(1);
    for (int pair = 0; pair < 40; pair++) {
      set(model, pair < 30, 1);
    }
    double[] weights = model.fit(1e-9);
    assertThat(weights[0]).isCloseTo(Math.log(3), within(1e-6));
    assertThat(model.meanLog(weights))
        .isCloseTo(0.75 * Math.log(0.75) + 0.25 * Math.log(0.25), within(1e-9));
  }

  /** Known weights are taken off: where the other counts three to one, even odds mean log 3. */
  @Test
  void knownWeights_areNoTraits() {
    ConditionalLogit model = new ConditionalLogit(1);
    for (int pair = 0; pair < 40; pair++) {
      set(model, pair < 20, pair < 20 ? 3 : 1.0 / 3);
    }
    assertThat(model.fit(1e-9)[0]).isCloseTo(Math.log(3), within(1e-6));
  }

  @Test
  void penalty_drawsWeightsToNothing() {
    ConditionalLogit model = new ConditionalLogit(1);
    for (int pair = 0; pair < 40; pair++) {
      set(model, pair < 30, 1);
    }
    assertThat(model.fit(1e6)[0]).isCloseTo(0, within(1e-4));
  }
}
