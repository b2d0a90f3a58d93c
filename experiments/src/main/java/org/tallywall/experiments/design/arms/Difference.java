package org.tallywall.experiments.design.arms;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
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
 * @param holm the same, adjusted for all tests of its role
 */
public record Difference(
    String arm,
    String baseline,
    Measure measure,
    Role role,
    PairNumbers numbers,
    OptionalDouble p,
    OptionalDouble holm) {
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
    return adjusted(adjusted(plain, Role.PRIMARY), Role.SECONDARY);
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
              answer.study().question().confidence());
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
              tested ? numbers.p() : OptionalDouble.empty(),
              OptionalDouble.empty()));
    }
    return found;
  }

  private static Role role(StudyAnswer answer, Measure measure) {
    if (answer.study().question().primary().equals(Optional.of(measure))) {
      return Role.PRIMARY;
    }
    return answer.study().question().secondary().contains(measure)
        ? Role.SECONDARY
        : Role.EXPLORATORY;
  }

  /** With Holm's adjustment over all tests of a role. */
  private static List<Difference> adjusted(List<Difference> all, Role role) {
    double[] p =
        all.stream()
            .filter(one -> one.role == role && one.p.isPresent())
            .mapToDouble(one -> one.p.getAsDouble())
            .toArray();
    double[] holm = Corrections.holm(p);
    List<Difference> adjusted = new ArrayList<>();
    int at = 0;
    for (Difference one : all) {
      boolean mine = one.role == role && one.p.isPresent();
      adjusted.add(mine ? one.withHolm(holm[at++]) : one);
    }
    return adjusted;
  }

  private Difference withHolm(double adjusted) {
    return new Difference(arm, baseline, measure, role, numbers, p, OptionalDouble.of(adjusted));
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
