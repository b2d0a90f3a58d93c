package org.tallywall.reports.figure;

import java.util.List;

/**
 * A curve through estimates at the values of a setting, with their ranges as bars and as a band.
 *
 * @param caption what stands around it
 * @param across the setting
 * @param up what is measured
 * @param scale level or difference
 * @param zeroWords on a scale of differences, what 0 means; else empty
 * @param points at least two, from left to right
 */
public record BandCurve(
    Caption caption, Axis across, Axis up, Scale scale, String zeroWords, List<Point> points)
    implements Figure {

  /**
   * Takes the figure and copies its list.
   *
   * @param caption what stands around it
   * @param across the setting
   * @param up what is measured
   * @param scale level or difference
   * @param zeroWords what 0 means, or empty
   * @param points at least two
   * @throws IllegalArgumentException if there are too few points or one is not right of the last
   */
  public BandCurve {
    points = List.copyOf(points);
    Demand.that(points.size() >= 2, caption.where(), "a curve needs two points");
    for (int i = 1; i < points.size(); i++) {
      boolean right = points.get(i).at() > points.get(i - 1).at();
      Demand.that(right, caption.where(), "points go from left to right");
    }
  }

  /**
   * A point of the curve.
   *
   * @param at where it stands across, finite; settings that are no numbers take 0, 1, 2 …
   * @param label the setting in words or digits
   * @param standing whether the others are compared with it
   * @param estimate the number and its range; for the one compared with, all three are 0
   */
  public record Point(double at, String label, Standing standing, PlotValue estimate) {
    /**
     * Takes a point.
     *
     * @param at where it stands across
     * @param label the setting
     * @param standing whether the others are compared with it
     * @param estimate the number and its range
     * @throws IllegalArgumentException if the place is not finite or the label is missing
     */
    public Point {
      Demand.finite("a point", at);
      Demand.words("a point", "a label", label);
    }
  }

  @Override
  public <R> R match(Cases<R> cases) {
    return cases.curve(this);
  }
}
