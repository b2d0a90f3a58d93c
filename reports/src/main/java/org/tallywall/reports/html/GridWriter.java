package org.tallywall.reports.html;

import java.util.List;
import org.tallywall.reports.document.Handles;
import org.tallywall.reports.document.Part;
import org.tallywall.reports.markup.Element;
import org.tallywall.reports.table.Cell;
import org.tallywall.reports.table.CellText;
import org.tallywall.reports.table.Column;
import org.tallywall.reports.table.NumberText;
import org.tallywall.reports.table.Table;

/**
 * Makes the elements of one table. People read rounded numbers; every cell of a number carries it
 * in full for sorting.
 */
final class GridWriter {
  /** From so many columns on, a table is printed across the paper's long side. */
  private static final int WIDE = 9;

  private final Table table;
  private final Handles handles;
  private final String id;

  GridWriter(Part.Grid grid, String id) {
    this.table = grid.table();
    this.handles = grid.handles();
    this.id = id;
  }

  Element element() {
    Element grid = Element.of("table").add(caption());
    Element scroll = Element.of("div").with("class", "scroll").with("tabindex", "0");
    scroll.with("role", "region").with("aria-labelledby", id).add(grid.add(head()).add(body()));
    boolean wide = table.columns().size() >= WIDE;
    Element box = Element.of("div").with("class", wide ? "grid wide" : "grid");
    if (handles != Handles.COPY) {
      box.with("data-sort", "");
    }
    if (handles == Handles.SORT_AND_FILTER) {
      box.with("data-filter", "");
    }
    box.add(scroll);
    for (String note : table.notes()) {
      box.add(Element.of("p", note).with("class", "table-note"));
    }
    return handles == Handles.COPY ? box : box.add(meanings());
  }

  /** The title stays in sight and within the page while a wide table is moved below it. */
  private Element caption() {
    return Element.of("caption").with("id", id).add(Element.of("span", table.title()));
  }

  private Element head() {
    Element row = Element.of("tr");
    for (Column column : table.columns()) {
      Element cell = Element.of("th", column.heading()).with("scope", "col");
      row.add(column.type().isNumber() ? cell.with("class", "number") : cell);
    }
    return Element.of("thead").add(row);
  }

  private Element body() {
    Element body = Element.of("tbody");
    List<List<String>> texts = CellText.rows(table);
    for (int i = 0; i < texts.size(); i++) {
      Element row = Element.of("tr");
      for (int j = 0; j < table.columns().size(); j++) {
        row.add(cell(table.columns().get(j), table.rows().get(i).get(j), texts.get(i).get(j), j));
      }
      body.add(row);
    }
    return body;
  }

  private static Element cell(Column column, Cell cell, String text, int place) {
    if (!column.type().isNumber()) {
      if (text.isEmpty()) {
        return Element.of("td");
      }
      return place == 0 ? Element.of("th", text).with("scope", "row") : Element.of("td", text);
    }
    Element number = Element.of("td").with("class", "number");
    String full = full(cell);
    return full.isEmpty() ? number : number.with("data-value", full).text(text);
  }

  private static String full(Cell cell) {
    if (cell instanceof Cell.Whole whole) {
      return Long.toString(whole.value());
    }
    if (cell instanceof Cell.Decimal decimal) {
      return NumberText.of(decimal.value());
    }
    return cell instanceof Cell.Interval interval ? NumberText.of(interval.estimate()) : "";
  }

  private Element meanings() {
    Element list = Element.of("dl");
    for (Column column : table.columns()) {
      list.add(Element.of("dt", column.heading()));
      list.add(Element.of("dd", column.meaning()));
    }
    Element fold = Element.of("details").with("class", "meanings");
    return fold.add(Element.of("summary", "What the columns mean")).add(list);
  }
}
