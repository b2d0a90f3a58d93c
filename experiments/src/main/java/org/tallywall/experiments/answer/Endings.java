package org.tallywall.experiments.answer;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.tallywall.experiments.tally.EndTally;
import org.tallywall.experiments.tally.EndTally.End;
import org.tallywall.reports.schema.EndingColumns;
import org.tallywall.reports.table.Column;
import org.tallywall.reports.table.Row;
import org.tallywall.reports.table.Table;
import org.tallywall.reports.table.TableBuilder;

/** How games ended, by the number of tiles left in the wall. */
final class Endings {
  private static final Map<End, Column> COLUMNS =
      new EnumMap<>(
          Map.of(
              End.DRAW, EndingColumns.WON_BY_DRAW,
              End.EXCHANGE, EndingColumns.WON_BY_EXCHANGE,
              End.DISCARD, EndingColumns.WON_ON_DISCARD,
              End.DEAL, EndingColumns.WON_BEFORE_PLAY,
              End.WALL_GAME, EndingColumns.WALL_GAMES,
              End.VOID, EndingColumns.VOID_GAMES));

  private Endings() {}

  static Table of(List<Way> ways) {
    TableBuilder table =
        Table.builder(
                EndingColumns.FILE, "How games ended, by the number of tiles left in the wall")
            .columns(EndingColumns.all());
    for (Way way : ways) {
      for (int wall = way.tally().ends().most(); wall >= 0; wall--) {
        table.row(row(way, wall));
      }
    }
    return table.build();
  }

  private static Row row(Way way, int wall) {
    EndTally ends = way.tally().ends();
    Row row = new Row().set(EndingColumns.ARM, way.name()).set(EndingColumns.WALL, wall);
    long games = 0;
    for (End end : End.values()) {
      games += ends.games(end, wall);
      row.set(COLUMNS.get(end), ends.games(end, wall));
    }
    return row.set(EndingColumns.GAMES, games);
  }
}
