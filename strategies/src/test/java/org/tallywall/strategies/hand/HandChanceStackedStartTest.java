package org.tallywall.strategies.hand;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/**
 * What the judge says at a stacked start among three players who throw what they draw, against the
 * exact chance to win ({@link StackedStart}, a sum over what is known after each tile; its figures
 * were found before by a separate program). East has thrown; 138 tiles are unseen, 99 in the wall.
 *
 * <p>The judge says much too little: of four groups that lack a tile each it takes jokers for two
 * at most, and each claim is one of a share of the discards. Where the line takes no jokers it is
 * worse, for then the last tile of a group counts as one that must be drawn. The bounds are what
 * was measured and a hundredth more, so a judge that strays further fails.
 */
class HandChanceStackedStartTest {
  private static final TargetChances.Held START =
      new TargetChances.Held(new int[] {2, 2, 2, 2, 1}, 0);
  private static final int UNSEEN = 138;

  private static double said(TargetChances target, double thrown) {
    return target.judge().says(START, 99 / 4.0, thrown, UNSEEN);
  }

  @Test
  void start_withJokers_isSaidToBeLessLikelyThanItIs() {
    double exact = new StackedStart(true).win();
    assertThat(exact).isCloseTo(0.702281672780, within(6e-13));
    assertThat(exact - said(HandChanceSolitaireTest.T4, 3 * 99 / 4.0)).isBetween(0.0, 0.3459);
  }

  @Test
  void start_lineWithoutJokers_isSaidToBeFarLessLikelyThanItIs() {
    double exact = new StackedStart(false).win();
    assertThat(exact).isCloseTo(0.483782535396, within(6e-13));
    assertThat(exact - said(HandChanceSolitaireTest.T4N, 3 * 99 / 4.0)).isBetween(0.0, 0.4834);
  }

  @Test
  void start_discardsOfOthersCountedOn_isSaidToBeLikelierThanByDrawsAlone() {
    assertThat(said(HandChanceSolitaireTest.T4, 3 * 99 / 4.0))
        .isGreaterThan(10 * said(HandChanceSolitaireTest.T4, 0));
  }
}
