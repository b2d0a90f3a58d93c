package org.tallywall.experiments.stop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.function.IntUnaryOperator;
import org.apache.commons.math3.distribution.BinomialDistribution;
import org.apache.commons.math3.util.FastMath;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tallywall.core.card.CardFile;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.random.Purpose;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.random.StreamKey;
import org.tallywall.core.rules.TableRules;
import org.tallywall.experiments.stats.Interval;
import org.tallywall.experiments.study.Measure;
import org.tallywall.experiments.study.Until;
import org.tallywall.experiments.tally.StudyTally;
import org.tallywall.experiments.tally.TallyPlan;

/** Runs that look at their results: ranges that hold at every look, and tests that end early. */
class StoppingTest {
  private static final int STUDIES = 2_000;
  private static final int BLOCK = 500;
  private static final TallyPlan PLAN = new TallyPlan(0, 1, 0, 1, 0);
  private static final TableSetup SETUP =
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
  private static StudyTally block(int deals, IntUnaryOperator difference) {
    StudyTally block = new StudyTally(PLAN, SETUP);
    for (int deal = 0; deal < deals; deal++) {
      int gap = difference.applyAsInt(deal);
      block.pair(0, 0).addDeal(new long[] {Math.max(gap, 0)}, new long[] {Math.max(-gap, 0)});
      block.endDeal(2);
    }
    return block;
  }

  private static Stopping stopping(Measure measure, Until until) {
    return new Stopping(until, List.of(measure), 1, 1, 0.95);
  }

  private static Until halfWidth(double half, long most, double expected) {
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
   * H0: the range misses the truth at some of its 20 looks in at most 5 % of studies. 2,000 null
   * studies of 10,000 deals, seed 9; more than the 1 - 1e-6 quantile of the binomial distribution
   * (2,000, 0.05) refutes it. The same looks with ordinary 95 % intervals must exceed that bound,
   * or the test could not fail.
   */
  @ParameterizedTest
  @CsvSource({"WIN_RATE", "POINTS"})
  void nullStudies_lookedAtAfterEveryBlock_missAsRarelyAsTheySay(Measure measure) {
    int bound =
        new BinomialDistribution(null, STUDIES, 0.05).inverseCumulativeProbability(1 - 1e-6);
    int missed = 0;
    int missedByPeeking = 0;
    for (int study = 0; study < STUDIES; study++) {
      Stopping stopping =
          stopping(
              measure, halfWidth(1e-9, 10_000, measure == Measure.POINTS ? Math.sqrt(0.11) : 0.11));
      RandomStream random = new RandomStream(new StreamKey(9, study, Purpose.ROLLOUT, 0, 0, 0));
      boolean out = false;
      boolean peeked = false;
      long sum = 0;
      long squares = 0;
      for (int look = 1; look <= 20; look++) {
        StudyTally block = block(BLOCK, deal -> chance(random));
        stopping.add(block);
        sum += block.pair(0, 0).differences().sum().value().longValueExact();
        squares += block.pair(0, 0).differences().squares().value().longValueExact();
        Optional<Interval> range = stopping.range(0, 0);
        out |= range.isPresent() && (range.get().low() > 0 || range.get().high() < 0);
        peeked |= Math.abs(sum) > 1.959963984540 * Math.sqrt(squares);
      }
      missed += out ? 1 : 0;
      missedByPeeking += peeked ? 1 : 0;
    }

    assertThat(missed).isPositive().isLessThanOrEqualTo(bound);
    assertThat(missedByPeeking).isGreaterThan(bound);
  }

  /** +1 and -1 in 5.5 % of deals each. */
  private static int chance(RandomStream random) {
    int drawn = random.below(2_000);
    return drawn < 110 ? 1 : drawn < 220 ? -1 : 0;
  }

  @Test
  void sequentialTest_ofNullStudies_findsSomethingAsRarelyAsItSays() {
    int bound =
        new BinomialDistribution(null, STUDIES, 0.05).inverseCumulativeProbability(1 - 1e-6);
    int found = 0;
    int none = 0;
    for (int study = 0; study < STUDIES; study++) {
      Stopping stopping = stopping(Measure.WIN_RATE, test(20_000));
      RandomStream random = new RandomStream(new StreamKey(10, study, Purpose.ROLLOUT, 0, 0, 0));
      for (int look = 0; look < 40 && stopping.decision() == Stopping.Decision.GO_ON; look++) {
        stopping.add(block(BLOCK, deal -> chance(random)));
      }
      Stopping.Verdict verdict = stopping.verdict(0);
      found += verdict == Stopping.Verdict.MORE || verdict == Stopping.Verdict.FEWER ? 1 : 0;
      none += verdict == Stopping.Verdict.NONE ? 1 : 0;
    }

    assertThat(found).isPositive().isLessThanOrEqualTo(bound);
    assertThat(none).isGreaterThan(STUDIES * 8 / 10);
  }

  private static Until test(long most) {
    return new Until(
        Until.Rule.SPRT,
        Until.Goal.CLEAR,
        0,
        most,
        Optional.of(0.11),
        Optional.of(new Until.Test(0.01, 0.05, 0.1)));
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
