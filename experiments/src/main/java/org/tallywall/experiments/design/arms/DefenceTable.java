package org.tallywall.experiments.design.arms;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tallywall.experiments.answer.Certainty;
import org.tallywall.experiments.answer.Effects;
import org.tallywall.experiments.answer.Measures;
import org.tallywall.experiments.stats.Estimate;
import org.tallywall.experiments.study.Measure;
import org.tallywall.experiments.study.Study;
import org.tallywall.experiments.tally.FiringTally;
import org.tallywall.experiments.tally.StudyTally;
import org.tallywall.reports.table.Cell;
import org.tallywall.reports.table.Column;
import org.tallywall.reports.table.Table;
import org.tallywall.reports.table.TableBuilder;

/**
 * How often a way of playing came to each step of its defence, and what it gained or lost in the
 * games in which it did so before they went another way than those that it is compared with.
 */
public final class DefenceTable {
  private static final String GAMES = "games";

  private DefenceTable() {}

  private static List<Column> columns() {
    return List.of(
        Column.text("arm", "The way of playing."),
        Column.text("baseline", "The way that it is compared with."),
        Column.text(
            "step",
            "\"played-differently\" for games that went another way than the same game of the way"
                + " compared with; else the step of the defence in which the studied player chose a"
                + " discard."),
        Column.integer("seat-games", GAMES, "Games of the studied player, whatever happened."),
        Column.integer(GAMES, GAMES, "Games in which it came to this."),
        Column.decimal("mean-wall", "tiles", "Mean number of tiles left in the wall then."),
        Column.integer(
            "games-compared",
            GAMES,
            "Games over which the difference is taken. For a step: those in which it came to this"
                + " before the two games differed, or at the discard at which they did; later it"
                + " depends on the luck of the one game alone. For \"played-differently\": all."),
        Column.integer("deals-compared", "deals", "Deals with such a game."),
        Column.text("measure", "What is measured."),
        Column.text("unit", "\"share of games\", or \"per game\"."),
        Column.decimalInterval(
            "difference",
            "as in unit",
            "Mean gap to the same games of the way compared with, over the games compared alone."),
        Column.text(
            "method",
            "How the interval was computed; \"too few\" where fewer than "
                + Effects.FEW
                + " deals have such a game."));
  }

  /**
   * The table.
   *
   * @param study the study
   * @param design its ways of playing
   * @param tally what was counted
   * @param certainty how sure ranges are
   * @return a row for each way, step and declared measure
   */
  public static Table of(Study study, ArmsDesign design, StudyTally tally, Certainty certainty) {
    TableBuilder table =
        Table.builder(
                "defence",
                "How often each step of the defence came into play, and what was gained or lost"
                    + " where it came before the two games differed")
            .columns(columns());
    List<String> names = Habits.names();
    int pair = 0;
    for (int arm = 0; arm < design.arms().size(); arm++) {
      if (arm == design.baseline()) {
        continue;
      }
      for (int habit = 0; habit < names.size(); habit++) {
        List<Cell> who =
            List.of(
                Cell.text(design.arms().get(arm).name()),
                Cell.text(design.arms().get(design.baseline()).name()),
                Cell.text(names.get(habit)));
        rows(table, who, tally.firing(pair * names.size() + habit), study, certainty);
      }
      pair++;
    }
    return table.build();
  }

  private static void rows(
      TableBuilder table, List<Cell> who, FiringTally firing, Study study, Certainty certainty) {
    List<Measure> measures = study.question().measures();
    for (int at = 0; at < measures.size(); at++) {
      if (at > 0 && !study.question().secondary().contains(measures.get(at))) {
        continue;
      }
      Optional<Estimate> effect = Effects.effect(firing, at, certainty);
      List<Cell> cells = new ArrayList<>(who);
      cells.add(Cell.whole(firing.seatGames()));
      cells.add(Cell.whole(firing.games()));
      cells.add(Cell.ratio(firing.wall(), firing.games()));
      cells.add(Cell.whole(firing.compared()));
      cells.add(Cell.whole(firing.reached()));
      cells.add(Cell.text(measures.get(at).text()));
      cells.add(Cell.text(Measures.unit(measures.get(at))));
      cells.add(effect.map(Measures::cell).orElse(Cell.empty()));
      cells.add(effect.map(Measures::method).orElse(Cell.text(Effects.TOO_FEW)));
      table.row(cells);
    }
  }
}
