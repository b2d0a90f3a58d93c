package org.tallywall.experiments.design.branch;

import java.util.Optional;
import java.util.OptionalDouble;
import org.tallywall.experiments.answer.Effect;
import org.tallywall.experiments.stats.Estimate;
import org.tallywall.experiments.study.Measure;
import org.tallywall.experiments.tally.FiringTally;

/**
 * One option beside the first in one square.
 *
 * @param square which square
 * @param option which of the other options
 * @param primary whether the study asks about this measure
 * @param measure what is measured
 * @param firing what was counted
 * @param effect what it did; empty where the square came up too seldom
 * @param holm the adjusted p-value, where there is one
 */
record BranchRow(
    int square,
    int option,
    boolean primary,
    Measure measure,
    FiringTally firing,
    Optional<Effect> effect,
    OptionalDouble holm) {

  BranchRow withHolm(double adjusted) {
    return new BranchRow(
        square, option, primary, measure, firing, effect, OptionalDouble.of(adjusted));
  }

  OptionalDouble p() {
    return effect.map(Effect::p).orElse(OptionalDouble.empty());
  }

  /** 1 or −1 where more or fewer stays clear when all squares are counted together, else 0. */
  int clearSign(double confidence) {
    boolean clear = holm.isPresent() && holm.getAsDouble() < 1 - confidence;
    double low =
        effect.map(Effect::estimate).flatMap(Estimate::interval).map(i -> i.low()).orElse(0.0);
    double high =
        effect.map(Effect::estimate).flatMap(Estimate::interval).map(i -> i.high()).orElse(0.0);
    return !clear ? 0 : low > 0 ? 1 : high < 0 ? -1 : 0;
  }
}
