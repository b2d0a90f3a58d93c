package org.tallywall.reports.results;

import org.tallywall.reports.figure.PlotValue;
import org.tallywall.reports.table.Cell;

/**
 * A number with the limits of its interval.
 *
 * @param value the number
 * @param low the lower limit, at most {@code high}
 * @param high the upper limit
 */
public record Ranged(double value, double low, double high) {
  /**
   * The same counted in 100 games instead of one, or a share in 100 instead of one.
   *
   * @return all three a hundredfold
   */
  public Ranged inHundred() {
    return new Ranged(100 * value, 100 * low, 100 * high);
  }

  /**
   * The same seen from the other side.
   *
   * @return all three with the other sign
   */
  public Ranged negated() {
    return new Ranged(0 - value, 0 - high, 0 - low);
  }

  /**
   * For a figure.
   *
   * @return the same three
   */
  public PlotValue estimate() {
    return new PlotValue(value, low, high);
  }

  /**
   * For a table.
   *
   * @return the same three
   */
  public Cell cell() {
    return Cell.interval(value, low, high);
  }
}
