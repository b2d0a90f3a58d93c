package org.tallywall.reports.svg;

import org.tallywall.reports.figure.BandCurve;
import org.tallywall.reports.figure.CalibrationPlot;
import org.tallywall.reports.figure.Figure;
import org.tallywall.reports.figure.IntervalPlot;
import org.tallywall.reports.figure.PairedDots;
import org.tallywall.reports.figure.PartBars;
import org.tallywall.reports.figure.SquareMap;
import org.tallywall.reports.markup.Element;
import org.tallywall.reports.markup.Markup;

/**
 * Draws a figure. The picture is as high as its rows need; one of up to {@link #SLIDE_HEIGHT} fills
 * a slide of sixteen to nine without being made smaller.
 */
public final class SvgWriter {
  /** The width of every picture, in its own units and in pixels. */
  public static final int WIDTH = 1600;

  /** The height of a slide that is {@link #WIDTH} wide, in the same units. */
  public static final int SLIDE_HEIGHT = 900;

  /** The size of the smallest text, in the same units: 14.4 points on a slide of 13⅓ inches. */
  public static final int LEAST_TEXT = 24;

  private SvgWriter() {}

  /**
   * Draws a figure as a file.
   *
   * @param figure the figure
   * @return lines, each ended by {@code \n}
   */
  public static String text(Figure figure) {
    return Markup.xml(element(figure, figure.caption().stem()));
  }

  /**
   * Draws a figure as an element, to stand in a page.
   *
   * @param figure the figure
   * @param ids how the identifiers in it begin: a word that nothing else in the page begins with
   * @return the element {@code svg}
   */
  public static Element element(Figure figure, String ids) {
    Sheet sheet = new Sheet(figure.caption(), ids);
    if (figure instanceof IntervalPlot plot) {
      new IntervalDrawing(plot, sheet).draw();
    } else if (figure instanceof PartBars bars) {
      new PartDrawing(bars, sheet).draw();
    } else if (figure instanceof BandCurve curve) {
      new CurveDrawing(curve, sheet).draw();
    } else if (figure instanceof SquareMap map) {
      new MapDrawing(map, sheet).draw();
    } else if (figure instanceof PairedDots dots) {
      new PairDrawing(dots, sheet).draw();
    } else if (figure instanceof CalibrationPlot plot) {
      new CalibrationDrawing(plot, sheet).draw();
    }
    return sheet.finished();
  }
}
