package org.tallywall.core.card;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.tallywall.core.text.Faults;
import org.tallywall.core.text.FieldReader;
import org.tallywall.core.text.Shown;

/** The columns of a card in CSV, as its first row names them. */
final class CsvColumns {
  private static final List<String> COLUMNS =
      List.of(
          "family",
          "id",
          "tiles",
          "slide",
          "where",
          "suits",
          "value",
          "concealed",
          "jokers",
          "jokerless",
          "say",
          "card");

  /** All names of columns, the usual ones first. */
  private static final List<String> NAMES =
      Stream.concat(COLUMNS.stream(), CardWords.COLUMNS.keySet().stream().sorted()).toList();

  private final Map<String, Integer> columns = new LinkedHashMap<>();

  /** How the first row writes each column. */
  private final Map<String, String> written = new LinkedHashMap<>();

  /**
   * Reads the first row.
   *
   * @param row its cells
   * @param faults takes the faults
   */
  CsvColumns(List<Typed> row, Faults faults) {
    Set<String> meant = new LinkedHashSet<>();
    for (int at = 0; at < row.size(); at++) {
      String typed = row.get(at).text().strip().toLowerCase(Locale.ROOT);
      if (typed.isEmpty()) {
        continue;
      }
      String column = CardWords.COLUMNS.getOrDefault(typed, typed);
      String before = written.putIfAbsent(column, typed);
      if (!COLUMNS.contains(column)) {
        faults.fault(
            row.get(at).place(),
            "unknown column \"" + Shown.word(column) + "\"" + faults.advice(column, NAMES));
        faults
            .meant(column, NAMES)
            .ifPresent(near -> meant.add(CardWords.COLUMNS.getOrDefault(near, near)));
      } else if (columns.putIfAbsent(column, at) != null) {
        faults.fault(
            row.get(at).place(),
            typed.equals(before)
                ? "the column \"" + column + "\" is there twice"
                : "the columns " + FieldReader.twice(before, typed));
      }
    }
    for (String needed : List.of("family", "tiles", "value")) {
      if (!columns.containsKey(needed) && !meant.contains(needed)) {
        faults.fault(
            row.get(0).place(), "the column \"" + needed + "\" is missing in the first row");
      }
    }
  }

  /** How the first row writes a column, or nothing. */
  String written(String column) {
    return written.getOrDefault(column, "");
  }

  /** Whether a place in the rows belongs to a column. */
  boolean has(int at) {
    return columns.containsValue(at);
  }

  /** Whether nothing but one column is filled in a row. */
  boolean only(List<Typed> row, String column) {
    Typed cell = cell(row, column);
    return cell != null && row.stream().allMatch(one -> one == cell || one.text().isBlank());
  }

  /** A row's cell in a column; null where it is empty. */
  Typed cell(List<Typed> row, String column) {
    Integer at = columns.get(column);
    return at == null || at >= row.size() || row.get(at).text().isBlank() ? null : row.get(at);
  }
}
