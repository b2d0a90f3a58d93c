package org.tallywall.experiments.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.apache.commons.math3.distribution.BinomialDistribution;
import org.apache.commons.math3.util.CombinatoricsUtils;
import org.junit.jupiter.api.Test;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.sheet.PositionSheet;
import org.tallywall.experiments.review.TinyTable.AtRandom;
import org.tallywall.experiments.review.TinyTable.ThrowsWhatItDraws;

/**
 * Positions that can be solved exactly come out so. Each count must lie in the exact binomial
 * window whose two tails are at most 5e-7 each, so a fresh seed would fail a line once in a
 * million.
 */
class ExactPositionsTest {
  private static final double TAIL = 5e-7;
  private static final int WORLDS = 20_000;
  private static final TableSetup WAITS =
      TinyTable.setup(
          "111x 333x 555x 777x 99x", "111x 333x 555x 777x 99y", "2222x 444x 666x 8888x");

  /**
   * Two waits, ten draws, 60 tiles unseen: three 9b against two 9c. The chance of at least one of m
   * is 1 − C(60 − m, 10) / C(60, 10); all others throw what they draw and claim nothing.
   */
  static PositionSheet twoWaits() {
    return TinyTable.sheet(
        WAITS,
        "seat 0",
        "moment turn",
        "rack 111333555777b 9b 9c",
        "exposed 1 2222c 444c",
        "exposed 2 111d 333d",
        "exposed 3 555d 777d",
        "unseen 222244446666888b 999b 99c 1111333355557777c 22224444d NNNNEEEEWWWW");
  }

  static ReviewQuestion twoWaits(long seed) {
    return new ReviewQuestion(
        twoWaits(),
        List.of(TinyTable.discard("9c"), TinyTable.discard("9b")),
        TinyTable.four("plain", () -> new ThrowsWhatItDraws(false)),
        (players, kinds) -> new AtRandom(),
        seed);
  }

  @Test
  void twoWaits_winAsOftenAsCombinationsSay() {
    Review review = TinyTable.review(twoWaits(1), 2 * WORLDS);
    ChoiceResult three = review.choices().get(0);
    ChoiceResult two = review.choices().get(1);
    double byThree = atLeastOneOf(3);
    double byTwo = atLeastOneOf(2);

    assertThat(byThree).isCloseTo(0.427235534775, within(1e-12));
    assertThat(byTwo).isCloseTo(0.307909604520, within(1e-12));
    assertThat(three.choice().text()).isEqualTo("discard 9c");
    assertInWindow(three.wins(), three.games(), byThree);
    assertInWindow(two.wins(), two.games(), byTwo);
    assertThat(three.verdict()).isEqualTo(Verdict.BEST);
    assertThat(two.verdict()).isEqualTo(Verdict.BEHIND);
    assertHolds(three.wins(), byThree);
    assertHolds(two.wins(), byTwo);
    assertHolds(two.toBest(), 150 * (byTwo - byThree));
    assertHolds(two.cost(), 150 * (byThree - byTwo));
    assertThat(three.throwsIt().value()).isZero();
    assertThat(two.wallGames().value()).isCloseTo(1 - two.wins().value(), within(1e-12));
  }

  private static double atLeastOneOf(int outs) {
    return 1
        - CombinatoricsUtils.binomialCoefficientDouble(60 - outs, 10)
            / CombinatoricsUtils.binomialCoefficientDouble(60, 10);
  }

  /**
   * A race of four seats, each one tile away, with 3, 2, 2 and 1 outs among 60 tiles in the wall:
   * the first out to appear decides, so the last seat wins one game in 8. It throws a winning tile
   * with chance 0.0746928664 + 2 × 0.0497952442, and gains −18.44607432 points (sums over the place
   * of the first out, in exact fractions).
   */
  @Test
  void raceOfFour_endsAsOftenAsTheFirstOutSays() {
    TableSetup setup = TinyTable.setup("111x 333x 555x 777x 99x", "222x 444x 666x 888x NN");
    PositionSheet sheet =
        TinyTable.sheet(
            setup,
            "seat 3",
            "moment turn",
            "wall 60",
            "rack 222444666888b N E",
            "discards NN 9c 9d FFFFFFFF JJJJJJJJ 2222c 4444c 6666c 8888d 22d E");
    ReviewQuestion question =
        new ReviewQuestion(
            sheet,
            List.of(TinyTable.discard("E")),
            TinyTable.four("plain", () -> new ThrowsWhatItDraws(true)),
            (players, kinds) ->
                new AtRandom("111333555777b 9b", "111333555777c 9c", "111333555777d 9d", null),
            1);

    ChoiceResult last = TinyTable.review(question, WORLDS).best();

    assertThat(last.games()).isBetween(4_000L, (long) WORLDS);
    assertInWindow(last.wins(), last.games(), 1 / 8.0);
    assertInWindow(last.throwsIt(), last.games(), 0.074692866422 + 2 * 0.049795244281);
    assertThat(last.wallGames().value()).isZero();
    assertHolds(last.points(), -18.44607432);
    assertThat(last.points().half()).isLessThanOrEqualTo(Standings.NEAR_ENOUGH);
    assertThat(last.wonWith()).isEqualTo(Math.round(last.wins().value() * last.games()));
    assertThat(setup.hands().line(last.line()).id()).isEqualTo("A2");
  }

  private static void assertInWindow(Ranged share, long games, double chance) {
    BinomialDistribution exact = new BinomialDistribution(null, (int) games, chance);
    assertThat(Math.round(share.value() * games))
        .isBetween(
            (long) exact.inverseCumulativeProbability(TAIL),
            (long) exact.inverseCumulativeProbability(1 - TAIL));
  }

  private static void assertHolds(Ranged range, double truth) {
    assertThat(truth).isBetween(range.low(), range.high());
  }
}
