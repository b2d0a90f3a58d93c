package org.tallywall.reports.svg;

import org.tallywall.reports.figure.Figure;
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
    return Markup.xml(alone(figure, figure.caption().stem()));
  }

  /**
   * Draws a figure as an element, to stand in a page.
   *
   * @param figure the figure
   * @param ids how the identifiers in it begin: a word that nothing else in the page begins with
   * @return the element {@code svg}
   */
  public static Element element(Figure figure, String ids) {
    return element(figure, ids, Format.PAGE);
  }

  /**
   * Draws a figure as an element, to stand in a page on a narrow screen.
   *
   * @param figure the figure
   * @param ids how the identifiers in it begin: a word that nothing else in the page begins with
   * @return the element {@code svg}
   */
  public static Element narrow(Figure figure, String ids) {
    return element(figure, ids, Format.NARROW);
  }

  /** Draws a figure for a file of its own. */
  static Element alone(Figure figure, String ids) {
    return element(figure, ids, Format.ALONE);
  }

  private static Element element(Figure figure, String ids, Format format) {
    Sheet sheet = new Sheet(figure.caption(), ids, format);
    figure.match(new Drawings(sheet)).run();
    return sheet.finished();
  }
}
