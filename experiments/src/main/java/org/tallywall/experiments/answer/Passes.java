package org.tallywall.experiments.answer;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.core.play.PassStep;
import org.tallywall.core.play.Seats;
import org.tallywall.experiments.tally.PassTally;
import org.tallywall.experiments.tally.TableTally;
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
    columns.add(
        Column.decimal("away-before", "tiles", "Mean tiles away before the pass, all four."));
    columns.add(Column.decimal("away-after", "tiles", "Mean tiles away after the pass, all four."));
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

  static Table of(TableTally tally) {
    TableBuilder table = Table.builder("passes", "The Charleston, pass by pass").columns(columns());
    PassTally passes = tally.passes();
    for (PassStep step : PassStep.values()) {
      table.row(pass(step.text(), step.ordinal(), passes, tally.deals()));
      if (step == PassStep.LEFT_1) {
        table.row(stop(passes, tally.deals()));
      }
    }
    table.row(pass("courtesy", PassTally.COURTESY, passes, tally.deals()));
    return table.build();
  }

  private static List<Cell> stop(PassTally passes, long deals) {
    List<Cell> cells = start("stop", passes.stopAsked(), deals);
    cells.add(Cell.whole(passes.stopped()));
    cells.add(Cell.whole(passes.stoppers()));
    empty(cells, 1 + 3 * PassTally.NUMBERS + 2);
    return cells;
  }

  private static List<Cell> pass(String name, int pass, PassTally passes, long deals) {
    boolean courtesy = pass == PassTally.COURTESY;
    List<Cell> cells = start(name, passes.games(pass), deals);
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
    long racks = Seats.COUNT * passes.games(pass);
    cells.add(Cell.ratio(passes.before(pass), racks));
    cells.add(Cell.ratio(passes.after(pass), racks));
    return cells;
  }

  private static List<Cell> start(String name, long games, long deals) {
    List<Cell> cells = new ArrayList<>();
    cells.add(Cell.text("table"));
    cells.add(Cell.text(name));
    cells.add(Cell.whole(games));
    cells.add(Cell.ratio(games, deals));
    return cells;
  }

  private static void empty(List<Cell> cells, int number) {
    for (int at = 0; at < number; at++) {
      cells.add(Cell.empty());
    }
  }
}
