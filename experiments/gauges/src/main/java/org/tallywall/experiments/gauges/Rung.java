package org.tallywall.experiments.gauges;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.tallywall.reports.results.CsvFile;
import org.tallywall.reports.results.Ranged;
import org.tallywall.reports.results.Results;
import org.tallywall.reports.table.Cell;

/**
 * What one ladder says of one player.
 *
 * @param name what the ladder calls it
 * @param games games played
 * @param wins share of games won
 * @param points points a game
 * @param strength its rating beside the average of the players that won; empty if it never won
 * @param below below what its rating lies, if it never won
 */
record Rung(
    String name,
    long games,
    Cell wins,
    Cell points,
    Optional<Ranged> strength,
    OptionalDouble below) {
  /** The players of a ladder, strongest first. */
  static List<Rung> of(Results results) {
    return results.rows("ratings").stream().map(row -> of(results, row)).toList();
  }

  private static Rung of(Results results, CsvFile.Row rating) {
    String name = rating.text("arm");
    CsvFile.Row rates =
        results.rows("win-rates").stream()
            .filter(row -> row.text("arm").equals(name) && row.text("seat").equals("all"))
            .findFirst()
            .orElseThrow();
    return new Rung(
        name,
        rating.count("games"),
        wins(rates.ranged("win-rate").orElseThrow(), rating.count("deals")),
        rates.ranged("points").orElseThrow().inHundred().cell(),
        rating.ranged("rating"),
        rating.number("rating-below"));
  }

  /**
   * Games won in 100. Of a player that never won, the deals say how often it may win at most: in
   * none of n of them, so at least once in a deal by a chance of 1 - 0.025^(1/n) or less (Clopper
   * and Pearson, Biometrika 26, 1934), and a share of all games no greater than that.
   */
  private static Cell wins(Ranged rate, long deals) {
    boolean never = rate.value() == 0;
    double most = never ? 1 - StrictMath.pow(0.025, 1.0 / deals) : rate.high();
    return new Ranged(rate.value(), rate.low(), most).inHundred().cell();
  }

  /** The strength, or nothing. */
  Cell cell() {
    return strength.map(Ranged::cell).orElse(Cell.empty());
  }
}
