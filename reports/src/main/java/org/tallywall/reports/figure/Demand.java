package org.tallywall.reports.figure;

/** What figures ask of their parts, in one wording. */
final class Demand {
  private Demand() {}

  static void words(String where, String what, String words) {
    if (words == null || words.isBlank()) {
      throw new IllegalArgumentException(where + " lacks " + what);
    }
  }

  static void finite(String where, double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException(where + ": a figure shows finite numbers");
    }
  }

  static void that(boolean holds, String where, String message) {
    if (!holds) {
      throw new IllegalArgumentException(where + ": " + message);
    }
  }
}
