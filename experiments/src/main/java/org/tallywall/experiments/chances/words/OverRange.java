package org.tallywall.experiments.chances.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tallywall.reports.figure.Axis;
import org.tallywall.reports.figure.Caption;
import org.tallywall.reports.figure.ExactLines;
import org.tallywall.reports.figure.Slide;
import org.tallywall.reports.table.Cell;
import org.tallywall.reports.table.Column;
import org.tallywall.reports.table.NumberText;
import org.tallywall.reports.table.Rounding;
import org.tallywall.reports.table.Table;
import org.tallywall.reports.table.TableBuilder;

/**
 * Sums over a range of numbers: a row for each, and a line for each chance.
 *
 * @param stem the name of table and chart in files
 * @param title the title of both
 * @param across what is chosen
 * @param up what the lines show
 * @param lines names of the columns that the chart shows as lines; one to three
 * @param columns all columns, that of what is chosen first
 * @param rows a cell for every column, from the lowest number to the highest
 */
record OverRange(
    String stem,
    String title,
    Axis across,
    Axis up,
    List<String> lines,
    List<Column> columns,
    List<List<Cell>> rows) {
  /** So many points are told one by one to those who cannot see the chart. */
  private static final int MOST_TOLD = 12;

  Table table() {
    TableBuilder table = Table.builder(stem, title).columns(columns);
    rows.forEach(table::row);
    Rounded.notes(table);
    return table.build();
  }

  /** The chart; none where there is a single number. */
  Optional<ExactLines> chart(String note) {
    if (rows.size() < 2) {
      return Optional.empty();
    }
    List<ExactLines.Line> drawn = new ArrayList<>();
    for (String name : lines) {
      int at = columns.stream().map(Column::name).toList().indexOf(name);
      drawn.add(
          new ExactLines.Line(
              columns.get(at).heading(),
              rows.stream()
                  .map(row -> new ExactLines.Point(whole(row.get(0)), number(at, row.get(at))))
                  .toList()));
    }
    Caption caption =
        new Caption(
            stem, title, described(drawn), List.of(note), new Slide("", "", List.of(How.EXACT)));
    return Optional.of(new ExactLines(caption, across, up, drawn));
  }

  private String described(List<ExactLines.Line> drawn) {
    List<String> sentences = new ArrayList<>();
    for (ExactLines.Line line : drawn) {
      List<String> told = new ArrayList<>();
      List<ExactLines.Point> points = line.points();
      int step = Math.max(1, (points.size() + MOST_TOLD - 2) / (MOST_TOLD - 1));
      for (int i = 0; i < points.size(); i += step) {
        told.add(point(points.get(i)));
      }
      if ((points.size() - 1) % step != 0) {
        told.add(point(points.get(points.size() - 1)));
      }
      sentences.add("%s, %s: %s.".formatted(line.name(), up.words(), String.join(", ", told)));
    }
    return across.words() + " from left to right. " + String.join(" ", sentences);
  }

  private static String point(ExactLines.Point point) {
    return "at "
        + point.at()
        + " "
        + NumberText.of(Rounding.nearest(point.value(), 1).doubleValue());
  }

  private static int whole(Cell cell) {
    return (int) ((Cell.Whole) cell).value();
  }

  /** Shares are drawn as parts of 100. */
  private double number(int at, Cell cell) {
    if (cell instanceof Cell.Whole count) {
      return count.value();
    }
    double value = ((Cell.Decimal) cell).value();
    return columns.get(at).type().isRate() ? 100 * value : value;
  }
}
