package org.tallywall.reports.figure;

import java.util.List;
import java.util.Optional;

/**
 * Dots with their ranges, a row for each thing compared, in one or two panels side by side: levels,
 * differences, or levels beside differences.
 *
 * @param caption what stands around it
 * @param rowsName what the rows are, such as "way of playing"
 * @param panels one or two
 * @param rows at least one; each with a spot for every panel
 */
public record IntervalPlot(Caption caption, String rowsName, List<Panel> panels, List<Row> rows)
    implements Figure {

  /** The most panels that fit side by side. */
  private static final int MOST_PANELS = 2;

  /**
   * Takes the figure and copies its lists.
   *
   * @param caption what stands around it
   * @param rowsName what the rows are
   * @param panels one or two
   * @param rows at least one
   * @throws IllegalArgumentException if there is no row, or a number of panels or spots is wrong
   */
  public IntervalPlot {
    panels = List.copyOf(panels);
    rows = List.copyOf(rows);
    String where = caption.where();
    Demand.words(where, "a name for its rows", rowsName);
    Demand.that(!panels.isEmpty(), where, "there is no panel");
    Demand.that(panels.size() <= MOST_PANELS, where, "two panels fit, no more");
    Demand.that(!rows.isEmpty(), where, "there is no row");
    for (Row row : rows) {
      boolean fits = row.spots().size() == panels.size();
      Demand.that(fits, where, "row " + row.label() + " needs a spot for every panel");
    }
  }

  /**
   * A field with an axis of its own.
   *
   * @param axis what is measured
   * @param scale level or difference
   * @param zeroWords on a scale of differences, what 0 means, such as "as often as nearest"; else
   *     empty
   */
  public record Panel(Axis axis, Scale scale, String zeroWords) {
    /**
     * Makes a panel of levels.
     *
     * @param axis what is measured
     * @return the panel
     */
    public static Panel levels(Axis axis) {
      return new Panel(axis, Scale.LEVEL, "");
    }

    /**
     * Makes a panel of differences.
     *
     * @param axis what is measured
     * @param zeroWords what 0 means
     * @return the panel
     */
    public static Panel differences(Axis axis, String zeroWords) {
      return new Panel(axis, Scale.DIFFERENCE, zeroWords);
    }
  }

  /**
   * One thing compared.
   *
   * @param label its name
   * @param standing whether the others are compared with it
   * @param spots one for every panel
   */
  public record Row(String label, Standing standing, List<Spot> spots) {
    /**
     * Takes a row and copies its list.
     *
     * @param label its name
     * @param standing whether the others are compared with it
     * @param spots one for every panel
     * @throws IllegalArgumentException if the name is missing
     */
    public Row {
      Demand.words("a row", "a name", label);
      spots = List.copyOf(spots);
    }
  }

  /**
   * What a row shows in a panel.
   *
   * @param estimate the dot and its range, or none
   * @param words what stands there instead if there is none
   */
  public record Spot(Optional<PlotValue> estimate, String words) {
    /**
     * Makes a spot with a dot.
     *
     * @param estimate the number and its range
     * @return the spot
     */
    public static Spot of(PlotValue estimate) {
      return new Spot(Optional.of(estimate), "");
    }

    /**
     * Makes a spot without a dot.
     *
     * @param words what stands there instead
     * @return the spot
     */
    public static Spot words(String words) {
      return new Spot(Optional.empty(), words);
    }
  }

  @Override
  public <R> R match(Cases<R> cases) {
    return cases.intervals(this);
  }
}
