package org.tallywall.experiments.answer;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.experiments.tally.CardFamilies;
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

  static Table of(ConcreteHands hands, List<Way> ways, Certainty certainty) {
    TableBuilder table =
        Table.builder(
                "families",
                "Which families are aimed at and won with; a change within a family is no change")
            .columns(columns());
    for (Way way : ways) {
      CardFamilies families = way.tally().families();
      for (int family = 0; family < families.count(); family++) {
        table.row(row(hands, way, family, certainty));
      }
    }
    return table.build();
  }

  private static List<Cell> row(ConcreteHands hands, Way way, int family, Certainty certainty) {
    CardFamilies families = way.tally().families();
    long lines = 0;
    long ways = 0;
    for (int line = 0; line < hands.lines(); line++) {
      lines += families.of(line) == family ? 1 : 0;
      ways += families.of(line) == family ? hands.ways(line) : 0;
    }
    List<Cell> cells =
        new ArrayList<>(
            List.of(
                Cell.text(way.name()),
                Cell.text(families.name(family)),
                Cell.whole(lines),
                Cell.whole(ways)));
    cells.addAll(AimColumns.cells(way.tally().family(family), way, certainty));
    return cells;
  }
}
