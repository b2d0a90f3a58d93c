package org.tallywall.reports.markdown;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.tallywall.reports.table.CellText;
import org.tallywall.reports.table.Column;
import org.tallywall.reports.table.Table;

/**
 * Writes a table for people as Markdown, in the table syntax of GitHub Flavored Markdown (section
 * 4.10): title, grid with numbers at the right, notes. Numbers are rounded as {@link CellText}
 * says, and whatever a name or a note holds, it stands as text.
 */
public final class MarkdownWriter {
  private MarkdownWriter() {}

  /**
   * Gives title, grid and notes, with empty lines between them.
   *
   * @param table the table
   * @param level the level of the title's heading, 1 to 6
   * @return lines, each ended by {@code \n}
   * @throws IllegalArgumentException if there is no heading of that level
   */
  public static String text(Table table, int level) {
    if (level < 1 || level > 6) {
      throw new IllegalArgumentException("a heading's level goes from 1 to 6, not " + level);
    }
    String notes =
        table.notes().stream()
            .map(note -> "\n" + MarkdownText.paragraph(note) + "\n")
            .collect(Collectors.joining());
    return "#".repeat(level)
        + (" " + MarkdownText.inLine(table.title()) + "\n\n")
        + grid(table)
        + notes;
  }

  /**
   * Gives the grid alone.
   *
   * @param table the table
   * @return a line of headings, a line of rules, and a line for each row, each ended by {@code \n}
   */
  public static String grid(Table table) {
    List<Column> columns = table.columns();
    StringBuilder out = new StringBuilder();
    out.append(line(columns.stream().map(Column::heading).toList()));
    out.append(
        IntStream.range(0, columns.size())
            .mapToObj(column -> table.alignsRight(column) ? "---:" : "---")
            .collect(Collectors.joining(" | ", "| ", " |\n")));
    for (List<String> row : CellText.rows(table)) {
      out.append(line(row));
    }
    return out.toString();
  }

  private static String line(List<String> cells) {
    return cells.stream()
        .map(MarkdownText::inLine)
        .collect(Collectors.joining(" | ", "| ", " |\n"));
  }
}
