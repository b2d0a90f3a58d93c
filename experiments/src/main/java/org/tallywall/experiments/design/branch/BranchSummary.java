package org.tallywall.experiments.design.branch;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tallywall.experiments.answer.Certainty;
import org.tallywall.experiments.answer.Effects;
import org.tallywall.experiments.answer.Extents;
import org.tallywall.experiments.answer.Measures;
import org.tallywall.experiments.answer.StudyAnswer;
import org.tallywall.experiments.answer.Summary;
import org.tallywall.experiments.stats.Estimate;
import org.tallywall.experiments.study.Measure;
import org.tallywall.experiments.tally.FiringTally;
import org.tallywall.reports.table.Cell;
import org.tallywall.reports.table.Column;
import org.tallywall.reports.table.Table;
import org.tallywall.reports.table.TableBuilder;

/** What a person reads when the options of one decision were tried. */
final class BranchSummary {
  private BranchSummary() {}

  static Summary of(StudyAnswer answer, BranchDesign design) {
    List<String> sentences = new ArrayList<>();
    sentences.add(Extents.title(answer));
    sentences.add(
        "What would have happened on these very walls: each option was taken once, at the first"
            + " decision of a game that fits a square; afterwards the player went on as before.");
    sentences.add(Extents.end(answer) + " " + Summary.CAUTION);
    return new Summary(sentences, List.of(table(answer, design)));
  }

  private static Table table(StudyAnswer answer, BranchDesign design) {
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
    int others = design.options().size() - 1;
    for (int cell = 0; cell < design.cells().count(); cell++) {
      for (int option = 0; option < others; option++) {
        FiringTally firing = answer.tally().firing(cell * others + option);
        table.row(row(design, cell, option, firing, answer.certainty()));
      }
    }
    return table.build();
  }

  private static List<Cell> row(
      BranchDesign design, int cell, int option, FiringTally firing, Certainty certainty) {
    List<Cell> cells = new ArrayList<>();
    design.cells().at(cell).forEach(value -> cells.add(Cell.text(String.valueOf(value))));
    cells.add(Cell.text(design.options().get(option + 1).words()));
    cells.add(Cell.text(design.options().get(0).words()));
    cells.add(Cell.whole(firing.reached()));
    Optional<Estimate> effect = Effects.effect(firing, 0, certainty);
    cells.add(effect.map(Measures::hundredfold).orElse(Cell.empty()));
    cells.add(Cell.text(effect.map(BranchSummary::told).orElse("too few")));
    return cells;
  }

  private static String told(Estimate effect) {
    return effect
        .interval()
        .map(i -> i.low() > 0 ? "yes, more" : i.high() < 0 ? "yes, fewer" : "no")
        .orElse("no");
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
