package org.tallywall.experiments.reading;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.core.tile.Tile;
import org.tallywall.experiments.words.Words;
import org.tallywall.reports.table.Cell;
import org.tallywall.reports.table.Column;
import org.tallywall.reports.table.Rounding;
import org.tallywall.reports.table.Table;
import org.tallywall.reports.table.TableBuilder;

/** The tables of a reading. */
final class ReadingTables {
  private static final int ROWS = 6;
  private static final int TENTHS = 10;
  private static final String IN_100 = "in 100";

  private final Reading reading;
  private final ReadingWords words;

  /**
   * The tables.
   *
   * @param reading what was seen
   * @param words its words
   */
  ReadingTables(Reading reading, ReadingWords words) {
    this.reading = reading;
    this.words = words;
  }

  /** The kinds on the rack, most dangerous first. */
  Table tiles() {
    TableBuilder table =
        Table.builder("tiles", "Each tile of the rack, if it were thrown now, in 100 guesses")
            .columns(
                column("tile", "tile", "The tile."),
                column("claimed", "claimed for an exposure", "How often, in 100 guesses."),
                column("wins", "gives the game away", "How often, in 100 guesses."),
                column("pays", "then costs, in points", "What the thrower pays for that hand."),
                column("per-throw", "points per throw", "The same over all guesses."),
                column("safe", "sure, or seen", "What is known about it."));
    Danger.first(reading.tiles()).forEach(tile -> table.row(row(tile)));
    return table.build();
  }

  private static Column column(String name, String heading, String meaning) {
    return Column.text(name, meaning).headed(heading);
  }

  private List<Cell> row(TileReading tile) {
    boolean taken = !tile.shelters().nobodyTakes();
    boolean won = !tile.shelters().nobodyWins();
    return cells(
        Tile.symbol(tile.kind()),
        taken ? In100.number(tile.claim()) : "never",
        won ? In100.number(tile.win()) : "never",
        tile.wins() == 0 ? "" : ReadingWords.pays(tile),
        tile.wins() == 0 ? "0" : perThrow(tile.perThrow()),
        words.safety().inShort(tile));
  }

  private static String perThrow(double points) {
    return points * TENTHS < 1 ? "under 0.1" : Rounding.nearest(points, 1).toPlainString();
  }

  private static List<Cell> cells(String... texts) {
    return List.of(texts).stream().map(Cell::text).toList();
  }

  /** What one opponent may hold: lines, distances and tiles, each with its chances. */
  Table opponent(OpponentReading one) {
    TableBuilder table =
        Table.builder("seat-" + one.seat(), "What she may hold, in 100 guesses")
            .columns(
                column("line", "line", "A line that was nearest to her rack."),
                column("line-chance", IN_100, "How often."),
                column("away", "tiles away", "How far her rack was from the nearest hand."),
                column("away-chance", IN_100, "How often."),
                column("tile", "needs", "A tile that would bring her nearer."),
                column("tile-chance", IN_100, "How often."));
    List<List<String>> lines = lines(one);
    List<List<String>> away = away(one);
    List<List<String>> needs = needs(one);
    for (int at = 0; at < Math.max(lines.size(), Math.max(away.size(), needs.size())); at++) {
      List<String> row = new ArrayList<>(pair(lines, at));
      row.addAll(pair(away, at));
      row.addAll(pair(needs, at));
      table.row(cells(row.toArray(new String[0])));
    }
    return table.build();
  }

  private static List<String> pair(List<List<String>> pairs, int at) {
    return at < pairs.size() ? pairs.get(at) : List.of("", "");
  }

  private List<List<String>> lines(OpponentReading one) {
    List<List<String>> rows = new ArrayList<>();
    int shown = one.lines().size() <= ROWS ? one.lines().size() : ROWS - 1;
    double rest = 1 - one.stuck() / (double) one.guesses();
    for (OpponentReading.LineChance line : one.lines().subList(0, shown)) {
      rows.add(List.of(words.opponents().line(line.line()), In100.number(line.chance())));
      rest -= line.chance();
    }
    int others = one.lines().size() - shown;
    if (others > 0) {
      rows.add(List.of(Words.count(others, "other line", "other lines"), In100.number(rest)));
    }
    return rows;
  }

  private static List<List<String>> away(OpponentReading one) {
    List<List<String>> rows = new ArrayList<>();
    for (int at = 1; at <= OpponentReading.FURTHEST; at++) {
      String away = at + (at == OpponentReading.FURTHEST ? " or more" : "");
      rows.add(List.of(away, In100.number(one.away().get(at) / (double) one.guesses())));
    }
    if (one.stuck() > 0) {
      String stuck = In100.number(one.stuck() / (double) one.guesses());
      rows.add(List.of("no hand left", stuck));
    }
    return rows;
  }

  private static List<List<String>> needs(OpponentReading one) {
    return one.needs().stream()
        .limit(ROWS)
        .map(
            need ->
                List.of(
                    Tile.symbol(need.kind()), In100.number(need.nearer() / (double) one.guesses())))
        .toList();
  }
}
