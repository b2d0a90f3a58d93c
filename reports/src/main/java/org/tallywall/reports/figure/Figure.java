package org.tallywall.reports.figure;

/** A figure of any kind. */
public sealed interface Figure
    permits BandCurve, CalibrationPlot, IntervalPlot, PairedDots, PartBars, SquareMap {

  /**
   * Tells what stands around the drawing.
   *
   * @return file name, title, text alternative and notes
   */
  Caption caption();
}
