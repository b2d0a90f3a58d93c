package org.tallywall.reports.figure;

import java.util.List;

/**
 * What was foretold against what came: points with ranges beside the line on which both agree. Both
 * axes go from 0 to the same end.
 *
 * @param caption what stands around it
 * @param foretold what was foretold, and its unit
 * @param seen what came, in the same unit
 * @param counted what the counts at the points count, such as "games"
 * @param points at least one, from left to right
 */
public record CalibrationPlot(
    Caption caption, Axis foretold, Axis seen, String counted, List<Point> points)
    implements Figure {

  /**
   * Takes the figure and copies its list.
   *
   * @param caption what stands around it
   * @param foretold what was foretold
   * @param seen what came
   * @param counted what the counts count
   * @param points at least one
   * @throws IllegalArgumentException if there is no point, or one is not right of the last
   */
  public CalibrationPlot {
    points = List.copyOf(points);
    Demand.words(caption.where(), "words for what is counted", counted);
    Demand.that(!points.isEmpty(), caption.where(), "there is no point");
    for (int i = 1; i < points.size(); i++) {
      boolean right = points.get(i).foretold() > points.get(i - 1).foretold();
      Demand.that(right, caption.where(), "points go from left to right");
    }
  }

  /**
   * Forecasts of about the same size, taken together.
   *
   * @param foretold their mean, finite, at least 0
   * @param seen what came of them, and its range
   * @param count how many they were
   */
  public record Point(double foretold, PlotValue seen, long count) {
    /**
     * Takes a point.
     *
     * @param foretold the mean forecast
     * @param seen what came of them
     * @param count how many they were
     * @throws IllegalArgumentException if the forecast is not finite or below 0, or there was none
     */
    public Point {
      Demand.finite("a point", foretold);
      Demand.that(foretold >= 0, "a point", "a forecast is at least 0");
      Demand.that(count > 0, "a point", "there must be a forecast");
    }
  }

  @Override
  public <R> R match(Cases<R> cases) {
    return cases.calibration(this);
  }
}
