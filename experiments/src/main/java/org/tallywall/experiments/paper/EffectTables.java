package org.tallywall.experiments.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tallywall.experiments.results.Ranged;
import org.tallywall.experiments.results.Results;
import org.tallywall.experiments.results.Sheet;
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
      tables.add(defence());
    }
    if (!results.rows("branch").isEmpty()) {
      tables.add(SquareTable.of(results));
    }
    return tables;
  }

  private Table defence() {
    List<Pick> picks = new ArrayList<>();
    picks.add(Pick.arm(results));
    picks.add(
        Pick.words(
                "baseline",
                "What it is compared with.",
                row -> Ways.name(results, row.text("baseline")))
            .headed("compared with"));
    picks.add(
        Pick.words("step", "The step of the defence.", row -> row.text("step").replace('-', ' ')));
    picks.add(
        Pick.inHundred(
                "games",
                "in 100 games",
                "Games in 100 in which it came to this.",
                row -> Pick.quotient(row.number("games"), row.number("seat-games").orElse(0)))
            .headed("came to this in 100 games"));
    picks.addAll(effect());
    return Pick.table(
            "defence",
            "How often each step of the defence came into play, and what it was worth then",
            picks,
            results.rows("defence"))
        .note(explained())
        .build();
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

  private static String clear(Sheet.Row row) {
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
