package org.tallywall.experiments.design.arms;

import java.math.BigInteger;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.math3.distribution.TDistribution;
import org.tallywall.core.play.Seats;
import org.tallywall.experiments.answer.Measures;
import org.tallywall.experiments.stats.Estimate;
import org.tallywall.experiments.stats.FewDeals;
import org.tallywall.experiments.stats.Interval;
import org.tallywall.experiments.stats.Method;
import org.tallywall.experiments.stats.Moments;
import org.tallywall.experiments.stats.PairedProportions;
import org.tallywall.experiments.stats.Proportion;
import org.tallywall.experiments.stats.SampleSize;
import org.tallywall.experiments.study.Measure;
import org.tallywall.experiments.tally.PairTally;

/**
 * What the deals say of one measure of two ways of playing. The deal is the unit: its value is the
 * mean over the studied seats of the first way's value minus the second's.
 */
final class PairNumbers {
  private static final double POWER = 0.9;
  private static final double ALPHA = 0.05;
  private static final double NEARLY = 1e-9;

  private final PairTally tally;
  private final boolean proportions;
  private final int seats;
  private final double confidence;
  private final Moments moments;
  private final Optional<Range> given;

  /** A range that was worked out elsewhere; empty limits where there is none yet. */
  private record Range(Optional<Interval> limits, Method method) {}

  PairNumbers(PairTally tally, Measure measure, int seats, double confidence) {
    this(tally, measure.isRate(), seats, confidence, Optional.empty());
  }

  private PairNumbers(
      PairTally tally, boolean rate, int seats, double confidence, Optional<Range> given) {
    this.tally = tally;
    this.proportions = rate;
    this.seats = seats;
    this.confidence = confidence;
    this.moments = Measures.moments(tally.differences(), tally.deals());
    this.given = given;
  }

  /** The same with a range that holds at every look at once. */
  PairNumbers shown(Optional<Interval> limits) {
    Method method = proportions ? Method.ALWAYS_VALID_SHARE : Method.ALWAYS_VALID_MEAN;
    return new PairNumbers(
        tally, proportions, seats, confidence, Optional.of(new Range(limits, method)));
  }

  /** The mean of the first way's values a game. */
  double first() {
    BigInteger sum = BigInteger.ZERO;
    for (int at = 0; at < Seats.COUNT; at++) {
      sum = sum.add(tally.seat(at).first().value());
    }
    return sum.doubleValue() / tally.deals() / seats;
  }

  /** The mean of the second way's values a game. */
  double second() {
    BigInteger sum = BigInteger.ZERO;
    for (int at = 0; at < Seats.COUNT; at++) {
      sum = sum.add(tally.seat(at).second().value());
    }
    return sum.doubleValue() / tally.deals() / seats;
  }

  /** The paired difference a game. */
  Estimate difference() {
    if (given.isPresent()) {
      return new Estimate(moments.mean() / seats, given.get().limits(), given.get().method());
    }
    if (proportions && exact()) {
      return fewDeals().estimate(confidence);
    } else if (exact()) {
      return new Estimate(moments.mean() / seats, Optional.empty(), Method.T_OVER_DEALS);
    } else if (oneGame()) {
      PairedProportions pairs = pairs();
      return Estimate.of(pairs.difference(), pairs.newcombe(confidence), Method.NEWCOMBE_PAIRED);
    }
    return moments.estimate(confidence, seats);
  }

  /**
   * Whether so few deals differ that Student's interval would be too short. That of Newcombe, for
   * one seat, holds with a single one. Where values have no bound nothing else is known either.
   */
  private boolean exact() {
    return oneGame() ? tally.more() + tally.fewer() == 0 : few();
  }

  private boolean few() {
    return FewDeals.are(tally.more() + tally.fewer(), tally.deals());
  }

  private FewDeals fewDeals() {
    return new FewDeals(tally.deals(), seats, tally::ofSize);
  }

  private boolean oneGame() {
    return proportions && seats == 1;
  }

  private PairedProportions pairs() {
    long both = tally.seat(0).product().value().longValueExact();
    return new PairedProportions(
        both, tally.more(), tally.fewer(), tally.deals() - both - tally.more() - tally.fewer());
  }

