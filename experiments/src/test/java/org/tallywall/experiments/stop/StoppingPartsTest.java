package org.tallywall.experiments.stop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.tallywall.experiments.stats.AlwaysValid;
import org.tallywall.experiments.stats.Interval;
import org.tallywall.experiments.study.Measure;
import org.tallywall.experiments.study.Until;
import org.tallywall.experiments.tally.StudyTally;
import org.tallywall.experiments.tally.TallyPlan;

/**
 * What is expected of each comparison, measure and number of seats, by the formulas. Whether a
 * range that ends at 0 exactly, or is as wide as was asked exactly, counts is left open: no double
 * comes out so.
 */
class StoppingPartsTest {
  private static final TallyPlan PLAN = new TallyPlan(0, 2, 0, 4, 0);
  private static final List<Measure> MEASURES =
      List.of(Measure.WIN_RATE, Measure.POINTS, Measure.EXPOSURES, Measure.WALL_GAMES);
  private static final int MOST = 8_000;

  private static Until until(Optional<Double> expected, Optional<Until.Test> test) {
    Until.Rule rule = test.isPresent() ? Until.Rule.SPRT : Until.Rule.ALWAYS_VALID;
    return new Until(rule, Until.Goal.CLEAR, 0, MOST, expected, test);
  }

  /** Deals in which every second one, and only these, has a difference; by comparison, measure. */
  private static StudyTally block(int deals, long[][] differences) {
    StudyTally block = new StudyTally(PLAN, StoppingTest.SETUP);
    for (int deal = 0; deal < deals; deal++) {
      for (int pair = 0; pair < 2; pair++) {
        for (int measure = 0; measure < 4; measure++) {
          long gap = deal % 2 == 0 ? differences[pair][measure] : 0;
          block.pair(pair, measure).addDeal(new long[] {gap}, new long[] {0});
        }
      }
      block.endDeal(2);
    }
    return block;
  }

  private static double half(Stopping stopping, int pair, int measure) {
    Interval range = stopping.range(pair, measure).orElseThrow();
    return (range.high() - range.low()) / 2;
  }

  private static double middle(Stopping stopping, int pair, int measure) {
    Interval range = stopping.range(pair, measure).orElseThrow();
    return (range.high() + range.low()) / 2;
  }

  /** Two comparisons, four measures: none takes another's deals, and each its own expectation. */
  @Test
  void bands_ofSeveralMeasures_keepApart() {
    long[][] differences = {{1, 6, 2, 0}, {0, -4, -3, 1}};
    Until until = until(Optional.of(0.3), Optional.empty());
    Stopping stopping = new Stopping(until, MEASURES, 2, 1, 0.95);
    stopping.add(block(1_000, differences));

    for (int pair = 0; pair < 2; pair++) {
      for (int measure = 0; measure < 4; measure++) {
        assertThat(middle(stopping, pair, measure))
            .isCloseTo(differences[pair][measure] / 2.0, within(1e-9));
      }
    }
    assertThat(half(stopping, 0, 1)).isCloseTo(mean(36, 3, 400), within(1e-9));
    assertThat(half(stopping, 1, 2)).isCloseTo(mean(9, -1.5, 0.25), within(1e-9));
    assertThat(half(stopping, 1, 3)).isCloseTo(share(500, 0.1), within(1e-9));
    assertThat(half(stopping, 0, 0)).isCloseTo(share(500, 0.3), within(1e-9));
    assertThat(stopping.decision()).isEqualTo(Stopping.Decision.GO_ON);
    assertThat(stopping.until()).isSameAs(until);
  }

  /** The asymptotic band of 1,000 deals of which every second has a square. */
  private static double mean(double square, double mean, double expected) {
    double variance = (500 * square - 1_000 * mean * mean) / 999;
    double rho = AlwaysValid.tuning(MOST / 2.0 * expected, 0.05);
    return AlwaysValid.asymptotic(1_000, variance, rho, 0.05);
  }

