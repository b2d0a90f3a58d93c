package org.tallywall.reports.tables;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.tallywall.reports.results.CsvFile;
import org.tallywall.reports.results.Results;
import org.tallywall.reports.schema.BranchColumns;
import org.tallywall.reports.table.Cell;
import org.tallywall.reports.table.Column;
import org.tallywall.reports.table.Table;
import org.tallywall.reports.words.BranchWords;
import org.tallywall.reports.words.MeasureWords;
import org.tallywall.reports.words.RangeWords;

/** Every situation of a branch study, in words for readers: {@code branch.csv}. */
public final class SquareTable {
  private SquareTable() {}

  static Table of(Results results) {
    List<Pick> picks = new ArrayList<>(situation(results));
    picks.addAll(options());
    picks.add(Pick.count(BranchColumns.DEALS_REACHED));
    picks.add(
        Pick.words(
            BranchColumns.MEASURE, row -> MeasureWords.heading(row.text(BranchColumns.MEASURE))));
    picks.addAll(difference(results));
    return Pick.table(
            BranchColumns.FILE, "Every situation", picks, results.rows(BranchColumns.FILE))
        .note(explained(results))
        .build();
  }

  /**
   * The one table of the notes: what the study asks about, in the situations that have a figure.
   *
   * @param results what a results folder holds
   * @return the table; none where no situation has a figure
   */
  public static Optional<Table> brief(Results results) {
    String primary = results.study().text("primary");
    List<CsvFile.Row> rows =
        results.rows(BranchColumns.FILE).stream()
            .filter(row -> primary.isEmpty() || row.text(BranchColumns.MEASURE).equals(primary))
            .filter(row -> row.number(BranchColumns.DIFFERENCE).isPresent())
            .toList();
    if (rows.isEmpty()) {
      return Optional.empty();
    }
    List<Pick> picks = new ArrayList<>(situation(results));
    boolean several =
        rows.stream().map(row -> row.text(BranchColumns.OPTION)).distinct().count() > 1;
    if (several) {
      picks.addAll(options());
    }
    picks.add(Pick.count(BranchColumns.DEALS_REACHED));
    picks.addAll(difference(results));
    String instead = several ? "" : ": " + BranchWords.of(rows.get(0)).instead();
    return Optional.of(
        Pick.table("situations", title(rows.get(0)) + instead, picks, rows)
            .note(explained(results))
            .build());
  }

  private static String title(CsvFile.Row row) {
    String measure = row.text(BranchColumns.MEASURE);
    return BranchWords.sentence(
        MeasureWords.of(measure).map(MeasureWords::heading).orElse(measure));
  }

  private static List<Pick> situation(Results results) {
    CsvFile sheet = results.sheet(BranchColumns.FILE).orElseThrow();
    return BranchColumns.situation().stream().filter(sheet::has).map(Pick::count).toList();
  }

  private static List<Pick> options() {
    return List.of(
        Pick.words("option", "What is done.", row -> plain(row, BranchColumns.COMPARED_WITH)),
        Pick.words(BranchColumns.COMPARED_WITH, row -> plain(row, BranchColumns.OPTION)));
  }

  private static List<Pick> difference(Results results) {
    return List.of(
        new Pick(BranchColumns.DIFFERENCE, SquareTable::difference),
        Pick.words(
                "told-apart",
                "Whether plus or minus stays clear with all situations counted together.",
                row -> clear(results, row))
            .headed("clear?"));
  }

  /** The file has the second choice less the first. */
  private static Cell difference(CsvFile.Row row) {
    return row.ranged(BranchColumns.DIFFERENCE)
        .map(ranged -> ranged.inHundred().negated().cell())
        .orElseGet(
            () -> {
              OptionalDouble alone = row.number(BranchColumns.DIFFERENCE);
              return alone.isPresent() ? Cell.decimal(0 - 100 * alone.getAsDouble()) : Cell.empty();
            });
  }

  private static String plain(CsvFile.Row row, Column option) {
    return BranchWords.plain(row.text(option));
  }

  private static String clear(Results results, CsvFile.Row row) {
    if (row.ranged(BranchColumns.DIFFERENCE).isEmpty()) {
      return row.text(BranchColumns.METHOD).equals("too few")
          ? "too few to say"
          : "too close to call";
    }
    return switch (BranchWords.clear(row, results.confidence())) {
      case -1 -> "yes, more";
      case 1 -> "yes, less";
      default -> "too close to call";
    };
  }

  private static String explained(Results results) {
    return RangeWords.of(results)
        + " Ranges are taken one by one; \u201cclear\u201d means clear with all situations counted together"
        + " (Holm).";
  }
}
