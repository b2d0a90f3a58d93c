package org.tallywall.experiments.stop;

import java.math.BigInteger;
import java.util.OptionalDouble;
import org.tallywall.experiments.stats.AlwaysValid;
import org.tallywall.experiments.stats.Moments;
import org.tallywall.experiments.tally.PairTally;

/**
 * A range around a mean difference that holds at every look at once. For shares it is the
 * empirical-Bernstein band of values between −1 and 1; each deal is guessed beforehand by the mean
 * of the blocks before its own, which any rule made before the deal allows. For other numbers it is
 * the asymptotic band, from 1,000 deals on.
 */
final class Band {
  private static final double WIDTH_OF_SHARES = 2;
  private static final long LEAST_DEALS = 1_000;

  private final boolean share;
  private final int seats;
  private final double rho;
  private long deals;
  private BigInteger sum = BigInteger.ZERO;
  private BigInteger squares = BigInteger.ZERO;
  private double spread;

  /**
   * A band that has seen nothing.
   *
   * @param share whether the values are shares
   * @param seats games that a deal's value sums up
   * @param rho the tuning constant
   */
  Band(boolean share, int seats, double rho) {
    this.share = share;
    this.seats = seats;
    this.rho = rho;
  }

  /** Adds a block. */
  void add(PairTally block) {
    BigInteger x = block.differences().sum().value();
    BigInteger xx = block.differences().squares().value();
    double guess = deals == 0 ? 0 : mean();
    double blockSum = x.doubleValue() / seats;
    double blockSquares = xx.doubleValue() / seats / seats;
    spread += blockSquares - 2 * guess * blockSum + block.deals() * guess * guess;
    deals += block.deals();
    sum = sum.add(x);
    squares = squares.add(xx);
  }

  /** The mean difference so far. */
  double mean() {
    return sum.doubleValue() / deals / seats;
  }

  /** Half the width of the range, once there is one. */
  OptionalDouble half(double alpha) {
    if (deals == 0) {
      return OptionalDouble.empty();
    }
    if (share) {
      return OptionalDouble.of(
          AlwaysValid.empiricalBernstein(deals, spread, rho, alpha, WIDTH_OF_SHARES));
    }
    if (deals < LEAST_DEALS) {
      return OptionalDouble.empty();
    }
    double variance = new Moments(deals, sum, squares).variance() / seats / seats;
    return OptionalDouble.of(AlwaysValid.asymptotic(deals, variance, rho, alpha));
  }
}
