package org.tallywall.experiments.benchmarks;

import java.util.List;
import java.util.Optional;
import org.tallywall.experiments.results.Ranged;
import org.tallywall.experiments.results.Results;
import org.tallywall.experiments.results.Sheet;
import org.tallywall.reports.table.Cell;

/**
 * What one ladder says of one player.
 *
 * @param name what the ladder calls it
 * @param games games played
 * @param wins share of games won
 * @param points points a game
 * @param strength its rating beside the average of the players
 */
record Rung(String name, long games, Cell wins, Cell points, Ranged strength) {
  /** The players of a ladder, strongest first. */
  static List<Rung> of(Results results) {
    return results.rows("ratings").stream().map(row -> of(results, row)).toList();
  }

  private static Rung of(Results results, Sheet.Row rating) {
    String name = rating.text("arm");
    Sheet.Row rates =
        results.rows("win-rates").stream()
            .filter(row -> row.text("arm").equals(name) && row.text("seat").equals("all"))
            .findFirst()
            .orElseThrow();
    return new Rung(
        name,
        rating.count("games"),
        inHundred(rates.ranged("win-rate")),
        inHundred(rates.ranged("points")),
        rating.ranged("rating").orElseThrow());
  }

  private static Cell inHundred(Optional<Ranged> ranged) {
    return ranged.orElseThrow().inHundred().cell();
  }
}
