package org.tallywall.reports.table;

/** What the cells of a column may hold. An empty cell fits every type. */
public enum ColumnType {
  /** Words. A number that only names something (a seed, a deal) belongs here. */
  TEXT("text"),
  /** A count. */
  INTEGER("a whole number"),
  /** A number in the unit of the column. */
  DECIMAL("a number"),
  /** A share from 0 to 1; people see it as a percentage. */
  RATE("a share from 0 to 1"),
  /** A number with the limits of its interval, or the number alone. */
  DECIMAL_INTERVAL("a number, with or without its interval"),
  /**
   * A share from 0 to 1 with the limits of its interval, or the share alone. The limits themselves
   * may lie outside 0 to 1, because a t interval of few deals can.
   */
  RATE_INTERVAL("a share from 0 to 1, with or without its interval");

  private final String expected;

  ColumnType(String expected) {
    this.expected = expected;
  }

  /**
   * Says what a cell of this type holds, for messages.
   *
   * @return a few words such as "a whole number"
   */
  public String expected() {
    return expected;
  }

  /**
   * Tells whether people read this column as numbers, which stand at the right of their column.
   *
   * @return false for text only
   */
  public boolean isNumber() {
    return this != TEXT;
  }

  /**
   * Tells whether the numbers are shares, which people see as percentages.
   *
   * @return true for the two types of shares
   */
  public boolean isRate() {
    return this == RATE || this == RATE_INTERVAL;
  }

  /**
   * Tells whether cells may carry an interval, which a file for machines spreads over three
   * columns.
   *
   * @return true for the two types with intervals
   */
  public boolean hasInterval() {
    return this == DECIMAL_INTERVAL || this == RATE_INTERVAL;
  }

  /**
   * Tells whether a cell may stand in a column of this type.
   *
   * @param cell the cell
   * @return true if it fits
   */
  public boolean accepts(Cell cell) {
    if (cell instanceof Cell.Empty) {
      return true;
    }
    if (cell instanceof Cell.Text) {
      return this == TEXT;
    }
    if (cell instanceof Cell.Whole) {
      return this == INTEGER;
    }
    if (cell instanceof Cell.Decimal number) {
      return (this == DECIMAL || this == RATE || hasInterval()) && fits(number.value());
    }
    return cell instanceof Cell.Interval interval && hasInterval() && fits(interval.estimate());
  }

  private boolean fits(double value) {
    return !isRate() || value >= 0 && value <= 1;
  }
}
