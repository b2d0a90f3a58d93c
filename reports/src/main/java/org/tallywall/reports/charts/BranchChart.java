package org.tallywall.reports.charts;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.tallywall.reports.figure.Axis;
import org.tallywall.reports.figure.Caption;
import org.tallywall.reports.figure.Sign;
import org.tallywall.reports.figure.SquareMap;
import org.tallywall.reports.figure.SquareMap.Side;
import org.tallywall.reports.figure.SquareMap.Square;
import org.tallywall.reports.results.CsvFile;
import org.tallywall.reports.results.Results;
import org.tallywall.reports.schema.BranchColumns;
import org.tallywall.reports.words.BranchWords;
import org.tallywall.reports.words.MeasureWords;

/**
 * A square for every situation, with what the first choice of the study is worth beside another.
 * The file has it the other way round: the other choice less the first.
 */
public final class BranchChart {
  private static final String ACROSS = "away";
  private static final String DOWN = "wall";

  private final Results results;
  private final List<CsvFile.Row> rows;

  /** How many maps there are in all. */
  private final int maps;

  private BranchChart(Results results, List<CsvFile.Row> rows, int maps) {
    this.results = results;
    this.rows = rows;
    this.maps = maps;
  }

  /**
   * A map for every value of what is neither across nor down, as the number of exposures.
   *
   * @param results what a results folder holds
   * @return the figures in their order
   */
  public static List<BranchMap> all(Results results) {
    Map<String, List<CsvFile.Row>> groups = new LinkedHashMap<>();
    boolean there =
        results
            .sheet(BranchColumns.FILE)
            .filter(sheet -> sheet.has(ACROSS) && sheet.has(DOWN))
            .isPresent();
    if (there) {
      boolean several = several(results);
      for (CsvFile.Row row : results.rows(BranchColumns.FILE)) {
        if (isShown(results, row)) {
          groups.computeIfAbsent(group(results, row, several), name -> new ArrayList<>()).add(row);
        }
      }
    }
    List<BranchMap> maps = new ArrayList<>();
    int all = groups.size();
    groups.keySet().retainAll(Set.copyOf(Room.first(List.copyOf(groups.keySet()))));
    groups.forEach(
        (name, rows) -> {
          int number = groups.size() == 1 ? 0 : maps.size() + 1;
          maps.add(new BranchChart(results, rows, all).map(name, number));
        });
    return maps;
  }

  private static boolean isShown(Results results, CsvFile.Row row) {
    String primary = results.study().text("primary");
    String measure = row.text(BranchColumns.MEASURE);
    return measure.isEmpty() || primary.isEmpty() || measure.equals(primary);
  }

  /** What else tells squares apart, in words; the choices themselves, where there are several. */
  private static String group(Results results, CsvFile.Row row, boolean several) {
    List<String> words = new ArrayList<>();
    Object when = results.study().object("branch").get("when");
    if (when instanceof Map<?, ?> conditions) {
      for (Object condition : conditions.keySet()) {
        String name = condition.toString();
        String value = row.text(name);
        if (!name.equals(ACROSS) && !name.equals(DOWN) && !value.isEmpty()) {
          words.add(name.replace('-', ' ') + ": " + value);
        }
      }
    }
    if (several) {
      words.add(BranchWords.plain(row.text(BranchColumns.OPTION)));
    }
    return String.join(", ", words);
  }

  private static boolean several(Results results) {
    return results.rows(BranchColumns.FILE).stream()
            .map(one -> one.text(BranchColumns.OPTION))
            .distinct()
            .count()
        > 1;
  }

  private BranchMap map(String group, int number) {
    List<String> columns = values(ACROSS, false);
    List<String> walls = values(DOWN, true);
    List<List<Square>> squares = new ArrayList<>();
    for (String wall : walls) {
      squares.add(columns.stream().map(away -> square(away, wall)).toList());
    }
    BranchWords words = BranchWords.of(rows.get(0));
    Optional<Border> border = Border.of(squares);
    String unit = unit(results);
    List<String> labels = ranges(walls);
    Caption caption =
        Captions.of(
            results,
            "which-choice" + (number == 0 ? "" : "-" + number),
            words.question() + (group.isEmpty() ? "" : " (" + group + ")"),
            described(columns, labels, squares, unit),
            Room.below(results, Math.max(maps, Math.max(all(ACROSS), all(DOWN)))));
    SquareMap figure =
        new SquareMap(
            caption,
            new Axis(words.instead(), unit),
            new Side(new Axis("tiles away", ""), columns),
            new Side(new Axis("tiles left in the wall", ""), labels),
            squares,
            border.map(line -> new SquareMap.Border(line.places(), words.border(line.plusLeft()))));
    return new BranchMap(figure, words, group, border);
  }

  private static String unit(Results results) {
    return MeasureWords.of(results.study().text("primary"))
        .map(MeasureWords::unit)
        .orElse("points per 100 games")
        .replace("100 games", "100 such games")
        .replace("games in 100", "games in 100 such games");
  }

  private List<String> values(String column, boolean falling) {
    Comparator<String> numbers =
        Comparator.comparingDouble(text -> text.matches("\\d{1,6}") ? Double.parseDouble(text) : 0);
    return rows.stream()
        .map(row -> row.text(column))
        .distinct()
        .sorted(falling ? numbers.reversed() : numbers)
        .limit(Room.MOST)
        .toList();
  }

  private int all(String column) {
    return (int) rows.stream().map(row -> row.text(column)).distinct().count();
  }

  private Square square(String away, String wall) {
    return rows.stream()
        .filter(row -> row.text(ACROSS).equals(away) && row.text(DOWN).equals(wall))
        .findFirst()
        .map(this::square)
        .orElse(Square.tooFew());
  }

  private Square square(CsvFile.Row row) {
    return row.ranged(BranchColumns.DIFFERENCE)
        .map(ranged -> ranged.inHundred().negated().estimate())
        .map(
            e ->
                BranchWords.clear(row, results.confidence()) == 0
                    ? Square.unclear(e)
                    : Square.of(e))
        .orElse(Square.tooFew());
  }

  /** Upper edges as ranges: 60, 45 become "60 to 46", "45 to 0". */
  private static List<String> ranges(List<String> edges) {
    List<String> ranges = new ArrayList<>();
    for (int at = 0; at < edges.size(); at++) {
      boolean last = at + 1 == edges.size();
      boolean numbers = edges.get(at).matches("\\d{1,6}");
      numbers &= last || edges.get(at + 1).matches("\\d{1,6}");
      int low = last || !numbers ? 0 : Integer.parseInt(edges.get(at + 1)) + 1;
      ranges.add(numbers ? edges.get(at) + " to " + low : edges.get(at));
    }
    return ranges;
  }

  private static String described(
      List<String> columns, List<String> walls, List<List<Square>> squares, String unit) {
    List<String> sentences = new ArrayList<>();
    for (int row = 0; row < walls.size(); row++) {
      List<String> cells = new ArrayList<>();
      for (int column = 0; column < columns.size(); column++) {
        Square square = squares.get(row).get(column);
        String value =
            square
                .estimate()
                .map(e -> square.sign() == 0 ? "too close to call" : e.text(Sign.PLUS_AND_MINUS))
                .orElse("too few deals");
        cells.add(columns.get(column) + " away " + value);
      }
      sentences.add("Wall " + walls.get(row) + ": " + String.join("; ", cells) + ".");
    }
    return "Differences in " + unit + ". " + String.join(" ", sentences);
  }
}
