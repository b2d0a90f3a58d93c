package org.tallywall.experiments.answer;

import java.util.List;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.experiments.tally.CardFamilies;
import org.tallywall.reports.schema.FamilyColumns;
import org.tallywall.reports.table.Row;
import org.tallywall.reports.table.Table;
import org.tallywall.reports.table.TableBuilder;

/** Which families of the card are aimed at and won with. */
final class FamilyChoice {
  private FamilyChoice() {}

  static Table of(ConcreteHands hands, List<Way> ways, Certainty certainty) {
    TableBuilder table =
        Table.builder(
                FamilyColumns.FILE,
                "Which families are aimed at and won with; a change within a family is no change")
            .columns(FamilyColumns.all());
    for (Way way : ways) {
      CardFamilies families = way.tally().families();
      for (int family = 0; family < families.count(); family++) {
        Row row = row(hands, way, family);
        table.row(AimCells.add(way.tally().family(family), way, certainty, row));
      }
    }
    return table.build();
  }

  private static Row row(ConcreteHands hands, Way way, int family) {
    CardFamilies families = way.tally().families();
    long lines = 0;
    long ways = 0;
    for (int line = 0; line < hands.lines(); line++) {
      lines += families.of(line) == family ? 1 : 0;
      ways += families.of(line) == family ? hands.ways(line) : 0;
    }
    return new Row()
        .set(FamilyColumns.ARM, way.name())
        .set(FamilyColumns.FAMILY, families.name(family))
        .set(FamilyColumns.LINES, lines)
        .set(FamilyColumns.WAYS, ways);
  }
}
