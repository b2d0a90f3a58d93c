package org.tallywall.experiments.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.tallywall.reports.results.Results;
import org.tallywall.reports.results.Sheet;
import org.tallywall.reports.table.Cell;
import org.tallywall.reports.table.Column;
import org.tallywall.reports.table.Table;

/** Every situation of a branch study, in words for readers: {@code branch.csv}. */
final class SquareTable {
  private static final List<String> SQUARE = List.of("exposures-on-one-rack", "away", "wall");

  private SquareTable() {}

  static Table of(Results results) {
    Sheet sheet = results.sheet("branch").orElseThrow();
    List<Pick> picks = new ArrayList<>();
    for (String feature : SQUARE) {
      if (sheet.has(feature)) {
        picks.add(
            Pick.count(feature, "tiles", "The situation; of the wall, the most tiles left.")
                .headed(heading(feature)));
      }
    }
    picks.add(
        Pick.words("option", "What is done.", row -> BranchWords.plain(row.text("compared-with"))));
    picks.add(
        Pick.words(
                "compared-with",
                "What is done instead.",
                row -> BranchWords.plain(row.text("option")))
            .headed("compared with"));
    picks.add(
        Pick.count("deals-reached", "deals", "Deals in which it came to this.")
            .headed("deals in which it came to this"));
    picks.add(
        Pick.words(
            "measure", "What was measured.", row -> MeasureWords.heading(row.text("measure"))));
    picks.add(
        new Pick(
            Column.decimalInterval(
                    "difference",
                    "in 100 such games",
                    "The first less the second in 100 such games, with its range.")
                .shownTo(1)
                .headed("difference in 100 such games"),
            SquareTable::difference));
    picks.add(
        Pick.words(
                "told-apart",
                "Whether plus or minus stays clear with all squares counted together.",
                row -> clear(results, row))
            .headed("clear?"));
    return Pick.table("branch", "Every situation", picks, results.rows("branch"))
        .note(explained(results))
        .build();
  }

  /** The file has the second choice less the first. */
  private static Cell difference(Sheet.Row row) {
    return row.ranged("difference")
        .map(ranged -> ranged.inHundred().negated().cell())
        .orElseGet(
            () -> {
              OptionalDouble alone = row.number("difference");
              return alone.isPresent() ? Cell.decimal(0 - 100 * alone.getAsDouble()) : Cell.empty();
            });
  }

  private static String heading(String feature) {
    return switch (feature) {
      case "away" -> "tiles away";
      case "wall" -> "wall, at most";
      default -> feature.replace('-', ' ');
    };
  }

  private static String clear(Results results, Sheet.Row row) {
    if (row.ranged("difference").isEmpty()) {
      return row.text("method").equals("too few") ? "too few to say" : "could not be told";
    }
    return switch (BranchChart.clear(row, results.confidence())) {
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
