package org.tallywall.experiments.answer;

import java.math.BigInteger;
import org.tallywall.experiments.stats.Estimate;
import org.tallywall.experiments.stats.Interval;
import org.tallywall.experiments.stats.Method;
import org.tallywall.experiments.stats.Moments;
import org.tallywall.experiments.stats.PairMoments;
import org.tallywall.experiments.stats.Proportion;
import org.tallywall.experiments.study.Measure;
import org.tallywall.experiments.tally.AimTally;
import org.tallywall.experiments.tally.DealSums;
import org.tallywall.reports.table.Cell;

/** Turns tallies into estimates and cells. */
public final class Measures {
  private static final int FEW = 100;

  private Measures() {}

  /**
   * Sums over deals as moments.
   *
   * @param sums the sums
   * @param deals over how many deals
   * @return the moments
   */
  public static Moments moments(DealSums sums, long deals) {
    return new Moments(deals, sums.sum().value(), sums.squares().value());
  }

  /**
   * The share of those who aimed at a line after the passes that won. The deal is the unit; where
   * nobody won, all did, or few aimed, the exact interval of a proportion takes its place.
   */
  static Estimate winRateOfAimers(AimTally aim, long deals, double confidence) {
    long aimed = aim.counts().get(AimTally.Count.AFTER_PASSES);
    long won = aim.counts().get(AimTally.Count.AIMED_AND_WON);
    if (aimed < FEW || won == 0 || won == aimed) {
      Proportion share = new Proportion(won, aimed);
      return Estimate.of(share.share(), share.clopperPearson(confidence), Method.CLOPPER_PEARSON);
    }
    PairMoments pair =
        new PairMoments(
            deals,
            BigInteger.valueOf(won),
            BigInteger.valueOf(aimed),
            big(aim, AimTally.Count.WON_SQUARED),
            big(aim, AimTally.Count.WON_TIMES_AIMED),
            big(aim, AimTally.Count.AIMED_SQUARED));
    Estimate ratio = pair.estimate(confidence);
    return new Estimate(
        ratio.value(), ratio.interval().map(Interval::withinZeroAndOne), ratio.method());
  }

  private static BigInteger big(AimTally aim, AimTally.Count what) {
    return BigInteger.valueOf(aim.counts().get(what));
  }

  /**
   * An estimate as a cell.
   *
   * @param estimate the estimate
   * @return with its interval, where it has one
   */
  public static Cell cell(Estimate estimate) {
    return estimate
        .interval()
        .map(interval -> Cell.interval(estimate.value(), interval.low(), interval.high()))
        .orElse(Cell.decimal(estimate.value()));
  }

  /**
   * The same in 100 games.
   *
   * @param estimate the estimate of one game
   * @return with its interval, where it has one
   */
  public static Cell hundredfold(Estimate estimate) {
    return estimate
        .interval()
        .map(i -> Cell.interval(100 * estimate.value(), 100 * i.low(), 100 * i.high()))
        .orElse(Cell.decimal(100 * estimate.value()));
  }

  /**
   * The name of the method, where there is an interval.
   *
   * @param estimate the estimate
   * @return the name, or nothing
   */
  public static Cell method(Estimate estimate) {
    return estimate.interval().isPresent() ? Cell.text(estimate.method().text()) : Cell.empty();
  }

  /**
   * In what a measure is counted.
   *
   * @param measure the measure
   * @return "share of games", or "per game"
   */
  public static String unit(Measure measure) {
    return measure.isRate() ? "share of games" : "per game";
  }
}