  private static double share(double errors, double expected) {
    double rho = AlwaysValid.tuning(MOST / 2.0 * expected, 0.05);
    return AlwaysValid.empiricalBernstein(1_000, errors, rho, 0.05, 2);
  }

  @Test
  void points_ofFewerThanAThousandDeals_haveNoRange_andDecideNothing() {
    Stopping stopping =
        new Stopping(
            until(Optional.of(1.0), Optional.empty()), List.of(Measure.POINTS), 1, 1, 0.95);
    stopping.add(StoppingTest.block(999, deal -> 1));

    assertThat(stopping.range(0, 0)).isEmpty();
    assertThat(stopping.decision()).isEqualTo(Stopping.Decision.GO_ON);
  }

  /** A deal's value is a quarter of what its four seats sum up to. */
  @Test
  void pilot_ofFourSeats_foretellsInGames() {
    for (int gap : new int[] {0, 2}) {
      Stopping stopping =
          new Stopping(
              until(Optional.empty(), Optional.empty()), List.of(Measure.WIN_RATE), 1, 4, 0.95);
      stopping.add(StoppingTest.block(200, deal -> gap));
      stopping.add(StoppingTest.block(100, deal -> 1));
      double square = gap == 0 ? 1 / 16.0 / 200 : 4 / 16.0;
      double rho = AlwaysValid.tuning(MOST / 2.0 * square, 0.05);

      assertThat(half(stopping, 0, 0))
          .isCloseTo(AlwaysValid.empiricalBernstein(100, 100 / 16.0, rho, 0.05, 2), within(1e-9));
    }
  }

  /** The mean of four seats' points has a sixteenth of their sum's variance. */
  @Test
  void points_ofFourSeats_areThoseOfAGame() {
    Stopping stopping =
        new Stopping(
            until(Optional.of(2.0), Optional.empty()), List.of(Measure.POINTS), 1, 4, 0.95);
    stopping.add(StoppingTest.block(1_000, deal -> deal % 2 == 0 ? 8 : 0));
    double rho = AlwaysValid.tuning(MOST / 2.0 * 4, 0.05);

    assertThat(middle(stopping, 0, 0)).isCloseTo(1, within(1e-9));
    assertThat(half(stopping, 0, 0))
        .isCloseTo(AlwaysValid.asymptotic(1_000, 1_000 / 999.0, rho, 0.05), within(1e-9));
  }

  /**
   * Every deal one game in four more: ln 40 over ln(1 + stake / 4) deals decide. Said: a square of
   * 0.5 / 16, stake 0.64, 24.9 deals; a pilot's: 1 / 16, stake 0.32, 47.9 deals.
   */
  @Test
  void sequentialTest_ofFourSeats_endsAfterSoManyDeals() {
    assertThat(decided(Optional.of(0.5), 24)).isEqualTo(Stopping.Verdict.UNDECIDED);
    assertThat(decided(Optional.of(0.5), 25)).isEqualTo(Stopping.Verdict.MORE);
    assertThat(decided(Optional.empty(), 47)).isEqualTo(Stopping.Verdict.UNDECIDED);
    assertThat(decided(Optional.empty(), 48)).isEqualTo(Stopping.Verdict.MORE);
  }

  private static Stopping.Verdict decided(Optional<Double> expected, int deals) {
    Stopping stopping =
        new Stopping(
            until(expected, Optional.of(new Until.Test(0.02, 0.05, 0.1))),
            List.of(Measure.WIN_RATE),
            1,
            4,
            0.95);
    if (stopping.pilots()) {
      stopping.add(StoppingTest.block(100, deal -> 1));
    }
    stopping.add(StoppingTest.block(deals, deal -> 1));
    boolean reached = stopping.decision() == Stopping.Decision.REACHED;
    assertThat(reached).isEqualTo(stopping.verdict(0) != Stopping.Verdict.UNDECIDED);
    return stopping.verdict(0);
  }
}
