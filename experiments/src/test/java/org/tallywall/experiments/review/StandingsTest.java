package org.tallywall.experiments.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.distribution.BinomialDistribution;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;
import org.junit.jupiter.api.Test;
import org.tallywall.core.sheet.Move;

/** Verdicts on choices: none where there is no difference, the right ones where there is. */
class StandingsTest {
  private static final int CHOICES = 6;
  private static final int REVIEWS = 200;
  private static final int APART = 400;

  /** What a game brings: a win, a throw, nothing, or a share of another's win. */
  private static int points(RandomGenerator random, double better) {
    double luck = random.nextDouble();
    return luck < 0.2 + better ? 100 : luck < 0.3 ? -50 : luck < 0.7 ? -25 : 0;
  }

  private static Round round(RandomGenerator random, int first, double lastIsBetter) {
    Round round = new Round(first, 64, CHOICES);
    for (int world = first; world < first + 64; world++) {
      for (int choice = 0; choice < CHOICES; choice++) {
        double better = choice == CHOICES - 1 ? lastIsBetter : 0;
        round.set(choice, world, points(random, better), Round.OTHER, ChoiceResult.NO_LINE);
      }
    }
    return round;
  }

  private static List<Considered> choices() {
    List<Considered> choices = new ArrayList<>();
    for (int choice = 0; choice < CHOICES; choice++) {
      choices.add(new Considered(List.of(new Move.Discard(choice)), List.of()));
    }
    return choices;
  }

  /**
   * Hypothesis: where all choices are worth the same, at most 5 of 100 reviews ever say of one that
   * it costs points, though they look at all pairs after every round and at the best of six. 200
   * reviews; more than 26 have a chance below 1e-5 (exact binomial tail). Worlds here have nothing
   * in common, which is the hardest case.
   */
  @Test
  void choicesOfTheSameWorth_areHardlyEverSaidToCost() {
    assertThat(new BinomialDistribution(null, REVIEWS, 0.05).cumulativeProbability(26))
        .isGreaterThan(1 - 1e-5);
    RandomGenerator random = new Well19937c(20261202);
    int wrong = 0;
    for (int review = 0; review < REVIEWS; review++) {
      wrong += everSaysCosts(random) ? 1 : 0;
    }
    assertThat(wrong).isLessThanOrEqualTo(26);
  }

  private static boolean everSaysCosts(RandomGenerator random) {
    Standings standings = new Standings(CHOICES, APART, 1);
    for (int look = 0; look < 40; look++) {
      standings.add(round(random, 64 * look, 0));
      for (ChoiceResult one : standings.results(choices())) {
        if (one.verdict() == Verdict.BEHIND || one.verdict() == Verdict.BEST) {
          return true;
        }
      }
    }
    return false;
  }

  /** 0.15 more wins at 125 points each against what they would have been: about 17 points. */
  @Test
  void betterChoice_isFoundAndTheOthersDropOut() {
    RandomGenerator random = new Well19937c(7);
    Standings standings = new Standings(CHOICES, APART, 1);
    int worlds = 0;
    while (standings.in().size() > 1 && worlds < 64_000) {
      standings.add(round(random, worlds, 0.099));
      worlds += 64;
      standings.dropOut();
    }

    List<ChoiceResult> results = standings.results(choices());
    assertThat(standings.in()).containsExactly(CHOICES - 1);
    assertThat(standings.decided()).isTrue();
    assertThat(results.get(0).choice().text()).isEqualTo("discard 6b");
    assertThat(results.get(0).verdict()).isEqualTo(Verdict.BEST);
    assertThat(results.get(0).cost()).isEqualTo(Ranged.ZERO);
    assertThat(results.subList(1, CHOICES))
        .allSatisfy(
            one -> {
              assertThat(one.verdict()).isEqualTo(Verdict.BEHIND);
              assertThat(one.droppedOut()).isTrue();
              assertThat(one.cost().low()).isPositive();
              assertThat(one.games()).isLessThanOrEqualTo(results.get(0).games());
              assertThat(0.099 * 150).isBetween(one.cost().low(), one.cost().high());
            });
  }

  @Test
  void nothingPlayed_tellsNothing() {
    Standings standings = new Standings(2, APART, 1);
    List<ChoiceResult> results = standings.results(choices().subList(0, 2));
    assertThat(standings.decided()).isFalse();
    assertThat(results.get(0).verdict()).isEqualTo(Verdict.AHEAD);
    assertThat(results.get(1).verdict()).isEqualTo(Verdict.TIED);
    assertThat(results.get(1).wins()).isEqualTo(new Ranged(0, 0, 1));
  }
}
