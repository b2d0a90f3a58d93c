package org.tallywall.reports.text;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.reports.table.CellText;
import org.tallywall.reports.table.Column;
import org.tallywall.reports.table.Table;

/**
 * Writes a table for people as lines of a console, without color: title, headings, a rule, rows
 * with numbers at the right, notes. Numbers are rounded as {@link CellText} says and never cut
 * short. What is too long wraps; a table that is still too wide goes on below, its first column
 * repeated.
 */
public final class TextTable {
  /** The narrowest console, in letters. */
  public static final int LEAST_WIDTH = 40;

  /** A column of words is not narrowed below this, in letters. */
  private static final int LEAST_WORDS = 12;

  private final Table table;
  private final int width;
  private final Lettering lettering;
  private final List<String> headings;
  private final List<List<String>> rows;

  private TextTable(Table table, int width, Lettering lettering) {
    this.table = table;
    this.width = width;
    this.lettering = lettering;
    this.headings = table.columns().stream().map(Column::heading).map(lettering::line).toList();
    this.rows =
        CellText.rows(table).stream()
            .map(row -> row.stream().map(lettering::line).toList())
            .toList();
  }

  /**
   * Writes a table in letters that any console shows.
   *
   * @param table the table
   * @param width the most letters in a line, at least {@link #LEAST_WIDTH}
   * @return lines, each ended by {@code \n}, none longer than {@code width}
   * @throws IllegalArgumentException if the width is too small
   */
  public static String text(Table table, int width) {
    return text(table, width, Lettering.ASCII);
  }

  /**
   * Writes a table.
   *
   * @param table the table
   * @param width the most letters in a line, at least {@link #LEAST_WIDTH}
   * @param lettering which letters the console can show
   * @return lines, each ended by {@code \n}, none longer than {@code width}
   * @throws IllegalArgumentException if the width is too small
   */
  public static String text(Table table, int width, Lettering lettering) {
    if (width < LEAST_WIDTH) {
      throw new IllegalArgumentException(
          "a table needs at least " + LEAST_WIDTH + " letters a line, not " + width);
    }
    return new TextTable(table, width, lettering).lines();
  }

  private String lines() {
    StringBuilder out = new StringBuilder();
    paragraph(out, table.title());
    for (Panel panel : Panel.cut(leastWidths(), fullWidths(), width)) {
      out.append('\n');
      headings(out, panel);
      rows.forEach(row -> row(out, panel, wrapped(panel, row)));
    }
    if (rows.isEmpty()) {
      out.append("(no rows)\n");
    }
    if (!table.notes().isEmpty()) {
      out.append('\n');
      table.notes().forEach(note -> paragraph(out, note));
    }
    return out.toString();
  }

  private void paragraph(StringBuilder out, String text) {
    Wrap.lines(lettering.line(text), width).forEach(line -> out.append(line).append('\n'));
  }

  /** Headings of fewer lines stand low, next to the rule. */
  private void headings(StringBuilder out, Panel panel) {
    List<List<String>> blocks = wrapped(panel, headings);
    int height = height(blocks);
    List<List<String>> low = new ArrayList<>();
    for (List<String> block : blocks) {
      List<String> lines = new ArrayList<>();
      while (lines.size() + block.size() < height) {
        lines.add("");
      }
      lines.addAll(block);
      low.add(lines);
    }
    row(out, panel, low);
    row(out, panel, panel.widths().stream().map(w -> List.of("-".repeat(w))).toList());
  }

  private void row(StringBuilder out, Panel panel, List<List<String>> blocks) {
    int height = height(blocks);
    for (int line = 0; line < height; line++) {
      StringBuilder text = new StringBuilder();
      for (int i = 0; i < blocks.size(); i++) {
        String part = line < blocks.get(i).size() ? blocks.get(i).get(line) : "";
        String blank = " ".repeat(panel.widths().get(i) - Wrap.length(part));
        text.append(i == 0 ? "" : " ".repeat(Panel.GAP));
        text.append(isNumber(panel.columns().get(i)) ? blank + part : part + blank);
      }
      out.append(text.toString().stripTrailing()).append('\n');
    }
  }

  private static List<List<String>> wrapped(Panel panel, List<String> cells) {
    List<List<String>> blocks = new ArrayList<>();
    for (int i = 0; i < panel.columns().size(); i++) {
      blocks.add(Wrap.lines(cells.get(panel.columns().get(i)), panel.widths().get(i)));
    }
    return blocks;
  }

  private static int height(List<List<String>> blocks) {
    return blocks.stream().mapToInt(List::size).max().orElse(0);
  }

  private boolean isNumber(int column) {
    return table.alignsRight(column);
  }

  private List<Integer> fullWidths() {
    List<Integer> widths = new ArrayList<>();
    for (int i = 0; i < headings.size(); i++) {
      int width = Math.max(1, Wrap.longestWord(headings.get(i)));
      for (List<String> row : rows) {
        width = Math.max(width, Wrap.length(row.get(i)));
      }
      widths.add(width);
    }
    return widths;
  }

  private List<Integer> leastWidths() {
    List<Integer> widths = new ArrayList<>(fullWidths());
    for (int i = 0; i < widths.size(); i++) {
      if (!isNumber(i)) {
        widths.set(i, Math.min(widths.get(i), LEAST_WORDS));
      }
    }
    return widths;
  }
}
