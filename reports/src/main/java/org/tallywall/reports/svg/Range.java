package org.tallywall.reports.svg;

import java.util.List;
import org.tallywall.reports.figure.PlotValue;

/**
 * The numbers that an axis must reach.
 *
 * @param low the lowest
 * @param high the highest
 */
record Range(double low, double high) {
  /** The range of some estimates and their limits; 0 to 1 if there is none. */
  static Range of(List<PlotValue> estimates) {
    if (estimates.isEmpty()) {
      return new Range(0, 1);
    }
    Range range = null;
    for (PlotValue e : estimates) {
      Range own = new Range(Math.min(e.low(), e.value()), Math.max(e.high(), e.value()));
      range = range == null ? own : range.with(own.low()).with(own.high());
    }
    return range;
  }

  /** The range that reaches another number too. */
  Range with(double value) {
    return new Range(Math.min(low, value), Math.max(high, value));
  }
}
