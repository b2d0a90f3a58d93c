package org.tallywall.experiments.school;

import java.util.List;
import java.util.Optional;
import org.tallywall.experiments.stats.Interval;
import org.tallywall.reports.table.Cell;
import org.tallywall.reports.table.Column;
import org.tallywall.reports.table.Table;
import org.tallywall.reports.table.TableBuilder;

/** What was found as tables, for files, a console and paper. */
public final class SchoolTable {
  private static final int PLACES = 2;

  private SchoolTable() {}

  /**
   * Points lost by kind of decision.
   *
   * @param result the result
   * @return a row for every kind, in the order of a game, and one for all
   */
  public static Table kinds(SchoolResult result) {
    TableBuilder table =
        Table.builder("kinds", "Points lost, by kind of decision")
            .columns(
                Column.text("kind", "The kind of decision.").headed("decision"),
                Column.decimal(
                        "per-game", "decisions per game", "Such decisions of one player in a game.")
                    .headed("in a game")
                    .shownTo(PLACES),
                Column.integer("looked", "decisions", "How many were looked at.")
                    .headed("looked at"),
                Column.integer(
                        "ahead", "decisions", "In how many of these another choice was ahead.")
                    .headed("other choice ahead"),
                Column.decimalInterval(
                        "lost", "points per decision", "What such a decision loses on average.")
                    .headed("points lost by one"),
                Column.decimalInterval(
                        "lost-per-game",
                        "points per game",
                        "What all such decisions of one player lose in a game.")
                    .headed("points lost in a game"));
    for (KindResult one : result.kinds()) {
      table.row(
          Cell.text(one.kind().words()),
          Cell.decimal(one.perGame()),
          Cell.whole(one.looked()),
          Cell.whole(one.ahead()),
          cell(one.lost(), one.lostRange()),
          cell(one.lostPerGame(), one.lostPerGameRange()));
    }
    table.row(
        Cell.text("all"),
        Cell.decimal(result.kinds().stream().mapToDouble(KindResult::perGame).sum()),
        Cell.whole(result.kinds().stream().mapToLong(KindResult::looked).sum()),
        Cell.whole(result.kinds().stream().mapToLong(KindResult::ahead).sum()),
        Cell.empty(),
        cell(result.lostPerGame(), result.lostPerGameRange()));
    return table.build();
  }

  private static Cell cell(double value, Optional<Interval> range) {
    return range
        .<Cell>map(at -> Cell.interval(value, at.low(), at.high()))
        .orElseGet(() -> Cell.decimal(value));
  }

  /**
   * The dearest decisions.
   *
   * @param result the result
   * @param names what the sheet of each is called, in their order
   * @return a row for each
   */
  public static Table dearest(SchoolResult result, List<String> names) {
    TableBuilder table =
        Table.builder("dearest", "The dearest decisions")
            .columns(
                Column.text("sheet", "The file of the position."),
                Column.text("kind", "The kind of decision.").headed("decision"),
                Column.text("moment", "The question, as a sheet writes it.").headed("asked"),
                Column.text("made", "The choice made."),
                Column.text("other", "The choice that was ahead.").headed("ahead of it"),
                Column.decimal("seemed", "points", "What it seemed to lose when that was found.")
                    .headed("seemed to lose")
                    .shownTo(1),
                Column.decimalInterval("lost", "points", "What it lost in fresh games.")
                    .headed("points lost"));
    for (int at = 0; at < result.dearest().size(); at++) {
      Judged one = result.dearest().get(at);
      table.row(
          Cell.text(names.get(at)),
          Cell.text(one.kind().words()),
          Cell.text(one.moment()),
          Cell.text(one.made()),
          Cell.text(one.other()),
          Cell.decimal(one.first().mean()),
          cell(one.second().mean(), one.second().range()));
    }
    return table.build();
  }
}
