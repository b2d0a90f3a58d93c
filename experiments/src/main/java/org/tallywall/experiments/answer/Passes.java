package org.tallywall.experiments.answer;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.core.play.PassStep;
import org.tallywall.experiments.tally.PassTally;
import org.tallywall.reports.table.Cell;
import org.tallywall.reports.table.Column;
import org.tallywall.reports.table.Table;
import org.tallywall.reports.table.TableBuilder;

/** The Charleston, pass by pass; the stop question is a row of its own. */
final class Passes {
  private static final String PLAYERS = "players";

  private Passes() {}

  private static List<Column> columns() {
    List<Column> columns =
        new ArrayList<>(
            List.of(
                Column.text("arm", "The way of playing; \"table\" for one fixed table."),
                Column.text(
                    "step", "The pass; \"stop\" for the question, \"courtesy\" for the last."),
                Column.integer("games", "games", "Games in which it was made, or asked."),
                Column.rate("share-of-games", "share of games", "The same as a share."),
                Column.integer("stopped", "games", "Games in which the second round was stopped."),
                Column.integer("stoppers", PLAYERS, "Players that said stop."),
                Column.integer(
                    "void", "games", "Games in which all four passed everything blind.")));
    numbers(columns, "blind", "passed", "blind");
    numbers(columns, "asked", "asked for", "in the courtesy pass");
    numbers(columns, "gave", "gave", "in the courtesy pass");
    columns.add(Column.decimal("away-before", "tiles", "Mean tiles away before the pass."));
    columns.add(Column.decimal("away-after", "tiles", "Mean tiles away after the pass."));
    return columns;
  }

  private static void numbers(List<Column> columns, String name, String verb, String where) {
    for (int number = 0; number < PassTally.NUMBERS; number++) {
      String tiles = number == 1 ? "1 tile" : number + " tiles";
      columns.add(
          Column.integer(
              name + "-" + number,
              PLAYERS,
              "Players that " + verb + " " + tiles + " " + where + "."));
    }
  }

  static Table of(List<Way> ways) {
    TableBuilder table = Table.builder("passes", "The Charleston, pass by pass").columns(columns());
    for (Way way : ways) {
      for (PassStep step : PassStep.values()) {
        table.row(pass(way, step.text(), step.ordinal()));
        if (step == PassStep.LEFT_1) {
          table.row(stop(way));
        }
      }
      table.row(pass(way, "courtesy", PassTally.COURTESY));
    }
    return table.build();
  }

  private static List<Cell> stop(Way way) {
    PassTally passes = way.tally().passes();
    List<Cell> cells = start(way, "stop", passes.stopAsked());
    cells.add(Cell.whole(passes.stopped()));
    cells.add(Cell.whole(passes.stoppers()));
    empty(cells, 1 + 3 * PassTally.NUMBERS + 2);
    return cells;
  }

  private static List<Cell> pass(Way way, String name, int pass) {
    PassTally passes = way.tally().passes();
    boolean courtesy = pass == PassTally.COURTESY;
    List<Cell> cells = start(way, name, passes.games(pass));
    empty(cells, 2);
    cells.add(courtesy ? Cell.empty() : Cell.whole(passes.voids(pass)));
    for (int number = 0; number < PassTally.NUMBERS; number++) {
      cells.add(courtesy ? Cell.empty() : Cell.whole(passes.blind(pass, number)));
    }
    for (int number = 0; number < PassTally.NUMBERS; number++) {
      cells.add(courtesy ? Cell.whole(passes.asked(number)) : Cell.empty());
    }
    for (int number = 0; number < PassTally.NUMBERS; number++) {
      cells.add(courtesy ? Cell.whole(passes.gave(number)) : Cell.empty());
    }
    cells.add(Cell.ratio(passes.before(pass), passes.racks(pass)));
    cells.add(Cell.ratio(passes.after(pass), passes.racks(pass)));
    return cells;
  }

  private static List<Cell> start(Way way, String name, long games) {
    List<Cell> cells = new ArrayList<>();
    cells.add(Cell.text(way.name()));
    cells.add(Cell.text(name));
    cells.add(Cell.whole(games));
    cells.add(Cell.ratio(games, way.tally().games()));
    return cells;
  }

  private static void empty(List<Cell> cells, int number) {
    for (int at = 0; at < number; at++) {
      cells.add(Cell.empty());
    }
  }
}
