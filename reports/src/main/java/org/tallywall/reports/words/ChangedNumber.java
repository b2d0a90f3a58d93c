package org.tallywall.reports.words;

import java.util.Optional;
import java.util.OptionalLong;
import org.tallywall.reports.results.Results;
import org.tallywall.reports.table.CellText;

/** What is said of a run whose number of deals was changed after it had begun. */
public final class ChangedNumber {
  /** The field of a study that holds the number fixed before. */
  public static final String FIELD = "first-planned";

  private ChangedNumber() {}

  /**
   * What a reader has to know first.
   *
   * @param results what a results folder holds
   * @return some sentences; empty where the number is the one that was fixed before the run
   */
  public static Optional<String> notice(Results results) {
    OptionalLong planned = results.study().whole(FIELD);
    return planned.isEmpty()
        ? Optional.empty()
        : Optional.of(
            "The number of deals was changed after the run had begun: %s were planned, %s are counted. Whoever changed it may have seen results by then, so every range here allows for that: it holds at every look, and is wider than that of a number fixed before the run."
                .formatted(grouped(planned.getAsLong()), grouped(results.deals())));
  }

  /** Whether the number was changed. */
  static boolean in(Results results) {
    return results.study().whole(FIELD).isPresent();
  }

  /**
   * How the number came about, in a few words.
   *
   * @param results what a results folder holds
   * @return empty where the number is the one that was fixed before the run
   */
  public static Optional<String> inShort(Results results) {
    return in(results) ? Optional.of("changed after the run had begun") : Optional.empty();
  }

  private static String grouped(long number) {
    return CellText.grouped(Long.toString(number));
  }
}
