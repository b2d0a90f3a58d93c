package org.tallywall.experiments.stop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.function.IntUnaryOperator;
import org.apache.commons.math3.util.FastMath;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tallywall.core.card.CardFile;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.rules.TableRules;
import org.tallywall.experiments.stats.AlwaysValid;
import org.tallywall.experiments.stats.Interval;
import org.tallywall.experiments.study.Measure;
import org.tallywall.experiments.study.Until;
import org.tallywall.experiments.tally.StudyTally;
import org.tallywall.experiments.tally.TallyPlan;

/** Runs that look at their results: ranges that hold at every look, and tests that end early. */
class StoppingTest {
  private static final int BLOCK = 500;
  static final TallyPlan PLAN = new TallyPlan(0, 1, 0, 1, 0);
  static final TableSetup SETUP =
      new TableSetup(
          new ConcreteHands(
              CardFile.json(
                      "card",
                      "{\"card\": \"Hawser test card\", \"families\": [{\"family\": \"Ladders\","
                          + " \"lines\": [{\"tiles\": \"FF 11x 222x 333x 4444x\", \"value\":"
                          + " 25}]}]}")
                  .orThrow()),
          TableRules.STANDARD);

  /** A block of deals with one game each, whose difference is given deal by deal. */
  static StudyTally block(int deals, IntUnaryOperator difference) {
    StudyTally block = new StudyTally(PLAN, SETUP);
    for (int deal = 0; deal < deals; deal++) {
      int gap = difference.applyAsInt(deal);
      block.pair(0, 0).addDeal(new long[] {Math.max(gap, 0)}, new long[] {Math.max(-gap, 0)});
      block.endDeal(2);
    }
    return block;
  }

  static Stopping stopping(Measure measure, Until until) {
    return new Stopping(until, List.of(measure), 1, 1, 0.95);
  }

  static Until halfWidth(double half, long most, double expected) {
    return new Until(
        Until.Rule.ALWAYS_VALID,
        Until.Goal.HALF_WIDTH,
        half,
        most,
        Optional.of(expected),
        Optional.empty());
  }

  /** A repeated block of 100 deals: six of +1, five of -1. */
  private static int pattern(int deal) {
    return switch (deal % 100) {
      case 3, 19, 37, 55, 73, 91 -> 1;
      case 11, 29, 47, 65, 83 -> -1;
      default -> 0;
    };
  }

  /**
   * Half widths of the asymptotic band by its closed formula (Waudby-Smith et al., 2024), worked
   * out twice outside the project; and of the empirical-Bernstein band (Howard et al., 2021), whose
   * guesses there are the means of all deals before, here those of the blocks before, which moves
   * the third digit.
   */
  @ParameterizedTest
  @CsvSource({"1000, 0.0404330919, 0.0453737927", "10000, 0.0100625896, 0.0106854674"})
  void bands_ofTheRepeatedBlock_areThoseOfTheFormulas(int deals, double mean, double share) {
    Stopping points = stopping(Measure.POINTS, halfWidth(1e-9, 10_000, Math.sqrt(0.11)));
    Stopping rate = stopping(Measure.WIN_RATE, halfWidth(1e-9, 10_000, 0.11));
    for (int at = 0; at < deals / BLOCK; at++) {
      points.add(block(BLOCK, StoppingTest::pattern));
      rate.add(block(BLOCK, StoppingTest::pattern));
    }

    assertThat(half(points)).isCloseTo(mean, within(1e-9));
    assertThat(half(rate)).isCloseTo(share, within(0.005 * share));
  }

  private static double half(Stopping stopping) {
    Interval range = stopping.range(0, 0).orElseThrow();
    assertThat((range.low() + range.high()) / 2).isCloseTo(0.01, within(1e-9));
    return (range.high() - range.low()) / 2;
  }

  /**
   * The level of the test, exactly: one seat, every deal differs, a look at each. Every path of 150
   * deals is summed up, of a true chance of a half (nothing there) and of 0.7 (0.4 more won, what
   * it is set to find). Where the ratio of Wald's likelihoods, written out here, stands at 40 or
   * more (a false alarm of 0.05, half of it to either side), and only there, there is more. A test
   * that spent all of it on each side would find something in some 7 of 100.
   */
  @Test
  void sequentialTest_ofOneSeat_keepsItsChancesExactly() {
    double[][] nothing = verdicts(0.5);
    double[][] something = verdicts(0.7);

    assertThat(nothing[0][0] + nothing[1][0]).isBetween(0.02, 0.05);
    assertThat(nothing[0][0]).isBetween(0.01, 0.025).isCloseTo(nothing[1][0], within(1e-12));
    assertThat(something[0][0]).isBetween(0.9, 1.0);
    assertThat(something[2][0] + something[1][0]).isBetween(0.001, 0.1);
  }

