package org.tallywall.reports.figure;

/**
 * A figure of any kind. Whoever draws says in {@link Cases} how each kind is drawn, so that the
 * compiler names every place that a new kind has to be added to.
 */
public sealed interface Figure
    permits BandCurve, CalibrationPlot, ExactLines, IntervalPlot, PairedDots, PartBars, SquareMap {
  /**
   * What becomes of a figure of each kind.
   *
   * @param <R> what it becomes
   */
  interface Cases<R> {
    /**
     * What becomes of a curve within a band.
     *
     * @param curve the figure
     * @return what it becomes
     */
    R curve(BandCurve curve);

    /**
     * What becomes of a plot of what came true.
     *
     * @param calibration the figure
     * @return what it becomes
     */
    R calibration(CalibrationPlot calibration);

    /**
     * What becomes of lines through exact numbers.
     *
     * @param lines the figure
     * @return what it becomes
     */
    R exact(ExactLines lines);

    /**
     * What becomes of a plot of ranges.
     *
     * @param intervals the figure
     * @return what it becomes
     */
    R intervals(IntervalPlot intervals);

    /**
     * What becomes of pairs of dots.
     *
     * @param dots the figure
     * @return what it becomes
     */
    R dots(PairedDots dots);

    /**
     * What becomes of bars of parts.
     *
     * @param bars the figure
     * @return what it becomes
     */
    R bars(PartBars bars);

    /**
     * What becomes of a map of squares.
     *
     * @param map the figure
     * @return what it becomes
     */
    R map(SquareMap map);
  }

  /**
   * What becomes of this figure.
   *
   * @param cases what becomes of each kind
   * @param <R> what it becomes
   * @return what becomes of this kind
   */
  <R> R match(Cases<R> cases);

  /**
   * Tells what stands around the drawing.
   *
   * @return file name, title, text alternative and notes
   */
  Caption caption();
}
