package org.tallywall.experiments.answer;

import java.util.List;
import org.tallywall.core.card.Line;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.reports.schema.HandChoiceColumns;
import org.tallywall.reports.table.Row;
import org.tallywall.reports.table.Table;
import org.tallywall.reports.table.TableBuilder;

/** Which lines are aimed at and won with. */
final class HandChoice {
  private HandChoice() {}

  static Table of(ConcreteHands hands, List<Way> ways, Certainty certainty) {
    TableBuilder table =
        Table.builder(HandChoiceColumns.FILE, "Which lines are aimed at and won with")
            .columns(HandChoiceColumns.all());
    for (Way way : ways) {
      for (int at = 0; at < hands.lines(); at++) {
        Line line = hands.line(at);
        Row row =
            new Row()
                .set(HandChoiceColumns.ARM, way.name())
                .set(HandChoiceColumns.LINE, line.id())
                .set(HandChoiceColumns.FAMILY, line.family())
                .set(HandChoiceColumns.NICKNAME, line.say())
                .set(HandChoiceColumns.VALUE, line.value())
                .set(HandChoiceColumns.CONCEALED, line.concealed() ? "yes" : "no")
                .set(HandChoiceColumns.WAYS, hands.ways(at));
        table.row(AimCells.add(way.tally().line(at), way, certainty, row));
      }
    }
    return table.build();
  }
}
