package org.tallywall.experiments.design.arms;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.tallywall.experiments.answer.StudyAnswer;
import org.tallywall.experiments.stats.Corrections;
import org.tallywall.experiments.stats.Estimate;
import org.tallywall.experiments.study.Arm;
import org.tallywall.experiments.study.Measure;

/**
 * One measure of one way of playing against the one that it is compared with.
 *
 * @param arm the way of playing
 * @param baseline the one compared with
 * @param measure the measure
 * @param role whether it was declared before the run
 * @param numbers what the deals say
 * @param p the chance of such a difference by luck alone, where a test was declared
 * @param holm the same, adjusted for all declared comparisons of the study together: primary and
 *     secondary ones are one family, so that none need be clear before another may be
 * @param together comparisons among which the allowance for chance findings is shared; none where a
 *     sequential test decides, which was set to a difference of its own
 */
public record Difference(
    String arm,
    String baseline,
    Measure measure,
    Role role,
    PairNumbers numbers,
    OptionalDouble p,
    OptionalDouble holm,
    OptionalInt together) {
  /** Whether a measure was declared before the run. */
  public enum Role {
    /** It answers the question. */
    PRIMARY("primary"),
    /** Declared beside it. */
    SECONDARY("secondary"),
    /** Not declared. */
    EXPLORATORY("exploratory");

    private final String text;

    Role(String text) {
      this.text = text;
    }

    String text() {
      return text;
    }
  }

  /**
   * All comparisons of a study with several ways of playing.
   *
   * @param answer what the study answers
   * @param arms its ways of playing
   * @return the measures of the first way, then those of the next
   */
  public static List<Difference> of(StudyAnswer answer, ArmsDesign arms) {
    List<Difference> plain = new ArrayList<>();
    int pair = 0;
    for (int arm = 0; arm < arms.arms().size(); arm++) {
      if (arm != arms.baseline()) {
        plain.addAll(of(answer, arms, arm, pair++));
      }
    }
    return answer.stopping().isPresent() ? plain : adjusted(plain);
  }

  private static List<Difference> of(StudyAnswer answer, ArmsDesign arms, int arm, int pair) {
    List<Difference> found = new ArrayList<>();
    List<Measure> measures = answer.study().question().measures();
    Arm baseline = arms.arms().get(arms.baseline());
    for (int at = 0; at < measures.size(); at++) {
      Measure measure = measures.get(at);
      PairNumbers numbers =
          new PairNumbers(
              answer.tally().pair(pair, at),
              measure,
              arms.seats().size(),
              answer.certainty().confidence());
      Role role = role(answer, measure);
      boolean tested = role != Role.EXPLORATORY && answer.stopping().isEmpty();
      int place = at;
      found.add(
          new Difference(
              arms.arms().get(arm).name(),
              baseline.name(),
              measure,
              role,
              answer
                  .stopping()
                  .map(stopping -> numbers.shown(stopping.range(pair, place)))
                  .orElse(numbers),
              tested ? answer.certainty().chance(numbers.p()) : OptionalDouble.empty(),
              OptionalDouble.empty(),
              decidedByTest(answer, role) ? OptionalInt.empty() : OptionalInt.of(1)));
    }
    return found;
  }

  private static boolean decidedByTest(StudyAnswer answer, Role role) {
    return role == Role.PRIMARY
        && answer.stopping().flatMap(stopping -> stopping.until().test()).isPresent();
  }

  private static Role role(StudyAnswer answer, Measure measure) {
    if (answer.study().question().primary().equals(Optional.of(measure))) {
      return Role.PRIMARY;
    }
    return answer.study().question().secondary().contains(measure)
        ? Role.SECONDARY
        : Role.EXPLORATORY;
  }

  /**
   * With Holm's adjustment over everything declared before the run. What has no p-value of its own
   * keeps its place in the family, as one that is never found.
   */
  private static List<Difference> adjusted(List<Difference> all) {
    double[] p =
        all.stream().filter(Difference::declared).mapToDouble(one -> one.p.orElse(1)).toArray();
    double[] holm = Corrections.holm(p);
    List<Difference> adjusted = new ArrayList<>();
    int at = 0;
    for (Difference one : all) {
      adjusted.add(one.declared() ? one.among(p.length, holm[at++]) : one);
    }
    return adjusted;
  }

  private boolean declared() {
    return role != Role.EXPLORATORY;
  }

  private Difference among(int declared, double adjusted) {
    OptionalDouble shown = p.isPresent() ? OptionalDouble.of(adjusted) : p;
    return new Difference(
        arm, baseline, measure, role, numbers, p, shown, OptionalInt.of(declared));
  }

  /** The smallest true difference that the run would have noticed nine times in ten, if told. */
  OptionalDouble detectable() {
    return together.isEmpty() ? OptionalDouble.empty() : numbers.detectable(together.getAsInt());
  }

  /**
   * The difference a game, with its interval.
   *
   * @return the estimate
   */
  public Estimate estimate() {
    return numbers.difference();
  }
}
