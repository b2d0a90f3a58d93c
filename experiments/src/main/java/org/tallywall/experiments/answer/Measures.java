package org.tallywall.experiments.answer;

import java.math.BigInteger;
import java.util.List;
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
   * The share of all players that aimed at a line after the passes. The deal is the unit; where
   * nobody did, the exact limit for deals with anybody who did takes its place.
   */
  static Estimate shareAimed(AimTally aim, Way way, double confidence) {
    long deals = way.tally().deals();
    BigInteger aimed = big(aim, AimTally.Count.AFTER_PASSES);
    if (aimed.signum() == 0) {
      return Estimate.of(
          0, new Proportion(0, deals).clopperPearson(confidence), Method.CLOPPER_PEARSON);
    }
    Estimate share =
        new Moments(deals, aimed, big(aim, AimTally.Count.AIMED_SQUARED))
            .estimate(confidence, way.seats().size());
    return new Estimate(
        share.value(), share.interval().map(Interval::withinZeroAndOne), share.method());
  }

  /**
   * The share of those who aimed at a line after the passes that won, with whatever line. The deal
   * is the unit; where nobody won, all did, or few aimed, the exact interval of a proportion takes
   * its place.
   */
  static Estimate winRateOfAimers(AimTally aim, long deals, double confidence) {
    return shareOfAimers(
        aim,
        List.of(
            AimTally.Count.AIMED_AND_WON,
            AimTally.Count.WON_SQUARED,
            AimTally.Count.WON_TIMES_AIMED),
        deals,
        confidence);
  }

  /** The share of them that won with that very line, or a line of that family; as above. */
  static Estimate winRateWithIt(AimTally aim, long deals, double confidence) {
    return shareOfAimers(
        aim,
        List.of(
            AimTally.Count.AIMED_AND_WON_WITH_IT,
            AimTally.Count.WON_WITH_IT_SQUARED,
            AimTally.Count.WON_WITH_IT_TIMES_AIMED),
        deals,
        confidence);
  }

  /** Takes the names of a count, of its squares, and of its products with those who aimed. */
  private static Estimate shareOfAimers(
      AimTally aim, List<AimTally.Count> what, long deals, double confidence) {
    long aimed = aim.counts().get(AimTally.Count.AFTER_PASSES);
    long won = aim.counts().get(what.get(0));
    if (aimed < FEW || won == 0 || won == aimed) {
      Proportion share = new Proportion(won, aimed);
      return Estimate.of(share.share(), share.clopperPearson(confidence), Method.CLOPPER_PEARSON);
    }
    PairMoments pair =
        new PairMoments(
            deals,
            BigInteger.valueOf(won),
            BigInteger.valueOf(aimed),
            big(aim, what.get(1)),
            big(aim, what.get(2)),
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
