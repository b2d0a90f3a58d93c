package org.tallywall.experiments.design.branch;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.tallywall.experiments.answer.Certainty;
import org.tallywall.experiments.answer.Effects;
import org.tallywall.experiments.study.Study;
import org.tallywall.experiments.tally.StudyTally;
import org.tallywall.reports.table.Cell;
import org.tallywall.reports.table.Column;
import org.tallywall.reports.table.Table;
import org.tallywall.reports.table.TableBuilder;

/** What each option at a decision did, square by square. */
final class BranchTable {
  private BranchTable() {}

  static Table of(Study study, BranchDesign design, StudyTally tally, Certainty certainty) {
    List<Column> columns = new ArrayList<>();
    for (Map.Entry<Feature, List<Integer>> feature : design.cells().values().entrySet()) {
      columns.add(
          Column.integer(feature.getKey().text(), unit(feature.getKey()), meaning(feature)));
    }
    columns.add(Column.text("option", "What is done at the decision."));
    columns.add(Column.text("compared-with", "The other option, on the same tiles."));
    columns.addAll(Effects.columns("the decision was met in this square"));
    TableBuilder table =
        Table.builder("branch", "Each option of one decision on the same tiles, square by square")
            .columns(columns);
    int others = design.options().size() - 1;
    for (int cell = 0; cell < design.cells().count(); cell++) {
      for (int option = 0; option < others; option++) {
        List<Cell> who = new ArrayList<>();
        design.cells().at(cell).forEach(value -> who.add(Cell.whole(value)));
        who.add(Cell.text(design.options().get(option + 1).text()));
        who.add(Cell.text(design.options().get(0).text()));
        Effects.rows(table, who, tally.firing(cell * others + option), study, certainty);
      }
    }
    return table.build();
  }

  private static String unit(Feature feature) {
    return feature == Feature.EXPOSURES ? "exposures" : "tiles";
  }

  private static String meaning(Map.Entry<Feature, List<Integer>> feature) {
    return switch (feature.getKey()) {
      case EXPOSURES -> "Most exposures on one rack of the other players.";
      case AWAY -> "Tiles away of the studied player's rack.";
      case WALL ->
          "Most tiles left in the wall; the square reaches down to the next smaller one, the last"
              + " to 0.";
    };
  }
}
