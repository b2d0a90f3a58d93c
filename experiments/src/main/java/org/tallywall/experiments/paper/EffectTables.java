package org.tallywall.experiments.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tallywall.reports.results.Ranged;
import org.tallywall.reports.results.Results;
import org.tallywall.reports.results.Sheet;
import org.tallywall.reports.table.Table;

/**
 * What a habit or a choice is worth in the games in which it came into play: {@code defence.csv}
 * and {@code branch.csv} in words for readers.
 */
final class EffectTables {
  private static final List<String> SQUARE = List.of("exposures-on-one-rack", "away", "wall");
  private static final String PER = "in 100 such games";

  private final Results results;

  EffectTables(Results results) {
    this.results = results;
  }

  List<Table> all() {
    List<Table> tables = new ArrayList<>();
    if (!results.rows("defence").isEmpty()) {
      tables.add(StepTable.of(results));
    }
    if (!results.rows("branch").isEmpty()) {
      tables.add(branch());
    }
    return tables;
  }

  private Table branch() {
    Sheet sheet = results.sheet("branch").orElseThrow();
    List<Pick> picks = new ArrayList<>();
    for (String feature : SQUARE) {
      if (sheet.has(feature)) {
        picks.add(
            Pick.count(feature, "tiles", "The situation; of the wall, the most tiles left.")
                .headed(heading(feature)));
      }
    }
    picks.add(Pick.words("option", "What is done.", row -> BranchChart.words(row.text("option"))));
    picks.add(
        Pick.words(
                "compared-with",
                "What is done instead.",
                row -> BranchChart.words(row.text("compared-with")))
            .headed("compared with"));
    picks.addAll(effect());
    return Pick.table("branch", "Every situation", picks, results.rows("branch"))
        .note(explained())
        .build();
  }

  private static String heading(String feature) {
    return switch (feature) {
      case "away" -> "tiles away";
      case "wall" -> "wall, at most";
      default -> feature.replace('-', ' ');
    };
  }

  private static List<Pick> effect() {
    return List.of(
        Pick.count("deals-reached", "deals", "Deals in which it came to this.")
            .headed("deals in which it came to this"),
        Pick.words(
            "measure", "What was measured.", row -> MeasureWords.heading(row.text("measure"))),
        Pick.rangeInHundred("difference", PER, "The difference in 100 such games, with its range.")
            .headed("difference in 100 such games"),
        Pick.words("told-apart", "Whether plus or minus is clear.", EffectTables::clear)
            .headed("clear?"));
  }

  static String clear(Sheet.Row row) {
    Optional<Ranged> difference = row.ranged("difference");
    if (difference.isEmpty()) {
      return "too few to say";
    }
    return switch (difference.get().estimate().clearSign()) {
      case 1 -> "yes, more";
      case -1 -> "yes, less";
      default -> "could not be told";
    };
  }

  private String explained() {
    return "Counted only where it came to this. The range in brackets would hold the true figure in %s of 100 such runs; it takes no account of how many rows there are."
        .formatted(Wording.level(results.confidence()));
  }
}
