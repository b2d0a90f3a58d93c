package org.tallywall.core.card;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.tallywall.core.text.Faults;
import org.tallywall.core.text.Shown;

/** Reads cells of a card in CSV that say yes or no. */
final class CsvFlags {
  private static final Map<String, Boolean> FLAGS =
      Map.of("true", true, "false", false, "yes", true, "no", false, "y", true, "n", false);

  /** How cards print concealed and exposed hands. */
  private static final Map<String, Boolean> LETTERS = Map.of("c", true, "x", false);

  private final CsvColumns columns;
  private final Faults faults;

  /** Whether the column for concealed hands is filled with X and C. */
  private final boolean lettered;

  /**
   * A reader.
   *
   * @param columns the columns
   * @param rows the rows below them
   * @param faults takes the faults
   */
  CsvFlags(CsvColumns columns, List<List<Typed>> rows, Faults faults) {
    this.columns = columns;
    this.faults = faults;
    this.lettered = lettered(rows);
  }

  /** Under X/C, or beside a C, an X is an exposed hand; alone it may be a tick as well. */
  private boolean lettered(List<List<Typed>> rows) {
    return columns.written("concealed").contains("/")
        || rows.stream()
            .map(row -> columns.cell(row, "concealed"))
            .anyMatch(cell -> cell != null && cell.text().strip().equalsIgnoreCase("c"));
  }

  /**
   * What a cell says.
   *
   * @param row the row
   * @param column the column
   * @param otherwise the value of an empty cell, and of one that has a fault
   * @param draft the line of the row
   * @return the value
   */
  Boolean of(List<Typed> row, String column, Boolean otherwise, LineDraft draft) {
    Typed cell = columns.cell(row, column);
    if (cell == null) {
      return otherwise;
    }
    String word = cell.text().strip().toLowerCase(Locale.ROOT);
    boolean concealed = column.equals("concealed");
    Boolean flag =
        concealed && lettered ? LETTERS.getOrDefault(word, FLAGS.get(word)) : FLAGS.get(word);
    if (flag == null && word.equals("x")) {
      faults.fault(
          cell.place(),
          draft.id,
          "\"x\" may be a tick or a cross; write yes or no"
              + (concealed ? ", or call the column X/C" : ""));
      return otherwise;
    } else if (flag == null) {
      faults.fault(
          cell.place(),
          draft.id,
          String.format(
              Locale.ROOT,
              "\"%s\" is TRUE or FALSE, yes or no%s; not \"%s\"",
              column,
              concealed ? ", C or X" : "",
              Shown.word(cell.text().strip())));
      return otherwise;
    }
    return flag;
  }
}
