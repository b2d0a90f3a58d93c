package org.tallywall.experiments.design.sweep;

import java.util.List;
import java.util.Optional;
import org.tallywall.experiments.answer.Measures;
import org.tallywall.experiments.answer.Way;
import org.tallywall.experiments.design.arms.Difference;
import org.tallywall.experiments.stats.Estimate;
import org.tallywall.reports.schema.SweepColumns;
import org.tallywall.reports.table.Cell;
import org.tallywall.reports.table.Row;
import org.tallywall.reports.table.Table;
import org.tallywall.reports.table.TableBuilder;

/**
 * One setting at several values: each value's level and its difference to the one compared with.
 */
final class SweepTable {
  private SweepTable() {}

  static Table of(SweepDesign sweep, List<Way> ways, List<Difference> differences) {
    TableBuilder table =
        Table.builder(
                SweepColumns.FILE, "What the setting " + sweep.setting() + " does, value by value")
            .columns(SweepColumns.all());
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
          new Row()
              .set(SweepColumns.SETTING, sweep.setting())
              .set(SweepColumns.VALUE, way.name())
              .set(SweepColumns.COMPARED_WITH, at == sweep.ways().baseline() ? "yes" : "no")
              .set(SweepColumns.DEALS, way.tally().deals())
              .set(SweepColumns.WIN_RATE, Cell.ratio(way.wins(), games))
              .set(SweepColumns.POINTS, Cell.decimal(points(way, games)))
              .set(SweepColumns.MEASURE, difference.map(one -> one.measure().text()).orElse(""))
              .set(SweepColumns.DIFFERENCE, estimate.map(Measures::cell).orElse(Cell.empty()))
              .set(SweepColumns.METHOD, estimate.map(Measures::method).orElse(Cell.empty())));
    }
    return table.build();
  }

  private static double points(Way way, long games) {
    return way.tally().all().points().sum().value().doubleValue() / games;
  }
}