  /** The chances of "more", "fewer" and "none" within 150 deals. */
  private static double[][] verdicts(double chance) {
    double[][] ended = new double[3][1];
    double[] now = {1};
    for (int deals = 1; deals <= 150; deals++) {
      double[] next = new double[deals + 1];
      for (int won = 0; won < deals; won++) {
        next[won] += now[won] * (1 - chance);
        next[won + 1] += now[won] * chance;
      }
      for (int won = 0; won <= deals; won++) {
        if (next[won] > 0) {
          int more = won;
          Stopping stopping = stopping(Measure.WIN_RATE, test(0.4, 1.0));
          stopping.add(block(deals, deal -> deal < more ? 1 : -1));
          Stopping.Verdict verdict = stopping.verdict(0);
          double wald = won * FastMath.log(1.4) + (deals - won) * FastMath.log(0.6);
          assertThat(verdict == Stopping.Verdict.MORE).isEqualTo(wald >= FastMath.log(40));
          if (verdict != Stopping.Verdict.UNDECIDED) {
            ended[verdict.ordinal()][0] += next[won];
            next[won] = 0;
          }
        }
      }
      now = next;
    }
    return ended;
  }

  private static Until test(double difference, double expected) {
    return new Until(
        Until.Rule.SPRT,
        Until.Goal.CLEAR,
        0,
        20_000,
        Optional.of(expected),
        Optional.of(new Until.Test(difference, 0.05, 0.1)));
  }

  /** A verdict stands, whatever other comparisons still need. */
  @Test
  void verdict_onceReached_stays() {
    Stopping stopping = stopping(Measure.WIN_RATE, test(0.4, 1.0));
    stopping.add(block(20, deal -> 1));
    stopping.add(block(40, deal -> -1));

    assertThat(stopping.verdict(0)).isEqualTo(Stopping.Verdict.MORE);
    assertThat(stopping.looks()).isEqualTo(2);
  }

  /**
   * The band beside one that is written out deal by deal. The guess of a deal may come from the
   * deals before its block alone: here the blocks' means lie far apart (0.6, -0.2, 0.3), so that a
   * guess by the own block would be another number altogether.
   */
  @Test
  void band_ofBlocksThatDiffer_guessesEachByThoseBefore() {
    int[][] blocks = {{7, 1}, {2, 4}, {5, 2}};
    Stopping stopping = stopping(Measure.WIN_RATE, halfWidth(0.05, 4_000, 0.6));
    double planned = Math.min(4_000, (3.2 / 0.05) * (3.2 / 0.05) * 0.6);
    double rho = AlwaysValid.tuning(planned * 0.6, 0.05);
    double errors = 0;
    double sum = 0;
    int deals = 0;
    for (int[] counts : blocks) {
      double guess = deals == 0 ? 0 : sum / deals;
      IntUnaryOperator value =
          deal -> deal % 10 < counts[0] ? 1 : deal % 10 < counts[0] + counts[1] ? -1 : 0;
      for (int deal = 0; deal < 100; deal++) {
        double error = value.applyAsInt(deal) - guess;
        errors += error * error;
        sum += value.applyAsInt(deal);
      }
      deals += 100;
      stopping.add(block(100, value));
      Interval range = stopping.range(0, 0).orElseThrow();
      assertThat((range.high() - range.low()) / 2)
          .isCloseTo(AlwaysValid.empiricalBernstein(deals, errors, rho, 0.05, 2), within(1e-9));
    }
  }

  @Test
  void goal_aHalfWidth_isReachedWhereTheRangeIsNarrowEnough() {
    Stopping stopping = stopping(Measure.POINTS, halfWidth(0.02, 50_000, Math.sqrt(0.11)));
    int blocks = 0;
    while (stopping.decision() == Stopping.Decision.GO_ON) {
      stopping.add(block(BLOCK, StoppingTest::pattern));
      blocks++;
    }

    assertThat(half(stopping)).isLessThanOrEqualTo(0.02);
    assertThat(blocks * BLOCK).isBetween(1_500, 10_000);
  }

  @Test
  void pilot_isTheFirstBlock_andNotPartOfTheAnswer() {
    Until until =
        new Until(
            Until.Rule.ALWAYS_VALID,
            Until.Goal.CLEAR,
            0,
            10_000,
            Optional.empty(),
            Optional.empty());
    Stopping stopping = stopping(Measure.WIN_RATE, until);

    assertThat(stopping.add(block(BLOCK, deal -> 1))).isFalse();
    assertThat(stopping.range(0, 0)).isEmpty();
    assertThat(stopping.add(block(BLOCK, deal -> deal % 2))).isTrue();
    assertThat(stopping.decision()).isEqualTo(Stopping.Decision.REACHED);
    assertThat(stopping.range(0, 0).orElseThrow().low()).isBetween(0.0, 0.5);
    assertThat(FastMath.abs(stopping.range(0, 0).orElseThrow().high() - 0.5)).isPositive();
  }
}
