package org.tallywall.experiments.stop;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.tallywall.experiments.stats.AlwaysValid;
import org.tallywall.experiments.stats.Interval;
import org.tallywall.experiments.stats.Sprt;
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
  private final long[] more;
  private final long[] fewer;
  private double discordance;
  private boolean begun;
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
    this.more = new long[pairs];
    this.fewer = new long[pairs];
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
      more[pair] += block.pair(pair, 0).more();
      fewer[pair] += block.pair(pair, 0).fewer();
    }
    decision = decide();
    return true;
  }

  private void begin(StudyTally pilot) {
    discordance = until.expected().orElse(0.0);
    for (int pair = 0; pair < pairs; pair++) {
      for (int measure = 0; measure < measures.size(); measure++) {
        double variance = expected(measure, pilot == null ? null : pilot.pair(pair, measure));
        double planned = planned(measure, variance);
        double rho = AlwaysValid.tuning(planned * variance, alpha);
        bands.add(new Band(measures.get(measure).isRate(), seats, rho));
      }
      if (pilot != null) {
        PairTally primary = pilot.pair(pair, 0);
        double share = (double) (primary.more() + primary.fewer()) / primary.deals();
        discordance = Math.max(discordance, share);
      }
    }
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
    MORE,
    /** The first way has fewer. */
    FEWER,
    /** No difference of the size worth finding. */
    NONE,
    /** Not clear yet. */
    UNDECIDED
  }

  /**
   * What the sequential test says of a comparison: Wald's test to either side, with half of the
   * chance of a false alarm each.
   *
   * @param pair the comparison
   * @return the verdict so far
   * @throws java.util.NoSuchElementException if the study asked for no such test
   */
  public Verdict verdict(int pair) {
    Until.Test test = until.test().orElseThrow();
    double differing = Math.max(discordance, 1.01 * test.difference());
    Sprt sprt = Sprt.paired(differing, test.difference(), test.falseAlarm() / 2, test.miss());
    Sprt.Decision up = sprt.decide(more[pair], fewer[pair]);
    Sprt.Decision down = sprt.decide(fewer[pair], more[pair]);
    if (up == Sprt.Decision.SECOND) {
      return Verdict.MORE;
    } else if (down == Sprt.Decision.SECOND) {
      return Verdict.FEWER;
    }
    return up == Sprt.Decision.FIRST && down == Sprt.Decision.FIRST
        ? Verdict.NONE
        : Verdict.UNDECIDED;
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
