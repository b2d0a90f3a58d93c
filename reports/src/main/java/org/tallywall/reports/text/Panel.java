package org.tallywall.reports.text;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * Columns that stand side by side on a console. A table that is too wide becomes several panels,
 * each of which begins with the first column, so that a row can be told in every one.
 *
 * @param columns numbers of the table's columns, from 0
 * @param widths their widths in letters
 */
record Panel(List<Integer> columns, List<Integer> widths) {
  /** Letters between two columns. */
  static final int GAP = 2;

  /**
   * Cuts a table into as few panels as this goes from left to right.
   *
   * @param least the smallest width at which each column can be read
   * @param full the width at which no cell of the column needs a second line
   * @param room the width of the console
   */
  static List<Panel> cut(List<Integer> least, List<Integer> full, int room) {
    List<Panel> panels = new ArrayList<>();
    List<Integer> columns = new ArrayList<>(List.of(0));
    int used = least.get(0);
    for (int i = 1; i < least.size(); i++) {
      if (used + GAP + least.get(i) > room && columns.size() > 1) {
        panels.add(fit(columns, least, full, room));
        columns = new ArrayList<>(List.of(0));
        used = least.get(0);
      }
      columns.add(i);
      used += GAP + least.get(i);
    }
    panels.add(fit(columns, least, full, room));
    return panels;
  }

  /** Narrows the widest column until all fit, first those that may wrap, in the end any. */
  private static Panel fit(
      List<Integer> columns, List<Integer> least, List<Integer> full, int room) {
    List<Integer> widths = new ArrayList<>(columns.stream().map(full::get).toList());
    int over = widths.stream().mapToInt(w -> w + GAP).sum() - GAP - room;
    for (; over > 0; over--) {
      int widest = -1;
      for (int i = 0; i < widths.size(); i++) {
        boolean mayWrap = widths.get(i) > least.get(columns.get(i));
        if (mayWrap && (widest < 0 || widths.get(i) > widths.get(widest))) {
          widest = i;
        }
      }
      int narrowed = widest < 0 ? widths.indexOf(Collections.max(widths)) : widest;
      widths.set(narrowed, widths.get(narrowed) - 1);
    }
    return new Panel(List.copyOf(columns), List.copyOf(widths));
  }
}
