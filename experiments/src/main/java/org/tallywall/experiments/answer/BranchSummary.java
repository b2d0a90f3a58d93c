package org.tallywall.experiments.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tallywall.experiments.stats.Estimate;
import org.tallywall.experiments.stats.Interval;
import org.tallywall.experiments.study.Design;
import org.tallywall.experiments.study.Feature;
import org.tallywall.experiments.study.Measure;
import org.tallywall.reports.table.Cell;
import org.tallywall.reports.table.Column;
import org.tallywall.reports.table.Table;
import org.tallywall.reports.table.TableBuilder;

/** What a person reads when the options of one decision were tried. */
final class BranchSummary {
  private BranchSummary() {}

  static Summary of(StudyAnswer answer, Design.Branch design) {
    List<String> sentences = new ArrayList<>();
    sentences.add(Extents.title(answer));
    sentences.add(
        "What would have happened on these very walls: each option was taken once, at the first"
            + " decision of a game that fits a square; afterwards the player went on as before. All"
            + " squares are counted together (Holm) before one is called clear.");
    sentences.add(Extents.end(answer) + " " + Summary.CAUTION);
    return new Summary(sentences, List.of(table(answer, design)));
  }

  private static Table table(StudyAnswer answer, Design.Branch design) {
    Measure primary = answer.study().question().measures().get(0);
    List<Column> columns = new ArrayList<>();
    for (Feature feature : design.cells().values().keySet()) {
      columns.add(Column.text(feature.text(), "The square.").headed(words(feature)));
    }
    columns.add(Column.text("option", "What is done."));
    columns.add(Column.text("other", "What it is compared with.").headed("instead of"));
    columns.add(Column.integer("deals", "deals", "Deals with such a decision."));
    columns.add(
        Column.decimalInterval("gap", "in 100 games", "The difference in 100 games.")
            .headed("more or fewer " + words(primary)));
    columns.add(Column.text("told", "Whether it can be told.").headed("clear?"));
    TableBuilder table =
        Table.builder("squares", "The options on the same tiles, square by square")
            .columns(columns);
    for (BranchRow row :
        BranchTable.rows(answer.study(), design, answer.tally(), answer.certainty())) {
      if (row.primary()) {
        table.row(row(design, row, answer.certainty()));
      }
    }
    return table.build();
  }

  private static List<Cell> row(Design.Branch design, BranchRow row, Certainty certainty) {
    List<Cell> cells = new ArrayList<>();
    design.cells().at(row.square()).forEach(value -> cells.add(Cell.text(String.valueOf(value))));
    cells.add(Cell.text(design.options().get(0).words()));
    cells.add(Cell.text(design.options().get(row.option() + 1).words()));
    cells.add(Cell.whole(row.firing().reached()));
    Optional<Estimate> effect = row.effect().map(Effect::estimate).map(BranchSummary::negated);
    cells.add(effect.map(Measures::hundredfold).orElse(Cell.empty()));
    cells.add(Cell.text(effect.isPresent() ? told(row, certainty) : "too few"));
    return cells;
  }

  private static String told(BranchRow row, Certainty certainty) {
    return switch (row.clearSign(certainty.confidence())) {
      case -1 -> "yes, more";
      case 1 -> "yes, fewer";
      default -> "no";
    };
  }

  /** Readers are told the first option less the other, as on the map. */
  private static Estimate negated(Estimate estimate) {
    return new Estimate(
        0 - estimate.value(),
        estimate.interval().map(i -> new Interval(0 - i.high(), 0 - i.low())),
        estimate.method());
  }

  private static String words(Measure measure) {
    return measure == Measure.POINTS ? "points in 100 games" : "in 100 games: " + measure.words();
  }

  private static String words(Feature feature) {
    return switch (feature) {
      case EXPOSURES -> "exposures on one rack";
      case AWAY -> "tiles away";
      case WALL -> "wall, at most";
    };
  }
}
