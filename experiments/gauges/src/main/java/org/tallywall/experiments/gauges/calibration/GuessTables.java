package org.tallywall.experiments.gauges.calibration;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tallywall.reports.markdown.MarkdownWriter;
import org.tallywall.reports.table.Cell;
import org.tallywall.reports.table.Column;
import org.tallywall.reports.table.Table;
import org.tallywall.reports.table.TableBuilder;

/** What guesses said beside what was true, as tables of a page. */
final class GuessTables {
  private static final List<String> GUESSES = List.of("LikelyTiles", "WeighedTiles");

  private GuessTables() {}

  /**
   * A table of tenths.
   *
   * @param result what it came to
   * @param fact what was said
   * @return Markdown
   */
  static String bins(GuessResult result, GuessTally.Fact fact) {
    TableBuilder table =
        Table.builder("bins", fact.words())
            .columns(Column.text("place", "The tenth.").headed("that she " + fact.words()));
    for (int guess = 0; guess < GUESSES.size(); guess++) {
      table.columns(
          Column.integer("count-" + guess, "chances", "Chances in the tenth.")
              .headed("`" + GUESSES.get(guess) + "`: chances"),
          Column.decimal("said-" + guess, "in 100", "Mean of what was said.")
              .shownTo(2)
              .headed("said, in 100"),
          Column.decimal("true-" + guess, "in 100", "How often it was true.")
              .shownTo(2)
              .headed("true, in 100"),
          Column.decimalInterval("off-" + guess, "in 100", "Said less true.")
              .headed("said less true"));
    }
    for (int tenth = 0; tenth < 10; tenth++) {
      double from = tenth / 10.0;
      if (of(result, 0, fact, from).or(() -> of(result, 1, fact, from)).isPresent()) {
        Stream<Cell> cells = Stream.of(Cell.text(10 * tenth + " to " + 10 * (tenth + 1)));
        for (int guess = 0; guess < GUESSES.size(); guess++) {
          cells = Stream.concat(cells, cells(of(result, guess, fact, from)));
        }
        table.row(cells.toList());
      }
    }
    return MarkdownWriter.grid(table.build()).strip() + "\n\n";
  }

  private static Optional<Bins.Row> of(
      GuessResult result, int guess, GuessTally.Fact fact, double from) {
    return result.tally().bins(guess, fact).rows().stream()
        .filter(row -> row.from() == from)
        .findFirst();
  }

  private static Stream<Cell> cells(Optional<Bins.Row> bin) {
    if (bin.isEmpty()) {
      return Stream.of(Cell.whole(0), Cell.empty(), Cell.empty(), Cell.empty());
    }
    Bins.Row row = bin.get();
    return Stream.of(
        Cell.whole(row.count()),
        Cell.decimal(100 * row.said()),
        Cell.decimal(100 * row.happened()),
        Cell.interval(
            NetResult.off(row),
            100 * (row.said() - row.limits().high()),
            100 * (row.said() - row.limits().low())));
  }

  /**
   * How well both guesses fit, by minus the logarithm of the chance of what was true.
   *
   * @param results what they came to
   * @return Markdown
   */
  static String scores(List<GuessResult> results) {
    TableBuilder table =
        Table.builder("scores", "Scores")
            .columns(
                Column.text("card", "The card."),
                Column.text("players", "The players."),
                Column.text("fact", "What was said.").headed("that she"),
                Column.decimal("before", "thousandths", "Log score of LikelyTiles.")
                    .shownTo(2)
                    .headed("log score of `LikelyTiles`, thousandths"),
                Column.decimal("now", "thousandths", "Log score of WeighedTiles.")
                    .shownTo(2)
                    .headed("of `WeighedTiles`"),
                Column.decimalInterval("more", "thousandths", "The difference.")
                    .headed("difference (less is better)"),
                Column.decimal("effective", "racks", "Effective sample size.")
                    .shownTo(2)
                    .headed("racks that counted of those proposed"));
    for (GuessResult result : results) {
      for (GuessTally.Fact fact : GuessTally.Fact.values()) {
        Score.Mean more = result.tally().score(1, fact).logarithmicMore();
        table.row(
            Cell.text(result.card().card().name()),
            Cell.text("`" + result.kind() + "`"),
            Cell.text(fact.words()),
            Cell.decimal(1000 * result.tally().score(0, fact).logarithmic().value()),
            Cell.decimal(1000 * result.tally().score(1, fact).logarithmic().value()),
            Cell.interval(1000 * more.value(), 1000 * more.low(), 1000 * more.high()),
            Cell.decimal(result.effective()));
      }
    }
    return MarkdownWriter.grid(table.build()).strip() + "\n\n";
  }
}
