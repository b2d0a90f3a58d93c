package org.tallywall.experiments.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tallywall.experiments.run.Habits;
import org.tallywall.experiments.study.Design;
import org.tallywall.experiments.study.Measure;
import org.tallywall.experiments.study.Study;
import org.tallywall.experiments.tally.FiringTally;
import org.tallywall.experiments.tally.StudyTally;
import org.tallywall.reports.table.Cell;
import org.tallywall.reports.table.Column;
import org.tallywall.reports.table.Table;
import org.tallywall.reports.table.TableBuilder;

/**
 * What a habit, or an option at a decision, does where it comes into play, and there alone: the
 * ratio of the summed differences to the games concerned, its standard error made linear over
 * deals.
 */
final class Effects {
  /** With fewer deals than this an interval by the normal curve would be a guess. */
  static final int FEW = 30;

  private static final String TOO_FEW = "too few";
  private static final String GAMES = "games";

  private Effects() {}

  static Table defence(Study study, Design.Arms design, StudyTally tally, Certainty certainty) {
    List<Column> columns =
        new ArrayList<>(
            List.of(
                Column.text("arm", "The way of playing."),
                Column.text("baseline", "The way that it is compared with."),
                Column.text(
                    "step",
                    "\"played-differently\" for games that went another way than the same game of"
                        + " the way compared with; else the step of the defence that the studied"
                        + " player came to.")));
    columns.addAll(common("the step came into play"));
    TableBuilder table =
        Table.builder(
                "defence", "How often each step of the defence came into play, and what it did")
            .columns(columns);
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

  static List<Column> common(String when) {
    return List.of(
        Column.integer("seat-games", GAMES, "Games of the studied player, whatever happened."),
        Column.integer(GAMES, GAMES, "Games in which " + when + "."),
        Column.integer("deals-reached", "deals", "Deals with such a game."),
        Column.decimal("mean-wall", "tiles", "Mean number of tiles left in the wall then."),
        Column.text("measure", "What is measured."),
        Column.text("unit", "\"share of games\", or \"per game\"."),
        Column.decimalInterval(
            "difference",
            "as in unit",
            "Mean gap to the same games without it, in these games alone."),
        Column.text(
            "method",
            "How the interval was computed; \"too few\" where fewer than "
                + FEW
                + " deals have such a game, \"no spread\" where all came to the same."));
  }

  private static void rows(
      TableBuilder table, List<Cell> who, FiringTally firing, Study study, Certainty certainty) {
    List<Measure> measures = study.question().measures();
    for (int at = 0; at < measures.size(); at++) {
      if (at > 0 && !study.question().secondary().contains(measures.get(at))) {
        continue;
      }
      List<Cell> cells = new ArrayList<>(who);
      cells.addAll(
          cells(firing, measures.get(at), effect(firing, at, measures.get(at), certainty)));
      table.row(cells);
    }
  }

  /** The cells of the columns that all tables of effects have. */
  static List<Cell> cells(FiringTally firing, Measure measure, Optional<Effect> effect) {
    return List.of(
        Cell.whole(firing.seatGames()),
        Cell.whole(firing.games()),
        Cell.whole(firing.reached()),
        Cell.ratio(firing.wall(), firing.games()),
        Cell.text(measure.text()),
        Cell.text(Differences.unit(measure)),
        effect.map(Effect::estimate).map(Measures::cell).orElse(Cell.empty()),
        effect.map(Effect::method).orElse(Cell.text(TOO_FEW)));
  }

  /** The effect where it came into play; empty where that is too rare to say. */
  static Optional<Effect> effect(FiringTally firing, int at, Measure measure, Certainty certainty) {
    return firing.reached() < FEW
        ? Optional.empty()
        : Optional.of(Effect.of(firing, at, measure, certainty));
  }
}
