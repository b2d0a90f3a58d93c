package org.tallywall.experiments.school;

import java.util.List;
import java.util.Optional;
import org.tallywall.experiments.stats.FewDeals;
import org.tallywall.experiments.stats.Interval;
import org.tallywall.experiments.stats.Moments;
import org.tallywall.experiments.stats.Proportion;

/**
 * What decisions of one kind lose on average. Each comes from another game, so they are independent
 * and the range is Student's. Where another choice was ahead in few of them, that knows too little
 * of the spread: then the share of decisions in which one was ahead has its exact range (Clopper
 * and Pearson), what it brought there has Student's, and the allowance is shared by the two
 * (Bonferroni).
 *
 * @param mean points a game that a decision loses; below 0 where luck had it so
 * @param range its range; none where another choice was ahead in fewer than {@link #LEAST}
 *     decisions
 * @param variance of the mean
 */
record Lost(double mean, Optional<Interval> range, double variance) {
  /** With fewer decisions in which another choice was ahead, a range would say nothing. */
  static final int LEAST = 4;

  /**
   * What some decisions lose.
   *
   * @param decisions those looked at, one or more, each with as many fresh worlds or none
   * @param confidence the level of the range, between 0 and 1
   * @return the mean with its range
   */
  static Lost of(List<Judged> decisions, double confidence) {
    long[] measured =
        decisions.stream().filter(Judged::differs).mapToLong(one -> one.second().sum()).toArray();
    if (measured.length == 0) {
      return new Lost(0, Optional.empty(), 0);
    }
    int worlds = decisions.stream().mapToInt(one -> one.second().worlds()).max().orElseThrow();
    long[] all = decisions.stream().mapToLong(one -> one.second().sum()).toArray();
    Moments moments = Moments.of(all);
    double mean = moments.mean() / worlds;
    double variance = all.length < 2 ? 0 : moments.variance() / all.length / worlds / worlds;
    if (measured.length < LEAST) {
      return new Lost(mean, Optional.empty(), variance);
    }
    Optional<Interval> range =
        measured.length < FewDeals.ENOUGH
            ? few(measured, all.length, worlds, (1 + confidence) / 2)
            : moments.estimate(confidence, worlds).interval();
    return new Lost(mean, range, variance);
  }

  /** The share of decisions times what is lost in them, each at a level. */
  private static Optional<Interval> few(long[] measured, int all, int worlds, double level) {
    Interval share = new Proportion(measured.length, all).clopperPearson(level);
    return Moments.of(measured)
        .estimate(level, worlds)
        .interval()
        .map(
            loss ->
                new Interval(
                    Math.min(share.low() * loss.low(), share.high() * loss.low()),
                    Math.max(share.low() * loss.high(), share.high() * loss.high())));
  }
}
