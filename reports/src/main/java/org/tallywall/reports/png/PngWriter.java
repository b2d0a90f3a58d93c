package org.tallywall.reports.png;

import org.tallywall.reports.figure.Figure;
import org.tallywall.reports.svg.SvgWriter;

/**
 * Draws a figure as a PNG picture, {@link SvgWriter#WIDTH} pixels wide. A Java runtime without the
 * module {@code java.desktop}, without its drawing libraries or without any font cannot draw; that
 * is an answer, not an error.
 */
public final class PngWriter {
  private PngWriter() {}

  /**
   * Draws a figure.
   *
   * @param figure the figure
   * @return the picture, or why there is none
   */
  public static PngResult draw(Figure figure) {
    return draw(SvgWriter.text(figure));
  }

  /**
   * Draws a picture of {@link SvgWriter}.
   *
   * @param svg the text of the picture
   * @return the picture, or why there is none
   */
  public static PngResult draw(String svg) {
    if (ModuleLayer.boot().findModule("java.desktop").isEmpty()) {
      return notDrawn("it lacks the module java.desktop");
    }
    try {
      return new PngResult.Drawn(Raster.bytes(svg));
    } catch (LinkageError | InternalError e) {
      return notDrawn("its libraries for drawing or its fonts are missing");
    }
  }

  private static PngResult notDrawn(String cause) {
    String start = "This Java runtime cannot draw PNG pictures, because ";
    return new PngResult.NotDrawn(start + cause + "; the same pictures are there as SVG.");
  }
}
