package org.tallywall.reports.words;

import org.tallywall.reports.results.Results;

/** What the ranges of a results folder are. */
public final class RangeWords {
  private RangeWords() {}

  /**
   * How often such a range holds the true number, and when.
   *
   * @param results what a results folder holds
   * @return such as "In 95 of 100 such runs, the range in parentheses would hold the true number."
   */
  public static String of(Results results) {
    return "In %s of 100 such runs, the range in parentheses %s."
        .formatted(
            Wording.level(results.confidence()),
            isAtEveryLook(results)
                ? "holds the true number at every look"
                : "would hold the true number");
  }

  /**
   * Whether a number of deals that was fixed was not kept to, so that every range allows for it.
   */
  private static boolean isAtEveryLook(Results results) {
    return Stops.of(results).isEmpty()
        && (results.provisional().isPresent() || ChangedNumber.in(results));
  }
}
