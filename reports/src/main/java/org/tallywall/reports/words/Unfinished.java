package org.tallywall.reports.words;

import java.util.Optional;
import org.tallywall.reports.results.Provisional;
import org.tallywall.reports.results.Results;
import org.tallywall.reports.table.CellText;

/** What is said of a run that is not complete, wherever its figures are shown. */
public final class Unfinished {
  private static final String EARLY =
      " This run is not complete, and its numbers will still move. Its ranges allow for looking at"
          + " any time and stopping at what one sees, so they are wider than those of the complete"
          + " run will be.";

  private static final String EITHER_WAY =
      " This run is not complete: its own rule has not stopped it yet, and its numbers will still"
          + " move.";

  private Unfinished() {}

  /**
   * The mark in a few words.
   *
   * @param results what a results folder holds
   * @return such as "PROVISIONAL: 1,000 of 20,000 deals"; empty where the run is complete
   */
  public static Optional<String> mark(Results results) {
    return results.provisional().map(Unfinished::mark);
  }

  private static String mark(Provisional run) {
    String wanted =
        run.wanted().isEmpty()
            ? ""
            : (run.atMost() ? " of at most " : " of ") + grouped(run.wanted().getAsLong());
    return "PROVISIONAL: " + grouped(run.deals()) + wanted + " deals";
  }

  /**
   * The mark and what it means.
   *
   * @param results what a results folder holds
   * @return some sentences; empty where the run is complete
   */
  public static Optional<String> notice(Results results) {
    return results.provisional().map(run -> mark(run) + "." + (run.atMost() ? EITHER_WAY : EARLY));
  }

  /**
   * What a run whose number of deals was fixed is to be told with.
   *
   * @param results what a results folder holds
   * @return a sentence
   */
  public static String number(Results results) {
    if (ChangedNumber.in(results)) {
      return "The number was changed after the run had begun.";
    }
    return results.provisional().isPresent()
        ? "The number was fixed before the run, and the run has not come to it."
        : "The number was fixed before the run.";
  }

  private static String grouped(long number) {
    return CellText.grouped(Long.toString(number));
  }
}
