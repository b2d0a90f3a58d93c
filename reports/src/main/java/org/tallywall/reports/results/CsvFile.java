package org.tallywall.reports.results;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.tallywall.reports.table.Column;
import org.tallywall.reports.table.Values;
import org.tallywall.reports.table.Visible;

/** A file of comma-separated values, read back. Columns are asked for by name. */
public final class CsvFile {
  /** What can be done about a file that is not as the program wrote it. */
  static final String REMEDY = "; if the file was changed or damaged, play the study again";

  private final String file;
  private final List<String> columns;
  private final Map<String, Integer> places = new HashMap<>();
  private final List<Row> rows = new ArrayList<>();

  /**
   * Takes what was read.
   *
   * @param file the file's name, for messages
   * @param columns the names in its first line
   * @param lines the cells of the other lines
   * @throws WrongResultsException if a name stands twice, or a line has too many or too few cells
   */
  CsvFile(String file, List<String> columns, List<List<String>> lines) {
    this.file = file;
    this.columns = List.copyOf(columns);
    for (int at = 0; at < columns.size(); at++) {
      if (places.put(columns.get(at), at) != null) {
        throw damaged(1, "the column \"" + Visible.inShort(columns.get(at)) + "\" stands twice");
      }
    }
    for (int at = 0; at < lines.size(); at++) {
      int line = at + 2;
      if (lines.get(at).size() != columns.size()) {
        throw damaged(
            line,
            "expected %s cells, got %s; was the file cut off?"
                .formatted(columns.size(), lines.get(at).size()));
      }
      rows.add(new Row(line, lines.get(at)));
    }
  }

  private WrongResultsException damaged(int line, String what) {
    return new WrongResultsException(
        "\"%s\", line %s: %s%s".formatted(Visible.line(file), line, what, REMEDY));
  }

  /**
   * Whether there is a column.
   *
   * @param name its name
   * @return true if the file has it
   */
  public boolean has(String name) {
    return places.containsKey(name);
  }

  /**
   * Whether there is a column.
   *
   * @param column the column
   * @return true if the file has it
   */
  public boolean has(Column column) {
    return has(column.name());
  }

  /**
   * The names of the columns.
   *
   * @return from left to right
   */
  public List<String> columns() {
    return columns;
  }

  /**
   * The rows.
   *
   * @return from top to bottom
   */
  public List<Row> rows() {
    return List.copyOf(rows);
  }

  /** One line of the file. */
  public final class Row {
    private final int line;
    private final List<String> cells;

    private Row(int line, List<String> cells) {
      this.line = line;
      this.cells = cells;
    }

    /**
     * A complaint about a cell.
     *
     * @param column the name of its column
     * @param what what is wrong with it
     */
    WrongResultsException wrong(String column, String what) {
      return damaged(line, "column %s: %s".formatted(column, what));
    }

    /**
     * The words in a cell.
     *
     * @param column the column
     * @return its text; empty if the cell is empty
     * @throws WrongResultsException if the file has no such column
     */
    public String text(Column column) {
      return text(column.name());
    }

    /**
     * The words in a cell that has to be filled in this row.
     *
     * @param column the column
     * @return its text, not blank
     * @throws WrongResultsException if nothing stands there, or the file has no such column
     */
    public String words(Column column) {
      if (text(column).isBlank()) {
        throw wrong(column.name(), "nothing stands there");
      }
      return text(column);
    }

    /**
     * The number in a cell.
     *
     * @param column the column
     * @return the number; none if the cell is empty
     * @throws WrongResultsException if something else stands there, or the file has no such column
     */
    public OptionalDouble number(Column column) {
      return number(column.name());
    }

    /**
     * The number in a cell that has to be filled.
     *
     * @param column the column
     * @return the number
     * @throws WrongResultsException if there is none, or the file has no such column
     */
    public double need(Column column) {
      return need(column.name());
    }

    /**
     * The count in a cell.
     *
     * @param column the column
     * @return the count; 0 if the cell is empty
     * @throws WrongResultsException if something else than a count stands there, or the file has no
     *     such column
     */
    public long count(Column column) {
      return count(column.name());
    }

    /**
     * A number with the limits of its interval.
     *
     * @param column the column, whose cells have intervals
     * @return the three; none if one of them is missing
     * @throws WrongResultsException if something else than numbers stands there, the limits are in
     *     the wrong order, or the file has no such columns
     */
    public Optional<Ranged> ranged(Column column) {
      return ranged(column.name());
    }

    /**
     * The words in a cell.
     *
     * @param column the column's name
     * @return its text; empty if the cell is empty
     * @throws WrongResultsException if the file has no such column
     */
    public String text(String column) {
      Integer place = places.get(column);
      if (place == null) {
        throw damaged(
            1,
            "the column \"%s\" is missing; another version of the program may have written the file"
                .formatted(Visible.inShort(column)));
      }
      return cells.get(place);
    }

    /**
     * The number in a cell.
     *
     * @param column the column's name
     * @return the number; none if the cell is empty
     * @throws WrongResultsException if something else stands there, or the file has no such column
     */
    public OptionalDouble number(String column) {
      String text = text(column);
      if (text.isEmpty()) {
        return OptionalDouble.empty();
      }
      if (Values.isNumber(text)) {
        return OptionalDouble.of(Double.parseDouble(text));
      }
      throw wrong(column, "\"" + Visible.inShort(text) + "\" is no number");
    }

    /**
     * The number in a cell that has to be filled.
     *
     * @param column the column's name
     * @return the number
     * @throws WrongResultsException if there is none
     */
    public double need(String column) {
      OptionalDouble number = number(column);
      if (number.isEmpty()) {
        throw wrong(column, "a number is missing");
      }
      return number.getAsDouble();
    }

    /**
     * The count in a cell.
     *
     * @param column the column's name
     * @return the count; 0 if the cell is empty
     * @throws WrongResultsException if something else than a count stands there
     */
    public long count(String column) {
      double number = number(column).orElse(0);
      if (number != Math.rint(number) || number < 0 || number > Values.FURTHEST) {
        throw wrong(column, Visible.inShort(text(column)) + " is no count");
      }
      return (long) number;
    }

    /**
     * A number with the limits of its interval, in the columns {@code name}, {@code name-low} and
     * {@code name-high}.
     *
     * @param column the column's name
     * @return the three; none if one of them is missing
     * @throws WrongResultsException if something else than numbers stands there, or the limits are
     *     in the wrong order
     */
    public Optional<Ranged> ranged(String column) {
      OptionalDouble value = number(column);
      OptionalDouble low = number(column + "-low");
      OptionalDouble high = number(column + "-high");
      if (value.isEmpty() || low.isEmpty() || high.isEmpty()) {
        return Optional.empty();
      }
      if (low.getAsDouble() > high.getAsDouble()) {
        throw wrong(column + "-low", "the limit is above " + column + "-high");
      }
      return Optional.of(new Ranged(value.getAsDouble(), low.getAsDouble(), high.getAsDouble()));
    }
  }
}
