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
  /** From this many columns on, a table is set in smaller type. */
  private static final int WIDE = 8;

  /** From this many columns on, a short table is shown row by row on a phone. */
  private static final int BROAD = 4;

  /** The most rows of a short table. */
  private static final int SHORT = 12;

  private final Table table;
  private final Handles handles;
  private final String id;
  private final boolean[] right;

  GridWriter(Part.Grid grid, String id) {
    this.table = grid.table();
    this.handles = grid.handles();
    this.id = id;
    this.right = new boolean[table.columns().size()];
    for (int i = 0; i < right.length; i++) {
      right[i] = table.alignsRight(i);
    }
  }

  Element element() {
    Element grid = Element.of("table").add(caption());
    Element scroll = Element.of("div").with("class", "scroll").with("tabindex", "0");
    scroll.with("role", "region").with("aria-labelledby", id).add(grid.add(head()).add(body()));
    Element box = Element.of("div").with("class", kind());
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

  private String kind() {
    int columns = table.columns().size();
    return "grid" + (columns >= WIDE ? " wide" : "") + (isFolded() ? " cards" : "");
  }

  /** Whether a phone shows every row as a card, with the heading in front of each cell. */
  private boolean isFolded() {
    return handles != Handles.SORT_AND_FILTER
        && table.columns().size() >= BROAD
        && table.rows().size() <= SHORT;
  }

  /** The title stays in sight and within the page while a wide table is moved below it. */
  private Element caption() {
    return Element.of("caption").with("id", id).add(Element.of("span", table.title()));
  }

  private Element head() {
    Element row = Element.of("tr");
    for (int i = 0; i < table.columns().size(); i++) {
      Column column = table.columns().get(i);
      Element cell = Element.of("th", column.heading()).with("scope", "col");
      String kind = kind(i);
      row.add(kind.isEmpty() ? cell : cell.with("class", kind));
    }
    return Element.of("thead").add(row);
  }

  private Element body() {
    Element body = Element.of("tbody");
    List<List<String>> texts = CellText.rows(table);
    for (int i = 0; i < texts.size(); i++) {
      Element row = Element.of("tr");
      for (int j = 0; j < table.columns().size(); j++) {
        row.add(cell(table.rows().get(i).get(j), texts.get(i).get(j), j));
      }
      body.add(row);
    }
    return body;
  }

  private Element cell(Cell cell, String text, int place) {
    if (text.isEmpty()) {
      return Element.of("td");
    }
    Element element =
        place == 0 && !table.columns().get(0).type().isNumber()
            ? Element.of("th", text).with("scope", "row")
            : Element.of("td", text);
    String kind = kind(place);
    if (!kind.isEmpty()) {
      element.with("class", kind);
    }
    String full = kind.equals("limit") ? digits(text) : full(cell);
    if (!full.isEmpty()) {
      element.with("data-value", full);
    }
    return isFolded() && place > 0
        ? element.with("data-head", table.columns().get(place).heading())
        : element;
  }

  /** Numbers, which sort by their value; words that are read from the right; other words. */
  private String kind(int column) {
    if (table.columns().get(column).type().isNumber()) {
      return "number";
    }
    return right[column] ? "limit" : "";
  }

  /** The number in words that are all number, to sort by. */
  private static String digits(String text) {
    return text.replace('\u2212', '-').replaceAll("[^0-9.-]", "");
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
