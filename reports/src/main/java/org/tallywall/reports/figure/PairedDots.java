package org.tallywall.reports.figure;

import java.util.List;
import java.util.OptionalDouble;

/**
 * Two numbers in each row, a dot and a diamond with a bar between them, and more about the row as
 * text at the right.
 *
 * @param caption what stands around it
 * @param axis what both numbers are measured in
 * @param rowsName what the rows are
 * @param first what the dot is
 * @param second what the diamond is
 * @param further headings of the texts at the right, at most three
 * @param rows at least one
 */
public record PairedDots(
    Caption caption,
    Axis axis,
    String rowsName,
    String first,
    String second,
    List<String> further,
    List<Row> rows)
    implements Figure {

  private static final int MOST_TEXTS = 3;

  /**
   * Takes the figure and copies its lists.
   *
   * @param caption what stands around it
   * @param axis what both numbers are measured in
   * @param rowsName what the rows are
   * @param first what the dot is
   * @param second what the diamond is
   * @param further headings of the texts at the right
   * @param rows at least one
   * @throws IllegalArgumentException if there is no row, or a row has too many or too few texts
   */
  public PairedDots {
    further = List.copyOf(further);
    rows = List.copyOf(rows);
    String where = caption.where();
    Demand.words(where, "a name for its rows", rowsName);
    Demand.words(where, "words for the dot", first);
    Demand.words(where, "words for the diamond", second);
    Demand.that(further.size() <= MOST_TEXTS, where, "at most three texts stand at the right");
    Demand.that(!rows.isEmpty(), where, "there is no row");
    for (Row row : rows) {
      boolean fits = row.further().size() == further.size();
      Demand.that(fits, where, "row " + row.label() + " needs a text for every heading");
    }
  }

  /**
   * One row.
   *
   * @param label its name
   * @param first where the dot stands, or nowhere
   * @param second where the diamond stands, or nowhere
   * @param further one text for every heading; may be empty
   */
  public record Row(
      String label, OptionalDouble first, OptionalDouble second, List<String> further) {
    /**
     * Takes a row and copies its list.
     *
     * @param label its name
     * @param first where the dot stands, or nowhere
     * @param second where the diamond stands, or nowhere
     * @param further one text for every heading
     * @throws IllegalArgumentException if the name is missing or a number is not finite
     */
    public Row {
      Demand.words("a row", "a name", label);
      first.ifPresent(value -> Demand.finite("row " + label, value));
      second.ifPresent(value -> Demand.finite("row " + label, value));
      further = List.copyOf(further);
    }
  }

  @Override
  public <R> R match(Cases<R> cases) {
    return cases.dots(this);
  }
}
