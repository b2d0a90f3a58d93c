package org.tallywall.reports.papers;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.reports.document.Handles;
import org.tallywall.reports.document.Part;
import org.tallywall.reports.table.CellText;
import org.tallywall.reports.table.Table;

/** Tables on paper; of one without end the beginning. */
final class Grids {
  private static final int MOST_ROWS = 2_000;

  private Grids() {}

  /** The table as a part of a document. */
  static Part.Grid of(Table whole, Handles handles) {
    Table table = whole.withoutEmptyColumns();
    int rows = table.rows().size();
    if (rows <= MOST_ROWS) {
      return new Part.Grid(table, handles);
    }
    List<String> notes = new ArrayList<>(table.notes());
    notes.add(
        "These are the first %s of %s rows; the file has them all."
            .formatted(grouped(MOST_ROWS), grouped(rows)));
    return new Part.Grid(
        new Table(
            table.stem(),
            table.title(),
            table.columns(),
            table.rows().subList(0, MOST_ROWS),
            notes),
        handles);
  }

  private static String grouped(int number) {
    return CellText.grouped(Integer.toString(number));
  }
}
