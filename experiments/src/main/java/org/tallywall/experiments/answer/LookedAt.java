package org.tallywall.experiments.answer;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.tallywall.experiments.stats.Method;
import org.tallywall.reports.table.Cell;
import org.tallywall.reports.table.Table;

/** Tables whose ranges hold at every look: the methods say so. */
final class LookedAt {
  private static final String HOLDS = ", at a level that holds at every look";
  private static final Set<String> METHODS =
      Arrays.stream(Method.values()).map(Method::text).collect(Collectors.toSet());

  private LookedAt() {}

  /** The table with the words behind each method by which a range was computed. */
  static Table named(Table table) {
    List<List<Cell>> rows = new ArrayList<>();
    for (List<Cell> row : table.rows()) {
      List<Cell> named = new ArrayList<>();
      for (int at = 0; at < row.size(); at++) {
        boolean method = table.columns().get(at).name().endsWith("method");
        named.add(method ? named(row.get(at)) : row.get(at));
      }
      rows.add(named);
    }
    return new Table(table.stem(), table.title(), table.columns(), rows, table.notes());
  }

  private static Cell named(Cell method) {
    return method instanceof Cell.Text text && METHODS.contains(text.value())
        ? Cell.text(text.value() + HOLDS)
        : method;
  }
}
