package org.tallywall.experiments.design.sweep;

import java.util.List;
import java.util.Optional;
import org.tallywall.experiments.answer.Measures;
import org.tallywall.experiments.answer.Way;
import org.tallywall.experiments.design.arms.Difference;
import org.tallywall.experiments.stats.Estimate;
import org.tallywall.reports.table.Cell;
import org.tallywall.reports.table.Column;
import org.tallywall.reports.table.Table;
import org.tallywall.reports.table.TableBuilder;

/**
 * One setting at several values: each value's level and its difference to the one compared with.
 */
final class SweepTable {
  private SweepTable() {}

  static Table of(SweepDesign sweep, List<Way> ways, List<Difference> differences) {
    TableBuilder table =
        Table.builder("sweep", "What the setting " + sweep.setting() + " does, value by value")
            .columns(
                Column.text("setting", "The setting."),
                Column.text("value", "Its value."),
                Column.text(
                    "compared-with", "\"yes\" for the value that the others are compared with."),
                Column.integer("deals", "deals", "Deals played."),
                Column.rate("win-rate", "share of games", "Games won."),
                Column.decimal("points", "points per game", "Points a game."),
                Column.text("measure", "The primary measure."),
                Column.decimalInterval(
                    "difference",
                    "points a game or share of games",
                    "Difference of the primary measure on the same deals; empty for the value"
                        + " compared with."),
                Column.text("method", "How the interval was computed."));
    for (int at = 0; at < ways.size(); at++) {
      Way way = ways.get(at);
      Optional<Difference> difference =
          differences.stream()
              .filter(one -> one.arm().equals(way.name()))
              .filter(one -> one.role() == Difference.Role.PRIMARY)
              .findFirst();
      Optional<Estimate> estimate = difference.map(Difference::estimate);
      long games = way.seatGames();
      table.row(
          Cell.text(sweep.setting()),
          Cell.text(way.name()),
          Cell.text(at == sweep.ways().baseline() ? "yes" : "no"),
          Cell.whole(way.tally().deals()),
          Cell.ratio(way.wins(), games),
          Cell.decimal(way.tally().all().points().sum().value().doubleValue() / games),
          difference.map(one -> Cell.text(one.measure().text())).orElse(Cell.empty()),
          estimate.map(Measures::cell).orElse(Cell.empty()),
          estimate.map(Measures::method).orElse(Cell.empty()));
    }
    return table.build();
  }
}
