package org.tallywall.reports.tables;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.tallywall.reports.results.CsvFile;
import org.tallywall.reports.results.Ranged;
import org.tallywall.reports.results.Results;
import org.tallywall.reports.schema.RatingColumns;
import org.tallywall.reports.table.Cell;
import org.tallywall.reports.table.CellText;
import org.tallywall.reports.table.Table;
import org.tallywall.reports.table.TableBuilder;
import org.tallywall.reports.words.Wording;

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
    List<CsvFile.Row> rows = results.rows(RatingColumns.FILE);
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
      picks.add(new Pick(RatingColumns.RATING_BELOW.shownTo(1), RatingTable::below));
    }
    picks.add(Pick.mean(RatingColumns.TIMES_AVERAGE));
    TableBuilder table = Pick.table(RatingColumns.FILE, "Everyone against everyone", picks, rows);
    table.note(
        "Strength 0 is the average of the players that won; of two players 0.69 apart the stronger"
            + " wins twice as often. The strengths are those that make these wins"
            + " likeliest, with Firth's penalty (Biometrika 80, 1993), which comes to about half a"
            + " win for each player in all.");
    rows.stream()
        .filter(row -> row.number(RatingColumns.RATING_BELOW).isPresent())
        .forEach(row -> table.note(limit(row, results.confidence())));
    String neighbors = new RatingNeighbors(results).sentences();
    if (!neighbors.isEmpty()) {
      table.note(neighbors);
    }
    return table
        .note("This table does not say what one habit is worth: compare that on the same deals.")
        .build();
  }

  private static Cell strength(CsvFile.Row row) {
    return row.ranged(RatingColumns.RATING)
        .map(Ranged::cell)
        .orElse(Cell.decimal(row.number(RatingColumns.RATING)));
  }

  /**
   * What the limit of a player that never won stands for. The exact upper limit of none of n
   * (Clopper and Pearson, Biometrika 26, 1934, 404–413) is 1 less the n-th root of the chance
   * beyond it.
   */
  private static String limit(CsvFile.Row row, double confidence) {
    long deals = row.count(RatingColumns.DEALS);
    double most = 1 - Math.pow((1 - confidence) / 2, 1.0 / deals);
    String number = CellText.grouped(Long.toString(deals));
    return "%s won in none of its %s deals; a player as strong as the limit in its row would win %s of 100 games, the most that 0 of %s allows."
        .formatted(
            Wording.quoted(row.text(RatingColumns.ARM)), number, Wording.upTo(100 * most), number);
  }

  /** Rounded up to a tenth, so that "below" stays true. */
  private static Cell below(CsvFile.Row row) {
    OptionalDouble limit = row.number(RatingColumns.RATING_BELOW);
    return limit.isPresent()
        ? Cell.decimal(Math.ceil(10 * limit.getAsDouble()) / 10)
        : Cell.empty();
  }
}
