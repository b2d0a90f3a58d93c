package org.tallywall.experiments.answer;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.experiments.tally.EndTally;
import org.tallywall.experiments.tally.EndTally.End;
import org.tallywall.reports.table.Cell;
import org.tallywall.reports.table.Column;
import org.tallywall.reports.table.Table;
import org.tallywall.reports.table.TableBuilder;

/** How games ended, by the number of tiles left in the wall. */
final class Endings {
  private Endings() {}

  static Table of(List<Way> ways) {
    TableBuilder table =
        Table.builder("endings", "How games ended, by the number of tiles left in the wall")
            .columns(
                Column.text("arm", "The way of playing; \"table\" for one fixed table."),
                Column.integer("wall", "tiles", "Tiles left in the wall at the end."),
                Column.integer("games", "games", "Games that ended there."),
                Column.integer("won-by-draw", "games", "Won on the tile drawn."),
                Column.integer("won-by-exchange", "games", "Won by a joker exchange."),
                Column.integer("won-on-discard", "games", "Won on a discard."),
                Column.integer("won-before-play", "games", "East was complete before play."),
                Column.integer("wall-games", "games", "Nobody won before the wall ran out."),
                Column.integer("void-games", "games", "Three hands were dead."));
    for (Way way : ways) {
      EndTally ends = way.tally().ends();
      for (int wall = ends.most(); wall >= 0; wall--) {
        table.row(row(way, wall));
      }
    }
    return table.build();
  }

  private static List<Cell> row(Way way, int wall) {
    EndTally ends = way.tally().ends();
    List<Cell> cells = new ArrayList<>();
    cells.add(Cell.text(way.name()));
    cells.add(Cell.whole(wall));
    long games = 0;
    for (End end : End.values()) {
      games += ends.games(end, wall);
    }
    cells.add(Cell.whole(games));
    for (End end : End.values()) {
      cells.add(Cell.whole(ends.games(end, wall)));
    }
    return cells;
  }
}
