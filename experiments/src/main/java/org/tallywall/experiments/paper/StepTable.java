package org.tallywall.experiments.paper;

import java.util.List;
import java.util.OptionalDouble;
import org.tallywall.reports.results.Results;
import org.tallywall.reports.results.Sheet;
import org.tallywall.reports.table.Table;

/** The steps of the defence, {@code defence.csv} in words for readers. */
final class StepTable {
  private static final String GAMES = "in 100 games";

  private StepTable() {}

  static Table of(Results results) {
    List<Pick> picks =
        List.of(
            Pick.arm(results),
            Pick.words(
                    "baseline",
                    "What it is compared with.",
                    row -> Ways.name(results, row.text("baseline")))
                .headed("compared with"),
            Pick.words(
                "step", "The step of the defence.", row -> row.text("step").replace('-', ' ')),
            Pick.inHundred(
                    "games",
                    GAMES,
                    "Games in 100 in which it came to this.",
                    row -> ofGames(row, "games"))
                .headed("came to this in 100 games"),
            Pick.mean("mean-wall", "tiles", "Mean number of tiles left in the wall then.")
                .headed("tiles left in the wall then")
                .shownTo(0),
            Pick.inHundred(
                    "games-compared",
                    GAMES,
                    "Games in 100 in which it came to this before the two games differed.",
                    row -> ofGames(row, "games-compared"))
                .headed("came to this before the two games differed, in 100 games"),
            Pick.count("deals-compared", "deals", "Deals with such a game.")
                .headed("deals with such a game"),
            Pick.words(
                "measure", "What was measured.", row -> MeasureWords.heading(row.text("measure"))),
            Pick.rangeInHundred(
                    "difference",
                    "in 100 such games",
                    "The difference in 100 such games, with its range.")
                .headed("difference in 100 such games"),
            Pick.words("told-apart", "Whether plus or minus is clear.", EffectTables::clear)
                .headed("clear?"));
    return Pick.table(
            "defence",
            "How often it came to each step of the defence, and what was gained or lost in games"
                + " that were alike up to there",
            picks,
            results.rows("defence"))
        .note(
            "The difference is taken only over games that came to the step before the two games"
                + " differed (at that discard at the latest): later on, luck has chosen the games."
                + " For \u201cplayed differently\u201d it is taken over all games that differed.")
        .note(
            "The range in brackets would hold the true figure in %s of 100 such runs; it takes no account of how many rows there are."
                .formatted(Wording.level(results.confidence())))
        .build();
  }

  private static OptionalDouble ofGames(Sheet.Row row, String count) {
    return Pick.quotient(row.number(count), row.number("seat-games").orElse(0));
  }
}
