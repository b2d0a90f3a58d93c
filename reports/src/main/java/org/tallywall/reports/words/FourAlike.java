package org.tallywall.reports.words;

import java.util.Optional;
import org.tallywall.reports.results.CsvFile;
import org.tallywall.reports.results.Results;
import org.tallywall.reports.schema.WinRateColumns;

/** A way of playing that all four seats have: one game counts for each of them. */
public final class FourAlike {
  private FourAlike() {}

  /**
   * Why its points are 0, and why there are fewer games than ways of playing, seats and deals tell.
   *
   * @param results what a results folder holds
   * @return a sentence; empty where no way is compared with one that all four seats have
   */
  public static Optional<String> note(Results results) {
    String baseline = Ways.baseline(results);
    return Ways.rows(results).stream()
        .filter(row -> Ways.name(results, row.text(WinRateColumns.ARM)).equals(baseline))
        .filter(FourAlike::isOneGame)
        .findFirst()
        .map(
            row ->
                "%s is four equal players: they are one game a deal, not four, and their points cancel out."
                    .formatted(Wording.quoted(baseline)));
  }

  /** The seats of one game are told together without a range: what they score adds up to 0. */
  private static boolean isOneGame(CsvFile.Row row) {
    return row.text(WinRateColumns.SEAT).equals("all")
        && row.ranged(WinRateColumns.POINTS).isEmpty()
        && row.number(WinRateColumns.POINTS).orElse(1) == 0
        && row.count(WinRateColumns.GAMES) > row.count(WinRateColumns.DEALS);
  }
}
