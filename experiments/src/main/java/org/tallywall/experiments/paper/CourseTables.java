package org.tallywall.experiments.paper;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.tallywall.reports.results.Results;
import org.tallywall.reports.results.Sheet;
import org.tallywall.reports.table.Cell;
import org.tallywall.reports.table.Column;
import org.tallywall.reports.table.Table;
import org.tallywall.reports.table.TableBuilder;

/** The course of the games, in words for readers: the passes, and when games end. */
final class CourseTables {
  private static final int STEP = 15;
  private static final List<End> ENDS =
      List.of(
          new End("games", "all ends"),
          new End("won-by-draw", "won on the tile drawn"),
          new End("won-by-exchange", "won by a joker exchange"),
          new End("won-on-discard", "won on a discard"),
          new End("won-before-play", "East complete before play"),
          new End("wall-games", "wall game"),
          new End("void-games", "void, three hands dead"));

  private static final Map<String, String> PASSES =
      Map.of(
          "right-1", "first right",
          "across-1", "first across",
          "left-1", "first left",
          "stop", "a second round?",
          "left-2", "second left",
          "across-2", "second across",
          "right-2", "last right");

  /** A way in which games end: its column in the file, and its words. */
  private record End(String column, String words) {}

  private final Results results;

  CourseTables(Results results) {
    this.results = results;
  }

  /** When games end: fifteen tiles of the wall to a row; ends that never came are left out. */
  Table endings() {
    List<Sheet.Row> rows = results.rows("endings");
    boolean several = Ways.several(rows);
    List<End> ends = ENDS.stream().filter(end -> came(rows, end.column())).toList();
    TableBuilder table = Table.builder("when-games-end", "When and how 100 games end");
    if (several) {
      table.columns(Column.text("arm", "The way of playing.").headed("way of playing"));
    }
    table.columns(Column.text("wall", "Tiles left in the wall.").headed("tiles left in the wall"));
    for (End end : ends) {
      String meaning = "Games in 100: " + end.words() + ".";
      Column column = Column.decimal(end.column(), "in 100 games", meaning);
      table.columns(column.headed(end.words()).shownTo(1));
    }
    bins(rows, ends)
        .forEach(
            (arm, bins) -> {
              double games = bins.values().stream().mapToDouble(bin -> bin[0]).sum();
              bins.forEach(
                  (wall, bin) ->
                      table.row(row(several ? Ways.name(results, arm) : "", wall, bin, games)));
            });
    return table.build();
  }

  private static boolean came(List<Sheet.Row> rows, String end) {
    return end.equals("games") || rows.stream().anyMatch(row -> row.count(end) > 0);
  }

  private static List<Cell> row(String arm, int wall, double[] bin, double games) {
    List<Cell> cells = new ArrayList<>();
    if (!arm.isEmpty()) {
      cells.add(Cell.text(arm));
    }
    cells.add(Cell.text(wall < 0 ? "none" : wall * STEP + 1 + " to " + (wall + 1) * STEP));
    for (double count : bin) {
      cells.add(games == 0 ? Cell.empty() : Cell.decimal(100 * count / games));
    }
    return cells;
  }

  /** Ends by way of playing and bin, in the order of the file; the empty wall has a bin of -1. */
  private static Map<String, Map<Integer, double[]>> bins(List<Sheet.Row> rows, List<End> ends) {
    Map<String, Map<Integer, double[]>> all = new LinkedHashMap<>();
    for (Sheet.Row row : rows) {
      int wall = (int) row.count("wall");
      int bin = wall == 0 ? -1 : (wall - 1) / STEP;
      double[] sums =
          all.computeIfAbsent(row.text("arm"), arm -> new LinkedHashMap<>())
              .computeIfAbsent(bin, at -> new double[ends.size()]);
      for (int end = 0; end < ends.size(); end++) {
        sums[end] += row.count(ends.get(end).column());
      }
    }
    return all;
  }

  /** The Charleston, pass by pass. */
  Table passes() {
    List<Sheet.Row> rows = results.rows("passes");
    List<Pick> picks = new ArrayList<>();
    if (Ways.several(rows)) {
      picks.add(Pick.arm(results));
    }
    picks.add(
        Pick.words(
                "step", "The pass, or the question whether to stop.", row -> pass(row.text("step")))
            .headed("pass"));
    picks.add(
        Pick.inHundred(
                "share-of-games",
                "in 100 games",
                "Games in 100 in which it came to this.",
                row -> row.number("share-of-games"))
            .headed("came to this in 100 games"));
    picks.add(
        Pick.inHundred(
                "stopped",
                "in 100 games",
                "Of 100 games in which it was asked, those that went no further.",
                row -> Pick.quotient(row.number("stopped"), row.count("games")))
            .headed("stopped, of 100 asked"));
    picks.add(
        Pick.inHundred(
                "blind",
                "in 100 players",
                "Players in 100 that passed on at least one tile unseen.",
                CourseTables::blind)
            .headed("passed unseen tiles, of 100 players"));
    picks.add(Pick.mean("away-before", "tiles", "Mean tiles away before the pass."));
    picks.add(Pick.mean("away-after", "tiles", "Mean tiles away after the pass."));
    return Pick.table("the-passes", "The Charleston, pass by pass", picks, rows)
        .note("Tiles away: how many tiles a rack lacks to the nearest line, all four on average.")
        .build();
  }

  /** A pass as people call it. */
  static String pass(String step) {
    return PASSES.getOrDefault(step, step);
  }

  private static OptionalDouble blind(Sheet.Row row) {
    if (row.number("blind-0").isEmpty()) {
      return OptionalDouble.empty();
    }
    long unseen = row.count("blind-1") + row.count("blind-2") + row.count("blind-3");
    return Pick.quotient(OptionalDouble.of(unseen), unseen + (double) row.count("blind-0"));
  }
}
