package org.tallywall.reports.table;

import java.util.Objects;
import java.util.OptionalDouble;

/** One value of a table, in full precision. */
public sealed interface Cell {

  /**
   * Words.
   *
   * @param value any text; each writer escapes what its format needs
   */
  record Text(String value) implements Cell {
    /**
     * Takes a text.
     *
     * @param value any text
     */
    public Text {
      Objects.requireNonNull(value, "value");
    }

    @Override
    public String described() {
      return "the text \"" + value + "\"";
    }
  }

  /**
   * A whole number.
   *
   * @param value the number
   */
  record Whole(long value) implements Cell {
    @Override
    public String described() {
      return "the whole number " + value;
    }
  }

  /**
   * A number with a fraction.
   *
   * @param value a finite number
   */
  record Decimal(double value) implements Cell {
    /**
     * Takes a number.
     *
     * @param value a finite number
     * @throws IllegalArgumentException if it is infinite or not a number
     */
    public Decimal {
      NumberText.requireFinite(value);
    }

    @Override
    public String described() {
      return "the number " + NumberText.of(value);
    }
  }

  /**
   * An estimate with the limits of its interval. The estimate may lie outside, because some
   * intervals (those made of several looks at the data) can leave it out.
   *
   * @param estimate a finite number
   * @param low the lower limit, finite, at most {@code high}
   * @param high the upper limit, finite
   */
  record Interval(double estimate, double low, double high) implements Cell {
    /**
     * Takes an estimate and its limits.
     *
     * @param estimate a finite number
     * @param low the lower limit
     * @param high the upper limit
     * @throws IllegalArgumentException if one is not finite, or the limits are in the wrong order
     */
    public Interval {
      NumberText.requireFinite(estimate);
      NumberText.requireFinite(low);
      NumberText.requireFinite(high);
      if (low > high) {
        throw new IllegalArgumentException(
            "the lower limit "
                + NumberText.of(low)
                + " is above the upper limit "
                + NumberText.of(high));
      }
    }

    @Override
    public String described() {
      return "the number "
          + NumberText.of(estimate)
          + " with its interval "
          + NumberText.of(low)
          + " to "
          + NumberText.of(high);
    }
  }

  /** No value: nothing was counted, or nothing can be said. */
  record Empty() implements Cell {
    @Override
    public String described() {
      return "nothing";
    }
  }

  /**
   * Says what the cell holds, for messages.
   *
   * @return a few words
   */
  String described();

  /**
   * Makes a cell of words.
   *
   * @param value any text
   * @return the cell
   */
  static Cell text(String value) {
    return new Text(value);
  }

  /**
   * Makes a cell of a whole number.
   *
   * @param value the number
   * @return the cell
   */
  static Cell whole(long value) {
    return new Whole(value);
  }

  /**
   * Makes a cell of a number.
   *
   * @param value a finite number
   * @return the cell
   * @throws IllegalArgumentException if the number is infinite or not a number
   */
  static Cell decimal(double value) {
    return new Decimal(value);
  }

  /**
   * Makes a cell of a number that may be missing.
   *
   * @param value a finite number, or none
   * @return the cell, empty if there is no number
   * @throws IllegalArgumentException if the number is infinite or not a number
   */
  static Cell decimal(OptionalDouble value) {
    return value.isPresent() ? new Decimal(value.getAsDouble()) : new Empty();
  }

  /**
   * Makes a cell of the quotient of two counts: a share, or a mean.
   *
   * @param part the count or sum above the line
   * @param whole the count below the line, not negative
   * @return the quotient, or an empty cell if {@code whole} is 0
   * @throws IllegalArgumentException if {@code whole} is negative
   */
  static Cell ratio(long part, long whole) {
    if (whole < 0) {
      throw new IllegalArgumentException("a count cannot be negative: " + whole);
    }
    return whole == 0 ? new Empty() : new Decimal((double) part / whole);
  }

  /**
   * Makes a cell of an estimate with its interval.
   *
   * @param estimate a finite number
   * @param low the lower limit, finite, at most {@code high}
   * @param high the upper limit, finite
   * @return the cell
   * @throws IllegalArgumentException if a number is not finite, or the limits are in the wrong
   *     order
   */
  static Cell interval(double estimate, double low, double high) {
    return new Interval(estimate, low, high);
  }

  /**
   * Makes a cell without a value.
   *
   * @return the cell
   */
  static Cell empty() {
    return new Empty();
  }
}
