package org.tallywall.experiments.answer;

import java.util.Optional;
import java.util.OptionalDouble;
import org.tallywall.experiments.stats.Estimate;
import org.tallywall.experiments.stats.Interval;
import org.tallywall.experiments.stats.Method;
import org.tallywall.experiments.stats.PairMoments;
import org.tallywall.experiments.stats.RareDifference;
import org.tallywall.experiments.stats.SkewTest;
import org.tallywall.experiments.study.Measure;
import org.tallywall.experiments.tally.EffectTally;
import org.tallywall.experiments.tally.FiringTally;
import org.tallywall.reports.table.Cell;

/**
 * What a habit or a choice did in the games in which it came into play. Only deals with such a game
 * tell anything, so they alone are counted as degrees of freedom. Where all of them came to the
 * same there is no range, but never one without width.
 *
 * @param estimate the mean difference a game, with its range where there is one
 * @param p the chance of so large a difference by luck alone, where that can be told
 * @param sure whether the number of deals was fixed, so that a range may be shown
 */
public record Effect(Estimate estimate, OptionalDouble p, boolean sure) {
  /** With fewer deals that differ, or that do not, the exact limits take the place of t. */
  private static final int FEW = 30;

  private static final String NO_SPREAD = "no spread";

  /** The effect on a measure, two deals or more having come to it. */
  static Effect of(FiringTally firing, int at, Measure measure, Certainty certainty) {
    EffectTally effect = firing.effect(at);
    PairMoments moments =
        new PairMoments(
            firing.reached(),
            effect.difference().value(),
            effect.games().value(),
            effect.differenceSquared().value(),
            effect.product().value(),
            effect.gamesSquared().value());
    if (!certainty.fixed()) {
      return new Effect(alone(moments), OptionalDouble.empty(), false);
    }
    if (measure.isRate()) {
      long differ = effect.more() + effect.fewer();
      if (differ < FEW || firing.reached() - differ < FEW) {
        return rare(moments, effect, certainty);
      }
    }
    boolean spread = moments.standardError() > 0;
    return spread
        ? new Effect(
            moments.estimate(certainty.confidence()),
            certainty.chance(OptionalDouble.of(test(moments, effect).p())),
            true)
        : new Effect(
            alone(moments), certainty.chance(OptionalDouble.of(signs(moments, effect).p())), true);
  }

  private static Estimate alone(PairMoments moments) {
    return new Estimate(moments.ratio(), Optional.empty(), Method.RATIO_OVER_DEALS);
  }

  private static SkewTest test(PairMoments moments, EffectTally effect) {
    return new SkewTest(
        moments,
        effect.cubes().value(),
        effect.squaresTimesGames().value(),
        effect.timesGamesSquared().value(),
        effect.gamesCubed().value());
  }

  private static RareDifference signs(PairMoments moments, EffectTally effect) {
    return new RareDifference(effect.more(), effect.fewer(), moments.n());
  }

  /**
   * The limits of shares of deals, carried over to games: by the deals for each game, and by how
   * much a deal that differs does so (1 unless several of its games do).
   */
  private static Effect rare(PairMoments moments, EffectTally effect, Certainty certainty) {
    RareDifference shares = signs(moments, effect);
    long differ = effect.more() + effect.fewer();
    double size =
        differ == 0 ? 1 : Math.sqrt(effect.differenceSquared().value().doubleValue() / differ);
    double scale = size * moments.n() / moments.y().doubleValue();
    Interval limits = shares.interval(certainty.confidence());
    double value = moments.ratio();
    Interval range =
        new Interval(
            Math.max(-1, value - (shares.share() - limits.low()) * scale),
            Math.min(1, value + (limits.high() - shares.share()) * scale));
    return new Effect(
        Estimate.of(value, range, Method.FEW_DIFFER),
        certainty.chance(OptionalDouble.of(shares.p())),
        true);
  }

  /** How the range was computed, or why there is none. */
  Cell method() {
    boolean none = estimate.interval().isEmpty() && sure;
    return none ? Cell.text(NO_SPREAD) : Measures.method(estimate);
  }
}
