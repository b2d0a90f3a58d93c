package org.tallywall.experiments.gauges.calibration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class ScoreTest {
  @Test
  void score_knownDecisions_isWhatPaperGives() {
    Score score = new Score();
    score.note(0.2, 0.5, false);
    score.note(0.2, 0.5, true);
    score.endGame();
    score.note(0, 0.5, false);
    score.endGame();
    assertThat(score.squared().value()).isCloseTo((0.04 + 0.64) / 3, within(1e-9));
    assertThat(score.squaredMore().value()).isCloseTo((0.04 + 0.64) / 3 - 0.25, within(1e-9));
    double logarithms = -Math.log(0.8) - Math.log(0.2) - Math.log(1 - Score.LEAST);
    assertThat(score.logarithmic().value()).isCloseTo(logarithms / 3, within(1e-9));
    assertThat(score.logarithmicMore().value())
        .isCloseTo(logarithms / 3 - Math.log(2), within(1e-9));
  }

  @Test
  void score_chanceOfZeroThatCame_staysFinite() {
    Score score = new Score();
    score.note(0, 0, true);
    score.endGame();
    score.endGame();
    assertThat(score.logarithmic().value()).isCloseTo(-Math.log(Score.LEAST), within(1e-9));
    assertThat(score.squaredMore().value()).isZero();
  }
}
