package org.tallywall.reports.figure;

import java.util.List;

/**
 * Lines through numbers that are exact and so have no range, over a number that is chosen: chances
 * by draws, draws by tiles in the wall.
 *
 * @param caption what stands around it
 * @param across what is chosen, in whole numbers
 * @param up what comes of it; the axis begins at 0
 * @param lines one to {@link #MOST_LINES}, all over the same numbers
 */
public record ExactLines(Caption caption, Axis across, Axis up, List<Line> lines)
    implements Figure {
  /** The most lines that marks and dashes tell apart. */
  public static final int MOST_LINES = 3;

  /**
   * Takes the figure and copies its list.
   *
   * @param caption what stands around it
   * @param across what is chosen
   * @param up what comes of it
   * @param lines one to {@link #MOST_LINES}
   * @throws IllegalArgumentException if there are too few lines or too many, or they go over
   *     different numbers
   */
  public ExactLines {
    lines = List.copyOf(lines);
    String where = caption.where();
    boolean number = !lines.isEmpty() && lines.size() <= MOST_LINES;
    Demand.that(number, where, "one to " + MOST_LINES + " lines fit");
    List<Integer> first = lines.get(0).across();
    for (Line line : lines) {
      Demand.that(line.across().equals(first), where, "all lines go over the same numbers");
    }
  }

  /**
   * One line.
   *
   * @param name what it is, for the legend
   * @param points at least two, from left to right
   */
  public record Line(String name, List<Point> points) {
    /**
     * Takes a line and copies its list.
     *
     * @param name what it is
     * @param points at least two, from left to right
     * @throws IllegalArgumentException if there are too few points, one is not right of the last,
     *     or the name is missing
     */
    public Line {
      Demand.words("a line", "a name", name);
      points = List.copyOf(points);
      Demand.that(points.size() >= 2, "line " + name, "a line needs two points");
      for (int i = 1; i < points.size(); i++) {
        boolean right = points.get(i).at() > points.get(i - 1).at();
        Demand.that(right, "line " + name, "points go from left to right");
      }
    }

    private List<Integer> across() {
      return points.stream().map(Point::at).toList();
    }
  }

  /**
   * A point of a line.
   *
   * @param at the number chosen
   * @param value what comes of it, finite, at least 0
   */
  public record Point(int at, double value) {
    /**
     * Takes a point.
     *
     * @param at the number chosen
     * @param value what comes of it
     * @throws IllegalArgumentException if the value is not finite or below 0
     */
    public Point {
      Demand.finite("a point", value);
      Demand.that(value >= 0, "a point", "no value is below 0");
    }
  }

  @Override
  public <R> R match(Cases<R> cases) {
    return cases.exact(this);
  }
}
