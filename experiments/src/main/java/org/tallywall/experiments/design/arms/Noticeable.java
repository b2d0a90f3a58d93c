package org.tallywall.experiments.design.arms;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.tallywall.experiments.design.Noticed;
import org.tallywall.experiments.stats.EveryLook;
import org.tallywall.experiments.study.Measure;
import org.tallywall.experiments.study.Study;
import org.tallywall.experiments.tally.StudyTally;

/**
 * How small a difference a comparison will be able to notice: as many standard errors as a
 * two-sided test at its level and nine runs in ten take together, by the normal approximation
 * (Lachin, Controlled Clinical Trials 2, 1981, 93–113; from memory). The spread of a deal is that
 * of the deals known so far, and the standard error falls with the square root of their number.
 */
final class Noticeable {
  private Noticeable() {}

  /** Says it of the primary measure, one comparison after the other. */
  static List<Noticed> of(Study study, ArmsDesign arms, StudyTally known) {
    Measure primary = study.question().measures().get(0);
    int pairs = arms.arms().size() - 1;
    int together = pairs * (1 + study.question().secondary().size());
    long deals = study.extent().deals();
    double level = study.question().confidence();
    double confidence = study.extent().changed() ? new EveryLook(deals, level).level() : level;
    List<Noticed> noticed = new ArrayList<>();
    int pair = 0;
    for (int arm = 0; arm < arms.arms().size(); arm++) {
      if (arm != arms.baseline()) {
        PairNumbers numbers =
            new PairNumbers(known.pair(pair++, 0), primary, arms.seats().size(), confidence);
        String name = arms.arms().get(arm).name();
        noticed.add(new Noticed(name, primary, size(numbers, together, deals), together));
      }
    }
    return noticed;
  }

  /** The size for a number of deals, by those known. */
  static OptionalDouble size(PairNumbers known, int together, long deals) {
    OptionalDouble now = known.detectable(together);
    return now.isEmpty()
        ? now
        : OptionalDouble.of(now.getAsDouble() * Math.sqrt((double) known.deals() / deals));
  }
}
