package org.tallywall.reports.tables;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.tallywall.reports.results.Ranged;
import org.tallywall.reports.results.Results;
import org.tallywall.reports.results.Sheet;
import org.tallywall.reports.schema.RatingColumns;
import org.tallywall.reports.table.Cell;
import org.tallywall.reports.table.Table;
import org.tallywall.reports.table.TableBuilder;

/** Everyone against everyone, in words for readers. */
public final class RatingTable {
  private RatingTable() {}

  /**
   * The table.
   *
   * @param results what a results folder holds
   * @return the table
   */
  public static Table of(Results results) {
    List<Sheet.Row> rows = results.rows(RatingColumns.FILE);
    boolean never =
        rows.stream().anyMatch(row -> row.number(RatingColumns.RATING_BELOW).isPresent());
    List<Pick> picks = new ArrayList<>();
    picks.add(Pick.words(RatingColumns.ARM));
    picks.add(Pick.words(RatingColumns.PLAYER));
    picks.add(Pick.count(RatingColumns.GAMES));
    picks.add(Pick.inHundred(RatingColumns.WIN_RATE, row -> row.number(RatingColumns.WIN_RATE)));
    picks.add(Pick.inHundred(RatingColumns.POINTS, row -> row.number(RatingColumns.POINTS)));
    picks.add(new Pick(RatingColumns.RATING, RatingTable::strength));
    if (never) {
      picks.add(new Pick(RatingColumns.RATING_BELOW, RatingTable::below));
    }
    picks.add(Pick.mean(RatingColumns.TIMES_AVERAGE));
    TableBuilder table = Pick.table(RatingColumns.FILE, "Everyone against everyone", picks, rows);
    table.note(
        "Strength 0 is the average of the players that won; of two players that differ by 0.69 one"
            + " wins twice for the other's once. The strengths are those that make these wins"
            + " likeliest, with Firth's penalty (Biometrika 80, 1993), which comes to about half a"
            + " win for each player in all.");
    if (never) {
      table.note(
          "Who never won has no strength, only a limit: in no deal of so many was a game won, and"
              + " the exact range of that share (Clopper and Pearson) ends where the strength would"
              + " be this.");
    }
    String neighbors = new RatingNeighbors(results).sentences();
    if (!neighbors.isEmpty()) {
      table.note(neighbors);
    }
    return table
        .note(
            "What one habit is worth is said by comparisons on the same deals, not by this table.")
        .build();
  }

  private static Cell strength(Sheet.Row row) {
    return row.ranged(RatingColumns.RATING)
        .map(Ranged::cell)
        .orElse(Cell.decimal(row.number(RatingColumns.RATING)));
  }

  /** Rounded up to a tenth, so that "below" stays true. */
  private static Cell below(Sheet.Row row) {
    OptionalDouble limit = row.number(RatingColumns.RATING_BELOW);
    return limit.isPresent()
        ? Cell.decimal(Math.ceil(10 * limit.getAsDouble()) / 10)
        : Cell.empty();
  }
}
