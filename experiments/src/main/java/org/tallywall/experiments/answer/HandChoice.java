package org.tallywall.experiments.answer;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.core.card.Line;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.reports.table.Cell;
import org.tallywall.reports.table.Column;
import org.tallywall.reports.table.Table;
import org.tallywall.reports.table.TableBuilder;

/** Which lines are aimed at and won with. */
final class HandChoice {
  private HandChoice() {}

  private static List<Column> columns() {
    List<Column> columns =
        new ArrayList<>(
            List.of(
                Column.text("arm", "The way of playing; \"table\" for one fixed table."),
                Column.text("line", "The line's id."),
                Column.text("family", "The section of the card."),
                Column.text("nickname", "What the card calls the line."),
                Column.integer("value", "points", "What the line pays."),
                Column.text("concealed", "\"yes\" where nothing may be exposed, else \"no\"."),
                Column.integer("ways", "hands", "Ways to make it.")));
    columns.addAll(AimColumns.columns());
    return columns;
  }

  static Table of(ConcreteHands hands, List<Way> ways, Certainty certainty) {
    TableBuilder table =
        Table.builder("hand-choice", "Which lines are aimed at and won with").columns(columns());
    for (Way way : ways) {
      for (int at = 0; at < hands.lines(); at++) {
        Line line = hands.line(at);
        List<Cell> cells =
            new ArrayList<>(
                List.of(
                    Cell.text(way.name()),
                    Cell.text(line.id()),
                    Cell.text(line.family()),
                    Cell.text(line.say()),
                    Cell.whole(line.value()),
                    Cell.text(line.concealed() ? "yes" : "no"),
                    Cell.whole(hands.ways(at))));
        cells.addAll(AimColumns.cells(way.tally().line(at), way, certainty));
        table.row(cells);
      }
    }
    return table.build();
  }
}
