package org.tallywall.reports.svg;

import org.tallywall.reports.figure.BandCurve;
import org.tallywall.reports.figure.CalibrationPlot;
import org.tallywall.reports.figure.ExactLines;
import org.tallywall.reports.figure.Figure;
import org.tallywall.reports.figure.IntervalPlot;
import org.tallywall.reports.figure.PairedDots;
import org.tallywall.reports.figure.PartBars;
import org.tallywall.reports.figure.SquareMap;

/**
 * How each kind of figure is drawn.
 *
 * @param sheet what is drawn on
 */
record Drawings(Sheet sheet) implements Figure.Cases<Runnable> {
  @Override
  public Runnable curve(BandCurve curve) {
    return new CurveDrawing(curve, sheet)::draw;
  }

  @Override
  public Runnable calibration(CalibrationPlot calibration) {
    return new CalibrationDrawing(calibration, sheet)::draw;
  }

  @Override
  public Runnable exact(ExactLines lines) {
    return new ExactDrawing(lines, sheet)::draw;
  }

  @Override
  public Runnable intervals(IntervalPlot intervals) {
    return new IntervalDrawing(intervals, sheet)::draw;
  }

  @Override
  public Runnable dots(PairedDots dots) {
    return new PairDrawing(dots, sheet)::draw;
  }

  @Override
  public Runnable bars(PartBars bars) {
    return new PartDrawing(bars, sheet)::draw;
  }

  @Override
  public Runnable map(SquareMap map) {
    return new MapDrawing(map, sheet)::draw;
  }
}
