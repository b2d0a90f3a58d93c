package org.tallywall.reports.tables;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.tallywall.reports.results.CsvFile;
import org.tallywall.reports.results.Results;
import org.tallywall.reports.schema.EndingColumns;
import org.tallywall.reports.schema.PassColumns;
import org.tallywall.reports.table.Cell;
import org.tallywall.reports.table.Column;
import org.tallywall.reports.table.Table;
import org.tallywall.reports.table.TableBuilder;
import org.tallywall.reports.words.PassWords;
import org.tallywall.reports.words.Ways;

/** The course of the games, in words for readers: the passes, and when games end. */
public final class CourseTables {
  private static final int STEP = 15;
  private static final List<Column> ENDS =
      List.of(
          EndingColumns.GAMES,
          EndingColumns.WON_BY_DRAW,
          EndingColumns.WON_BY_EXCHANGE,
          EndingColumns.WON_ON_DISCARD,
          EndingColumns.WON_BEFORE_PLAY,
          EndingColumns.WALL_GAMES,
          EndingColumns.VOID_GAMES);

  private static final Column BLIND =
      Column.decimal("blind", "in 100 players", "Players that passed on at least one tile unseen.")
          .headed("passed unseen tiles, of 100 players");

  private final Results results;

  /**
   * Tables of the course of the games in a results folder.
   *
   * @param results what a results folder holds
   */
  public CourseTables(Results results) {
    this.results = results;
  }

  /**
   * When games end: fifteen tiles of the wall to a row; ends that never came are left out.
   *
   * @return the table
   */
  public Table endings() {
    List<CsvFile.Row> rows = results.rows(EndingColumns.FILE);
    boolean several = Ways.several(rows);
    List<Column> ends = ENDS.stream().filter(end -> came(rows, end)).toList();
    TableBuilder table = Table.builder("when-games-end", "When and how 100 games end");
    if (several) {
      table.columns(EndingColumns.ARM);
    }
    table.columns(
        Column.text(EndingColumns.WALL.name(), EndingColumns.WALL.meaning())
            .headed(EndingColumns.WALL.heading()));
    for (Column end : ends) {
      table.columns(
          Column.decimal(end.name(), "in 100 games", end.meaning())
              .headed(end.heading())
              .shownTo(1));
    }
    long top = rows.stream().mapToLong(row -> row.count(EndingColumns.WALL)).max().orElse(0);
    bins(rows, ends)
        .forEach(
            (arm, bins) -> {
              double games = bins.values().stream().mapToDouble(bin -> bin[0]).sum();
              bins.forEach(
                  (wall, bin) ->
                      table.row(
                          row(
                              several ? Ways.name(results, arm) : "",
                              part(wall, top),
                              bin,
                              games)));
            });
    return table.build();
  }

  private static boolean came(List<CsvFile.Row> rows, Column end) {
    return end.equals(EndingColumns.GAMES) || rows.stream().anyMatch(row -> row.count(end) > 0);
  }

  /** A part of the wall, such as "16 to 30"; the last one ends where the wall begins. */
  private static String part(int bin, long top) {
    return bin < 0 ? "none" : bin * STEP + 1 + " to " + Math.min(top, (bin + 1L) * STEP);
  }

  private static List<Cell> row(String arm, String part, double[] bin, double games) {
    List<Cell> cells = new ArrayList<>();
    if (!arm.isEmpty()) {
      cells.add(Cell.text(arm));
    }
    cells.add(Cell.text(part));
    for (double count : bin) {
      cells.add(games == 0 ? Cell.empty() : Cell.decimal(100 * count / games));
    }
    return cells;
  }

  /** Ends by way of playing and bin, in the order of the file; the empty wall has a bin of -1. */
  private static Map<String, Map<Integer, double[]>> bins(
      List<CsvFile.Row> rows, List<Column> ends) {
    Map<String, Map<Integer, double[]>> all = new LinkedHashMap<>();
    for (CsvFile.Row row : rows) {
      int wall = (int) row.count(EndingColumns.WALL);
      int bin = wall == 0 ? -1 : (wall - 1) / STEP;
      double[] sums =
          all.computeIfAbsent(row.text(EndingColumns.ARM), arm -> new LinkedHashMap<>())
              .computeIfAbsent(bin, at -> new double[ends.size()]);
      for (int end = 0; end < ends.size(); end++) {
        sums[end] += row.count(ends.get(end));
      }
    }
    return all;
  }

  /**
   * The Charleston, pass by pass.
   *
   * @return the table
   */
  public Table passes() {
    List<CsvFile.Row> rows = results.rows(PassColumns.FILE);
    List<Pick> picks = new ArrayList<>();
    if (Ways.several(rows)) {
      picks.add(Pick.arm(results, PassColumns.ARM));
    }
    picks.add(Pick.words(PassColumns.STEP, row -> PassWords.of(row.text(PassColumns.STEP))));
    picks.add(
        Pick.inHundred(PassColumns.SHARE_OF_GAMES, row -> row.number(PassColumns.SHARE_OF_GAMES)));
    picks.add(
        Pick.inHundred(
            PassColumns.STOPPED,
            row -> Pick.quotient(row.number(PassColumns.STOPPED), row.count(PassColumns.GAMES))));
    picks.add(Pick.inHundred(BLIND, CourseTables::blind));
    picks.add(Pick.mean(PassColumns.AWAY_BEFORE));
    picks.add(Pick.mean(PassColumns.AWAY_AFTER));
    return Pick.table("the-passes", "The Charleston, pass by pass", picks, rows)
        .note(
            "Tiles away: how many tiles a rack still needs for its nearest line, averaged over all four.")
        .build();
  }

  private static OptionalDouble blind(CsvFile.Row row) {
    if (row.number(PassColumns.BLIND_0).isEmpty()) {
      return OptionalDouble.empty();
    }
    long all = PassColumns.blind().stream().mapToLong(row::count).sum();
    return Pick.quotient(OptionalDouble.of(all - row.count(PassColumns.BLIND_0)), all);
  }
}
