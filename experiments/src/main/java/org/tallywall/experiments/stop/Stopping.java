package org.tallywall.experiments.stop;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.tallywall.experiments.stats.AlwaysValid;
import org.tallywall.experiments.stats.Interval;
import org.tallywall.experiments.stats.SequentialTest;
import org.tallywall.experiments.study.Measure;
import org.tallywall.experiments.study.Until;
import org.tallywall.experiments.tally.PairTally;
import org.tallywall.experiments.tally.StudyTally;

/**
 * Looks at a run after each block, in the order of blocks, and says when it may stop. Where the
 * study does not say how much to expect of a deal, the first block tells: it is a pilot and is left
 * out of the answer. What a run shows after such looks are ranges that hold at every look at once,
 * never those of a number of deals fixed in advance.
 */
public final class Stopping {
  /** What a look says. */
  public enum Decision {
    /** Not enough yet. */
    GO_ON,
    /** What the study asked for is reached. */
    REACHED
  }

  /** Deviations per half width at which a band is expected to reach its goal. */
  private static final double PLANNED = 3.2;

  /** What is expected of a measure of which the study says nothing and no pilot tells. */
  private static final double USUAL_SHARE = 0.1;

  private static final double USUAL_POINTS = 400;
  private static final double USUAL_COUNT = 0.25;

  private final Until until;
  private final List<Measure> measures;
  private final int pairs;
  private final int seats;
  private final double alpha;
  private final List<Band> bands = new ArrayList<>();
  private final List<Trial> trials = new ArrayList<>();
  private boolean begun;
  private long looks;
  private Decision decision = Decision.GO_ON;

  /**
   * A run that has not begun.
   *
   * @param until the rule
   * @param measures the measures of the study, the primary one first
   * @param pairs comparisons
   * @param seats studied seats
   * @param confidence the level of ranges, between 0 and 1
   */
  public Stopping(Until until, List<Measure> measures, int pairs, int seats, double confidence) {
    this.until = until;
    this.measures = List.copyOf(measures);
    this.pairs = pairs;
    this.seats = seats;
    this.alpha = 1 - confidence;
  }

  /**
   * Whether the first block is a pilot that the answer leaves out.
   *
   * @return true where the study says nothing of what to expect
   */
  public boolean pilots() {
    return until.expected().isEmpty();
  }

  /**
   * Takes a block into account.
   *
   * @param block what was counted in it; blocks come in their order
   * @return whether the block belongs to the answer; a pilot does not
   */
  public boolean add(StudyTally block) {
    if (!begun) {
      begun = true;
      begin(pilots() ? block : null);
      if (pilots()) {
        return false;
      }
    }
    for (int pair = 0; pair < pairs; pair++) {
      for (int measure = 0; measure < measures.size(); measure++) {
        band(pair, measure).add(block.pair(pair, measure));
      }
      if (until.test().isPresent()) {
        trials.get(pair).add(block.pair(pair, 0));
      }
    }
    looks++;
    decision = decide();
    return true;
  }

  private void begin(StudyTally pilot) {
    for (int pair = 0; pair < pairs; pair++) {
      for (int measure = 0; measure < measures.size(); measure++) {
        double variance = expected(measure, pilot == null ? null : pilot.pair(pair, measure));
        double planned = planned(measure, variance);
        double rho = AlwaysValid.tuning(planned * variance, alpha);
        bands.add(new Band(measures.get(measure).isRate(), seats, rho));
      }
      int place = pair;
      until.test().ifPresent(test -> trials.add(trial(test, pilot, place)));
    }
  }

  /** What is expected of the test's deals; where the study says it, one seat of a deal differs. */
  private Trial trial(Until.Test test, StudyTally pilot, int pair) {
    double square =
        pilot == null
            ? until.expected().orElseThrow() / seats / seats
            : expected(0, pilot.pair(pair, 0));
    SequentialTest side =
        new SequentialTest(test.difference(), test.falseAlarm() / 2, test.miss(), square);
    return new Trial(side, seats);
  }

  /** The expected square of a deal's value. */
  private double expected(int measure, PairTally pilot) {
    Measure what = measures.get(measure);
    if (pilot != null) {
      double square =
          pilot.differences().squares().value().doubleValue() / seats / seats / pilot.deals();
      return Math.max(square, 1.0 / seats / seats / pilot.deals());
    }
    if (measure == 0) {
      double said = until.expected().orElseThrow();
      return what.isRate() ? said : said * said;
    }
    return what.isRate() ? USUAL_SHARE : what == Measure.POINTS ? USUAL_POINTS : USUAL_COUNT;
  }

  private double planned(int measure, double variance) {
    if (until.goal() == Until.Goal.HALF_WIDTH && measure == 0) {
      double deviations = PLANNED / until.halfWidth();
      return Math.min(until.atMost(), deviations * deviations * variance);
    }
    return until.atMost() / 2.0;
  }

  private Decision decide() {
    for (int pair = 0; pair < pairs; pair++) {
      if (!decided(pair)) {
        return Decision.GO_ON;
      }
    }
    return Decision.REACHED;
  }

  private boolean decided(int pair) {
    if (until.test().isPresent()) {
      return verdict(pair) != Verdict.UNDECIDED;
    }
    OptionalDouble half = band(pair, 0).half(alpha);
    if (half.isEmpty()) {
      return false;
    }
    return until.goal() == Until.Goal.HALF_WIDTH
        ? half.getAsDouble() <= until.halfWidth()
        : Math.abs(band(pair, 0).mean()) > half.getAsDouble();
  }

  /** What a sequential test says of a comparison. */
  public enum Verdict {
    /** The first way has more. */
    MORE("more"),
    /** The first way has fewer. */
    FEWER("fewer"),
    /** No difference of the size worth finding. */
    NONE("none of that size"),
    /** Not clear yet. */
    UNDECIDED("undecided");

    private final String text;

    Verdict(String text) {
      this.text = text;
    }

    /**
     * The verdict as files name it.
     *
     * @return as in {@code none of that size}
     */
    public String text() {
      return text;
    }
  }

  /**
   * What the sequential test says of a comparison: a test to either side, with half of the chance
   * of a false alarm each. A verdict stays, whatever comes after it.
   *
   * @param pair the comparison
   * @return the verdict so far
   * @throws java.util.NoSuchElementException if the study asked for no such test
   */
  public Verdict verdict(int pair) {
    until.test().orElseThrow();
    return trials.isEmpty() ? Verdict.UNDECIDED : trials.get(pair).verdict();
  }

  /**
   * How often it looked.
   *
   * @return blocks that belong to the answer
   */
  public long looks() {
    return looks;
  }

  private Band band(int pair, int measure) {
    return bands.get(pair * measures.size() + measure);
  }

  /**
   * What the last look said.
   *
   * @return the decision
   */
  public Decision decision() {
    return decision;
  }

  /**
   * The range of a difference that holds at every look at once.
   *
   * @param pair the comparison
   * @param measure the measure's place in the study
   * @return the range, once there is one
   */
  public Optional<Interval> range(int pair, int measure) {
    if (bands.isEmpty()) {
      return Optional.empty();
    }
    Band band = band(pair, measure);
    OptionalDouble half = band.half(alpha);
    return half.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Interval(band.mean() - half.getAsDouble(), band.mean() + half.getAsDouble()));
  }

  /**
   * The rule.
   *
   * @return as the study says
   */
  public Until until() {
    return until;
  }
}