  /**
   * The chance of such a difference by luck alone: mid-p of McNemar's test, else Student's t, else,
   * where few deals differ, the smallest allowance with which the exact range leaves out 0.
   */
  OptionalDouble p() {
    if (oneGame()) {
      return OptionalDouble.of(pairs().midPTest());
    } else if (proportions && exact()) {
      return OptionalDouble.of(fewDeals().p());
    } else if (tally.differing() == 0) {
      return OptionalDouble.of(1);
    } else if (exact() || moments.n() < 2 || moments.standardError() == 0) {
      return OptionalDouble.empty();
    }
    double error = moments.standardError();
    double t = Math.abs(moments.mean()) / error;
    double below = new TDistribution(null, moments.n() - 1).cumulativeProbability(-t);
    return OptionalDouble.of(Math.min(1, 2 * below));
  }

  /** Correlation of the two ways' values over deals and seats, seat means taken off. */
  OptionalDouble correlation() {
    double spread = Math.sqrt(variance(true)) * Math.sqrt(variance(false));
    return spread > 0 ? OptionalDouble.of(covariance() / spread) : OptionalDouble.empty();
  }

  /** How many times as many deals independent games would have taken. */
  OptionalDouble gain() {
    if (moments.n() < 2 || moments.variance() == 0) {
      return OptionalDouble.empty();
    }
    double unpaired = (variance(true) + variance(false)) / seats;
    double paired = moments.variance() / seats / seats;
    return unpaired > 0 ? OptionalDouble.of(unpaired / paired) : OptionalDouble.empty();
  }

  /** Variance of one game of one way, about its seat's mean. */
  private double variance(boolean first) {
    BigInteger n = BigInteger.valueOf(tally.deals());
    BigInteger sum = BigInteger.ZERO;
    for (int at = 0; at < seats; at++) {
      PairTally.BySeat seat = tally.seat(at);
      BigInteger x = (first ? seat.first() : seat.second()).value();
      BigInteger xx = (first ? seat.firstSquared() : seat.secondSquared()).value();
      sum = sum.add(xx.multiply(n)).subtract(x.multiply(x));
    }
    return perGame(sum);
  }

  private double covariance() {
    BigInteger n = BigInteger.valueOf(tally.deals());
    BigInteger sum = BigInteger.ZERO;
    for (int at = 0; at < seats; at++) {
      PairTally.BySeat seat = tally.seat(at);
      BigInteger product = seat.first().value().multiply(seat.second().value());
      sum = sum.add(seat.product().value().multiply(n)).subtract(product);
    }
    return perGame(sum);
  }

  private double perGame(BigInteger sumTimesDeals) {
    long n = tally.deals();
    return n < 2 ? 0 : sumTimesDeals.doubleValue() / n / (n - 1) / seats;
  }

  /**
   * The smallest true difference that so many deals would have noticed nine times in ten; empty
   * where too few differ to tell. A range that holds at every look has to leave out 0 at the last
   * of them.
   *
   * @param together comparisons among which the allowance for chance findings is shared
   */
  OptionalDouble detectable(int together) {
    if (moments.n() < 2 || few()) {
      return OptionalDouble.empty();
    }
    double error = moments.standardError() / seats;
    if (error == 0) {
      return OptionalDouble.empty();
    }
    if (given.isPresent()) {
      Optional<Interval> limits = given.get().limits();
      return limits.isEmpty()
          ? OptionalDouble.empty()
          : OptionalDouble.of(
              SampleSize.detectableBeyond(
                  (limits.get().high() - limits.get().low()) / 2, error, POWER));
    }
    return OptionalDouble.of(SampleSize.detectable(error, (1 - confidence) / together, POWER));
  }

  /** Where no deal differed and their number was fixed, how large a share of deals still may. */
  OptionalDouble mostDiffering() {
    return given.isPresent() || differing() > 0
        ? OptionalDouble.empty()
        : OptionalDouble.of(new Proportion(0, deals()).clopperPearson(confidence).high());
  }

  /** Games each way, on deals of their own, that it takes to notice a difference of this size. */
  OptionalDouble gamesToNotice() {
    double size = Math.abs(difference().value());
    double base = second();
    double first = Math.min(1 - NEARLY, base + size);
    return size > 0 && base > 0 && first > base
        ? OptionalDouble.of(SampleSize.unpaired(first, base, ALPHA, POWER))
        : OptionalDouble.empty();
  }

  /** Deals in which any seat came out differently, also where the seats cancel. */
  long differing() {
    return tally.differing();
  }

  long deals() {
    return tally.deals();
  }

  long more() {
    return tally.more();
  }

  long fewer() {
    return tally.fewer();
  }
}
