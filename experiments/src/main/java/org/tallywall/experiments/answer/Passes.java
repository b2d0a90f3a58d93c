package org.tallywall.experiments.answer;

import java.util.List;
import java.util.function.IntToLongFunction;
import org.tallywall.core.play.PassStep;
import org.tallywall.experiments.tally.PassTally;
import org.tallywall.reports.schema.PassColumns;
import org.tallywall.reports.table.Cell;
import org.tallywall.reports.table.Column;
import org.tallywall.reports.table.Row;
import org.tallywall.reports.table.Table;
import org.tallywall.reports.table.TableBuilder;

/** The Charleston, pass by pass; the stop question is a row of its own. */
final class Passes {
  private Passes() {}

  static Table of(List<Way> ways) {
    TableBuilder table =
        Table.builder(PassColumns.FILE, "The Charleston, pass by pass").columns(PassColumns.all());
    for (Way way : ways) {
      for (PassStep step : PassStep.values()) {
        table.row(pass(way, step));
        if (step == PassStep.LEFT_1) {
          table.row(stop(way));
        }
      }
      table.row(courtesy(way));
    }
    return table.build();
  }

  private static Row stop(Way way) {
    PassTally passes = way.tally().passes();
    return start(way, "stop", passes.stopAsked())
        .set(PassColumns.STOPPED, passes.stopped())
        .set(PassColumns.STOPPERS, passes.stoppers());
  }

  private static Row pass(Way way, PassStep step) {
    PassTally passes = way.tally().passes();
    int pass = step.ordinal();
    Row row = start(way, step.text(), passes.games(pass)).set(PassColumns.VOID, passes.voids(pass));
    numbers(row, PassColumns.blind(), number -> passes.blind(pass, number));
    return away(row, passes, pass);
  }

  private static Row courtesy(Way way) {
    PassTally passes = way.tally().passes();
    Row row = start(way, "courtesy", passes.games(PassTally.COURTESY));
    numbers(row, PassColumns.asked(), passes::asked);
    numbers(row, PassColumns.gave(), passes::gave);
    return away(row, passes, PassTally.COURTESY);
  }

  private static void numbers(Row row, List<Column> columns, IntToLongFunction players) {
    for (int number = 0; number < PassTally.NUMBERS; number++) {
      row.set(columns.get(number), players.applyAsLong(number));
    }
  }

  private static Row away(Row row, PassTally passes, int pass) {
    return row.set(PassColumns.AWAY_BEFORE, Cell.ratio(passes.before(pass), passes.racks(pass)))
        .set(PassColumns.AWAY_AFTER, Cell.ratio(passes.after(pass), passes.racks(pass)));
  }

  private static Row start(Way way, String name, long games) {
    return new Row()
        .set(PassColumns.ARM, way.name())
        .set(PassColumns.STEP, name)
        .set(PassColumns.GAMES, games)
        .set(PassColumns.SHARE_OF_GAMES, Cell.ratio(games, way.tally().games()));
  }
}
