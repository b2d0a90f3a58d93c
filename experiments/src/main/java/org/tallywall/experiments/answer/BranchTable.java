package org.tallywall.experiments.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.tallywall.experiments.stats.Corrections;
import org.tallywall.experiments.study.Design;
import org.tallywall.experiments.study.Feature;
import org.tallywall.experiments.study.Measure;
import org.tallywall.experiments.study.Study;
import org.tallywall.experiments.tally.FiringTally;
import org.tallywall.experiments.tally.StudyTally;
import org.tallywall.reports.table.Cell;
import org.tallywall.reports.table.Column;
import org.tallywall.reports.table.Table;
import org.tallywall.reports.table.TableBuilder;

/**
 * Each option of one decision beside the first, square by square. The more squares there are, the
 * more of them look clear by luck; so all squares and options of the measure asked about are
 * counted together (Holm), and all of the other declared measures once more.
 */
final class BranchTable {
  private final Study study;
  private final Design.Branch design;
  private final List<BranchRow> rows;

  private BranchTable(Study study, Design.Branch design, List<BranchRow> rows) {
    this.study = study;
    this.design = design;
    this.rows = rows;
  }

  static Table of(Study study, Design.Branch design, StudyTally tally, Certainty certainty) {
    return new BranchTable(study, design, rows(study, design, tally, certainty)).table();
  }

  /** All rows, square by square, then option by option, then measure by measure. */
  static List<BranchRow> rows(
      Study study, Design.Branch design, StudyTally tally, Certainty certainty) {
    List<BranchRow> rows = new ArrayList<>();
    List<Measure> measures = study.question().measures();
    int others = design.options().size() - 1;
    for (int place = 0; place < design.cells().count() * others; place++) {
      FiringTally firing = tally.firing(place);
      for (int at = 0; at < measures.size(); at++) {
        Measure measure = measures.get(at);
        if (at == 0 || study.question().secondary().contains(measure)) {
          Optional<Effect> effect = Effects.effect(firing, at, measure, certainty);
          rows.add(
              new BranchRow(
                  place / others,
                  place % others,
                  at == 0,
                  measure,
                  firing,
                  effect,
                  OptionalDouble.empty()));
        }
      }
    }
    return adjusted(adjusted(rows, true), false);
  }

  private static List<BranchRow> adjusted(List<BranchRow> rows, boolean primary) {
    double[] holm =
        Corrections.holm(
            rows.stream()
                .filter(row -> row.primary() == primary && row.p().isPresent())
                .mapToDouble(row -> row.p().getAsDouble())
                .toArray());
    List<BranchRow> adjusted = new ArrayList<>();
    int at = 0;
    for (BranchRow row : rows) {
      boolean mine = row.primary() == primary && row.p().isPresent();
      adjusted.add(mine ? row.withHolm(holm[at++]) : row);
    }
    return adjusted;
  }

  private Table table() {
    List<Column> columns = new ArrayList<>();
    for (Map.Entry<Feature, List<Integer>> feature : design.cells().values().entrySet()) {
      columns.add(
          Column.integer(
              feature.getKey().text(), unit(feature.getKey()), meaning(feature.getKey())));
    }
    columns.add(Column.text("option", "What is done at the decision" + options()));
    columns.add(Column.text("compared-with", "The other option, on the same tiles."));
    columns.addAll(Effects.common("the decision was met in this square"));
    columns.add(Column.decimal("p", "chance", "Chance of so large a difference by luck alone."));
    columns.add(
        Column.decimal(
            "p-holm",
            "chance",
            "The same by Holm: for all squares and options of the primary measure taken together,"
                + " and for those of all the other measures."));
    TableBuilder table =
        Table.builder("branch", "Each option of one decision on the same tiles, square by square")
            .columns(columns);
    rows.forEach(row -> table.row(cells(row)));
    return table.build();
  }

  private String options() {
    return switch (design.moment()) {
      case DISCARD -> ".";
      case CLAIM ->
          "; \"claim\" is the claim that brings the hand nearest, with the fewest jokers. Where no"
              + " claim brings it nearer, there is no decision.";
    };
  }

  private List<Cell> cells(BranchRow row) {
    List<Cell> cells = new ArrayList<>();
    design.cells().at(row.square()).forEach(value -> cells.add(Cell.whole(value)));
    cells.add(Cell.text(design.options().get(row.option() + 1).text()));
    cells.add(Cell.text(design.options().get(0).text()));
    cells.addAll(Effects.cells(row.firing(), row.measure(), row.effect()));
    cells.add(Cell.decimal(row.p()));
    cells.add(Cell.decimal(row.holm()));
    return cells;
  }

  private static String unit(Feature feature) {
    return feature == Feature.EXPOSURES ? "exposures" : "tiles";
  }

  private static String meaning(Feature feature) {
    return switch (feature) {
      case EXPOSURES -> "Most exposures on one rack of the other players.";
      case AWAY -> "Tiles away of the studied player's rack.";
      case WALL ->
          "Most tiles left in the wall; the square reaches down to the next smaller one, the last"
              + " to 0.";
    };
  }
}
