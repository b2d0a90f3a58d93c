package org.tallywall.reports.tables;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.tallywall.reports.results.Results;
import org.tallywall.reports.results.Sheet;
import org.tallywall.reports.schema.BranchColumns;
import org.tallywall.reports.table.Cell;
import org.tallywall.reports.table.Column;
import org.tallywall.reports.table.Table;
import org.tallywall.reports.words.BranchWords;
import org.tallywall.reports.words.MeasureWords;
import org.tallywall.reports.words.Wording;

/** Every situation of a branch study, in words for readers: {@code branch.csv}. */
final class SquareTable {
  private static final List<Column> SITUATION =
      List.of(BranchColumns.EXPOSURES_ON_ONE_RACK, BranchColumns.AWAY, BranchColumns.WALL);

  private SquareTable() {}

  static Table of(Results results) {
    Sheet sheet = results.sheet(BranchColumns.FILE).orElseThrow();
    List<Pick> picks = new ArrayList<>();
    SITUATION.stream().filter(sheet::has).map(Pick::count).forEach(picks::add);
    picks.add(
        Pick.words("option", "What is done.", row -> plain(row, BranchColumns.COMPARED_WITH)));
    picks.add(Pick.words(BranchColumns.COMPARED_WITH, row -> plain(row, BranchColumns.OPTION)));
    picks.add(Pick.count(BranchColumns.DEALS_REACHED));
    picks.add(
        Pick.words(
            BranchColumns.MEASURE, row -> MeasureWords.heading(row.text(BranchColumns.MEASURE))));
    picks.add(new Pick(BranchColumns.DIFFERENCE, SquareTable::difference));
    picks.add(
        Pick.words(
                "told-apart",
                "Whether plus or minus stays clear with all squares counted together.",
                row -> clear(results, row))
            .headed("clear?"));
    return Pick.table(
            BranchColumns.FILE, "Every situation", picks, results.rows(BranchColumns.FILE))
        .note(explained(results))
        .build();
  }

  /** The file has the second choice less the first. */
  private static Cell difference(Sheet.Row row) {
    return row.ranged(BranchColumns.DIFFERENCE)
        .map(ranged -> ranged.inHundred().negated().cell())
        .orElseGet(
            () -> {
              OptionalDouble alone = row.number(BranchColumns.DIFFERENCE);
              return alone.isPresent() ? Cell.decimal(0 - 100 * alone.getAsDouble()) : Cell.empty();
            });
  }

  private static String plain(Sheet.Row row, Column option) {
    return BranchWords.plain(row.text(option));
  }

  private static String clear(Results results, Sheet.Row row) {
    if (row.ranged(BranchColumns.DIFFERENCE).isEmpty()) {
      return row.text(BranchColumns.METHOD).equals("too few")
          ? "too few to say"
          : "could not be told";
    }
    return switch (BranchWords.clear(row, results.confidence())) {
      case -1 -> "yes, more";
      case 1 -> "yes, less";
      default -> "could not be told";
    };
  }

  private static String explained(Results results) {
    return "Counted only where it came to this. The range in brackets, taken by itself, would hold the true figure in %s of 100 such runs. Clear is what stays clear when all situations are counted together (Holm)."
        .formatted(Wording.level(results.confidence()));
  }
}
