package org.tallywall.reports.words;

import java.util.List;
import org.tallywall.reports.results.Results;

/** What stands below every chart. */
public final class Below {
  private Below() {}

  /**
   * How much was played, and of what the figures speak.
   *
   * @param results what a results folder holds
   * @return notes for a caption
   */
  public static List<String> chart(Results results) {
    return List.of(
        "%s, %s. Programmed players, one card, one set of rules."
            .formatted(Stops.counted(results), results.manifest().text("card")));
  }
}
