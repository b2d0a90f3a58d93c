package org.tallywall.experiments.gauges.calibration;

/** Chances in 100, written short. */
final class InHundred {
  /** What is smaller is not written as a number. */
  static final double LEAST = 0.05;

  private static final double WHOLE_FROM = 3;

  private InHundred() {}

  /** A number of at most one decimal place. */
  static String plain(double value) {
    long tenths = Math.round(10 * value);
    return tenths / 10 + (tenths % 10 == 0 ? "" : "." + Math.abs(tenths % 10));
  }

  /** A size of 0 or more: whole from 3 on, else to a tenth. */
  static String size(double value) {
    if (value < LEAST) {
      return "less than 0.1";
    }
    return value >= WHOLE_FROM ? Long.toString(Math.round(value)) : plain(value);
  }
}
