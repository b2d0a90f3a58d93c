package org.tallywall.experiments.design.branch;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.tallywall.experiments.answer.Certainty;
import org.tallywall.experiments.answer.Effect;
import org.tallywall.experiments.answer.Effects;
import org.tallywall.experiments.answer.Measures;
import org.tallywall.experiments.stats.Corrections;
import org.tallywall.experiments.study.Measure;
import org.tallywall.experiments.study.Study;
import org.tallywall.experiments.tally.FiringTally;
import org.tallywall.experiments.tally.StudyTally;
import org.tallywall.reports.schema.BranchColumns;
import org.tallywall.reports.table.Cell;
import org.tallywall.reports.table.Column;
import org.tallywall.reports.table.Row;
import org.tallywall.reports.table.Table;
import org.tallywall.reports.table.TableBuilder;

/**
 * Each option of one decision beside the first, square by square. The more squares there are, the
 * more of them look clear by luck; so all squares and options of the measure asked about are
 * counted together (Holm), and all of the other declared measures once more.
 */
final class BranchTable {
  private final Study study;
  private final BranchDesign design;
  private final List<BranchRow> rows;

  private BranchTable(Study study, BranchDesign design, List<BranchRow> rows) {
    this.study = study;
    this.design = design;
    this.rows = rows;
  }

  static Table of(Study study, BranchDesign design, StudyTally tally, Certainty certainty) {
    return new BranchTable(study, design, rows(study, design, tally, certainty)).table();
  }

  /** All rows, square by square, then option by option, then measure by measure. */
  static List<BranchRow> rows(
      Study study, BranchDesign design, StudyTally tally, Certainty certainty) {
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
    design.cells().values().keySet().forEach(feature -> columns.add(column(feature)));
    columns.addAll(BranchColumns.all());
    TableBuilder table =
        Table.builder(
                BranchColumns.FILE,
                "Each option of one decision on the same tiles, situation by situation")
            .columns(columns);
    rows.forEach(row -> table.row(row(row)));
    return table.build();
  }

  private Row row(BranchRow one) {
    Row row = new Row();
    List<Integer> place = design.cells().at(one.square());
    int at = 0;
    for (Feature feature : design.cells().values().keySet()) {
      row.set(column(feature), place.get(at++));
    }
    FiringTally firing = one.firing();
    row.set(BranchColumns.OPTION, design.options().get(one.option() + 1).name())
        .set(BranchColumns.COMPARED_WITH, design.options().get(0).name())
        .set(BranchColumns.SEAT_GAMES, firing.seatGames())
        .set(BranchColumns.GAMES, firing.games())
        .set(BranchColumns.DEALS_REACHED, firing.reached())
        .set(BranchColumns.MEAN_WALL, Cell.ratio(firing.wall(), firing.games()))
        .set(BranchColumns.MEASURE, one.measure().text())
        .set(BranchColumns.UNIT, Measures.unit(one.measure()));
    Effects.set(row, BranchColumns.DIFFERENCE, BranchColumns.METHOD, one.effect());
    return row.set(BranchColumns.P, one.p()).set(BranchColumns.P_HOLM, one.holm());
  }

  private static Column column(Feature feature) {
    return switch (feature) {
      case EXPOSURES -> BranchColumns.EXPOSURES_ON_ONE_RACK;
      case AWAY -> BranchColumns.AWAY;
      case WALL -> BranchColumns.WALL;
      case PASS -> BranchColumns.PASS;
      case PAIRS -> BranchColumns.PAIRS;
      case JOKERS -> BranchColumns.JOKERS;
    };
  }
}
