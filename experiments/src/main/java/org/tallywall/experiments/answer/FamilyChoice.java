package org.tallywall.experiments.answer;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.experiments.tally.CardFamilies;
import org.tallywall.experiments.tally.TableTally;
import org.tallywall.reports.table.Cell;
import org.tallywall.reports.table.Column;
import org.tallywall.reports.table.Table;
import org.tallywall.reports.table.TableBuilder;

/** Which families of the card are aimed at and won with. */
final class FamilyChoice {
  private FamilyChoice() {}

  private static List<Column> columns() {
    List<Column> columns =
        new ArrayList<>(
            List.of(
                Column.text("arm", "The way of playing; \"table\" for one fixed table."),
                Column.text("family", "The section of the card."),
                Column.integer("lines", "lines", "Lines of the family."),
                Column.integer("ways", "hands", "Ways to make them.")));
    columns.addAll(AimColumns.columns());
    return columns;
  }

  static Table of(ConcreteHands hands, TableTally tally, double confidence) {
    TableBuilder table =
        Table.builder(
                "families",
                "Which families are aimed at and won with; a change within a family is no change")
            .columns(columns());
    CardFamilies families = tally.families();
    long wins = tally.all().wins().sum().value().longValueExact();
    for (int family = 0; family < families.count(); family++) {
      long lines = 0;
      long ways = 0;
      for (int line = 0; line < hands.lines(); line++) {
        lines += families.of(line) == family ? 1 : 0;
        ways += families.of(line) == family ? hands.ways(line) : 0;
      }
      List<Cell> cells =
          new ArrayList<>(
              List.of(
                  Cell.text("table"),
                  Cell.text(families.name(family)),
                  Cell.whole(lines),
                  Cell.whole(ways)));
      cells.addAll(AimColumns.cells(tally.family(family), tally.deals(), wins, confidence));
      table.row(cells);
    }
    return table.build();
  }
}
