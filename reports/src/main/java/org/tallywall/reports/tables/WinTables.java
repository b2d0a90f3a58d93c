package org.tallywall.reports.tables;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.tallywall.reports.results.CsvFile;
import org.tallywall.reports.results.Results;
import org.tallywall.reports.schema.WinRateColumns;
import org.tallywall.reports.table.Column;
import org.tallywall.reports.table.Table;
import org.tallywall.reports.table.TableBuilder;
import org.tallywall.reports.words.Ways;

/** How often the seats or ways of playing win, in words for readers. */
public final class WinTables {
  private static final Column OF_DECIDED =
      Column.decimal("of-decided", "in 100", "Its wins among the games that were not wall games.")
          .headed("of 100 games that anyone won");

  private final Results results;

  /**
   * Tables of the wins in a results folder.
   *
   * @param results what a results folder holds
   */
  public WinTables(Results results) {
    this.results = results;
  }

  /**
   * The one table of the notes.
   *
   * @return the table
   */
  public Table brief() {
    List<Pick> picks = new ArrayList<>(who());
    picks.addAll(levels());
    return wins("wins", picks, Ways.rows(results));
  }

  /**
   * Where the games go.
   *
   * @return the table
   */
  public Table parts() {
    List<Pick> picks = new ArrayList<>(who());
    List<Column> parts =
        List.of(
            WinRateColumns.WON_ON_OWN_DRAW,
            WinRateColumns.WON_ON_DISCARD,
            WinRateColumns.THREW_THE_WINNING_TILE,
            WinRateColumns.ONLY_PAID,
            WinRateColumns.WALL_GAME,
            WinRateColumns.VOID);
    parts.stream().filter(this::came).map(WinTables::perGame).forEach(picks::add);
    return Pick.table("parts", "Where 100 games go", picks, Ways.rows(results)).build();
  }

  /**
   * How hands are won.
   *
   * @return the table
   */
  public Table hands() {
    List<Pick> picks = new ArrayList<>(who());
    picks.add(perGame(WinRateColumns.WON_AFTER_REDEEMING));
    picks.add(perGame(WinRateColumns.WON_JOKERLESS));
    picks.add(Pick.mean(WinRateColumns.WALL_AT_WIN));
    picks.add(Pick.mean(WinRateColumns.JOKERS_AT_WIN));
    picks.add(Pick.mean(WinRateColumns.EXPOSURES));
    picks.add(Pick.mean(WinRateColumns.EXCHANGES));
    return Pick.table("how-hands-are-won", "How hands are made and won", picks, Ways.rows(results))
        .build();
  }

  /**
   * The same as the brief one, with every row of the file.
   *
   * @return the table
   */
  public Table whole() {
    List<Pick> picks = new ArrayList<>(who());
    picks.addAll(levels());
    return wins("wins-in-full", picks, results.rows(WinRateColumns.FILE));
  }

  /** A void game needs three dead hands: where there was none, nobody misses the column. */
  private boolean came(Column part) {
    return !part.equals(WinRateColumns.VOID)
        || results.rows(WinRateColumns.FILE).stream().anyMatch(row -> row.count(part) > 0);
  }

  private String title() {
    return Ways.oneTable(results)
        ? "How often each seat wins, and what it earns"
        : "How often each way of playing wins, and what it earns";
  }

  private List<Pick> who() {
    List<Pick> picks = new ArrayList<>();
    if (!Ways.oneTable(results)) {
      picks.add(Pick.arm(results, WinRateColumns.ARM));
    }
    picks.add(
        Pick.words(
            "seat",
            "Where it sat, as seen from East; \u201call four seats\u201d counts them together.",
            Ways::seat));
    if (Ways.oneTable(results)) {
      picks.add(Pick.words("player", "Who sat there.", WinTables::player));
    }
    return picks;
  }

  private static String player(CsvFile.Row row) {
    String player = row.text(WinRateColumns.PLAYER);
    return player.equals("all") ? "all four players" : player;
  }

  private static List<Pick> levels() {
    return List.of(
        Pick.rangeInHundred(WinRateColumns.WIN_RATE),
        Pick.inHundred(OF_DECIDED, WinTables::ofDecided),
        Pick.rangeInHundred(WinRateColumns.POINTS),
        Pick.inHundred(
            WinRateColumns.ONE_AWAY_REACHED, row -> row.number(WinRateColumns.ONE_AWAY_REACHED)));
  }

  private static OptionalDouble ofDecided(CsvFile.Row row) {
    long decided =
        row.count(WinRateColumns.GAMES)
            - row.count(WinRateColumns.WALL_GAME)
            - row.count(WinRateColumns.VOID);
    return Pick.quotient(row.number(WinRateColumns.WINS), decided);
  }

  private static Pick perGame(Column column) {
    return Pick.inHundred(
        column, row -> Pick.quotient(row.number(column), row.count(WinRateColumns.GAMES)));
  }

  private Table wins(String stem, List<Pick> picks, List<CsvFile.Row> rows) {
    String ranges = Pick.ranges(results, picks, rows);
    TableBuilder table = Pick.table(stem, title(), picks, rows);
    return (ranges.isEmpty() ? table : table.note(ranges)).build();
  }
}
