package org.tallywall.reports.markdown;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.tallywall.reports.table.Cell;
import org.tallywall.reports.table.Column;
import org.tallywall.reports.table.Table;
import org.tallywall.reports.table.TableBuilder;

/** The page that lies beside comma-separated files and explains every column of each of them. */
public final class ColumnsPage {
  private static final String OPENING =
      """
      # What the columns mean

      Every file begins with a line of column names. Numbers keep all their digits and have a point
      before the decimals; a share of 0.25 is 25 in 100. An empty field means that there is no value.
      A text that a spreadsheet would take for a formula has an apostrophe in front, and a letter that
      nobody sees, a line break among them, is written as its number, as in \\\\u{a}.
      """;

  private ColumnsPage() {}

  /**
   * Gives the page.
   *
   * @param tables the tables of the files, in the order in which to explain them; rows do not
   *     matter
   * @return Markdown lines, each ended by {@code \n}
   * @throws IllegalArgumentException if two tables have the same file name
   */
  public static String text(List<Table> tables) {
    StringBuilder page = new StringBuilder(OPENING);
    Set<String> seen = new HashSet<>();
    for (Table table : tables) {
      if (!seen.add(table.stem())) {
        throw new IllegalArgumentException("two tables are both named " + table.stem());
      }
      page.append("\n## ").append(table.stem()).append(".csv\n\n");
      page.append(MarkdownText.paragraph(table.title())).append("\n\n");
      page.append(MarkdownWriter.grid(explained(table)));
    }
    return page.toString();
  }

  private static Table explained(Table table) {
    TableBuilder rows =
        Table.builder(table.stem(), table.title())
            .columns(
                Column.text("column", "The name in the header row."),
                Column.text("unit", "The unit of its numbers."),
                Column.text("meaning", "What it tells."));
    for (Column column : table.spread().columns()) {
      rows.row(Cell.text(column.name()), Cell.text(column.unit()), Cell.text(column.meaning()));
    }
    return rows.build();
  }
}
