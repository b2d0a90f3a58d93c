package org.tallywall.experiments.reading;

/**
 * Chances as people say them. Guesses of hidden tiles are not good to a tenth of a percent, so
 * nothing finer than whole hundredths is said, and what was never or always seen is not called
 * impossible or sure.
 */
public final class In100 {
  private static final double WHOLE = 100;

  private In100() {}

  /**
   * A chance as a number out of 100, for a table.
   *
   * @param chance 0 to 1
   * @return as in {@code 12}, {@code under 1}, {@code over 99}
   */
  public static String number(double chance) {
    if (chance * WHOLE < 1) {
      return "under 1";
    }
    return chance * WHOLE > WHOLE - 1 ? "over 99" : String.valueOf(Math.round(chance * WHOLE));
  }

  /**
   * A chance in a sentence.
   *
   * @param chance 0 to 1
   * @return as in {@code in 12 of 100 guesses}
   */
  public static String guesses(double chance) {
    if (chance * WHOLE < 1) {
      return "in fewer than 1 of 100 guesses";
    }
    return chance * WHOLE > WHOLE - 1
        ? "in nearly every guess"
        : "in " + number(chance) + " of 100 guesses";
  }
}
