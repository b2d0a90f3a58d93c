package org.tallywall.experiments.tally;

import java.math.BigInteger;
import java.util.Arrays;

/** A sum of whole numbers that is exact however large it grows. */
public final class ExactSum {
  private long small;
  private BigInteger large = BigInteger.ZERO;

  /** Nothing added yet. */
  public ExactSum() {}

  /**
   * Adds a number.
   *
   * @param number any number
   */
  public void add(long number) {
    long sum = small + number;
    if (((small ^ sum) & (number ^ sum)) < 0) {
      large = value().add(BigInteger.valueOf(number));
      small = 0;
    } else {
      small = sum;
    }
  }

  /**
   * Adds the square of a number.
   *
   * @param number any number
   */
  public void addSquare(long number) {
    long square = number * number;
    if (Math.multiplyHigh(number, number) == 0 && square >= 0) {
      add(square);
    } else {
      BigInteger exact = BigInteger.valueOf(number);
      large = large.add(exact.multiply(exact));
    }
  }

  /** Carries all numbers out or in. */
  void carry(Carrier carrier) {
    small = carrier.carry(small);
    byte[] digits = large.signum() == 0 ? new byte[0] : large.toByteArray();
    digits = Arrays.copyOf(digits, carrier.carryLength(digits.length));
    for (int at = 0; at < digits.length; at++) {
      digits[at] = (byte) carrier.carry(digits[at]);
    }
    large = digits.length == 0 ? BigInteger.ZERO : new BigInteger(digits);
  }

  /**
   * Adds another sum.
   *
   * @param other the other sum, which stays as it is
   */
  public void add(ExactSum other) {
    large = large.add(other.large);
    add(other.small);
  }

  /**
   * The sum.
   *
   * @return exactly what was added
   */
  public BigInteger value() {
    return large.add(BigInteger.valueOf(small));
  }
}
