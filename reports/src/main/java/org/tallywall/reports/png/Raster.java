package org.tallywall.reports.png;

import com.github.weisj.jsvg.SVGDocument;
import com.github.weisj.jsvg.parser.LoaderContext;
import com.github.weisj.jsvg.parser.SVGLoader;
import com.github.weisj.jsvg.renderer.NullPlatformSupport;
import com.github.weisj.jsvg.view.FloatSize;
import com.github.weisj.jsvg.view.ViewBox;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import javax.imageio.ImageIO;
import javax.imageio.stream.ImageOutputStream;
import javax.imageio.stream.MemoryCacheImageOutputStream;
import org.tallywall.reports.svg.SvgWriter;

/** All that touches the drawing classes of the JDK, so that the rest loads without them. */
final class Raster {
  private Raster() {}

  /**
   * Draws a picture as dots, on white.
   *
   * @param svg the picture
   * @return the file
   */
  static byte[] bytes(String svg) {
    InputStream in = new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8));
    SVGDocument document = new SVGLoader().load(in, null, LoaderContext.createDefault());
    if (document == null) {
      throw new IllegalArgumentException("not a picture that can be read");
    }
    FloatSize size = document.size();
    int height = Math.round(SvgWriter.WIDTH * size.height / size.width);
    BufferedImage image = new BufferedImage(SvgWriter.WIDTH, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = image.createGraphics();
    try {
      graphics.setColor(Color.WHITE);
      graphics.fillRect(0, 0, SvgWriter.WIDTH, height);
      hints(graphics);
      ViewBox whole = new ViewBox(SvgWriter.WIDTH, height);
      document.renderWithPlatform(NullPlatformSupport.INSTANCE, graphics, whole);
    } finally {
      graphics.dispose();
    }
    return encoded(image);
  }

  private static void hints(Graphics2D graphics) {
    graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    graphics.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    graphics.setRenderingHint(
        RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
    graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
  }

  /**
   * In memory: given a plain stream, the library would go by a file in the folder for temporary
   * files, which may be missing, full or shut down already.
   */
  private static byte[] encoded(BufferedImage image) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (ImageOutputStream memory = new MemoryCacheImageOutputStream(out)) {
      if (!ImageIO.write(image, "png", memory)) {
        throw new IllegalStateException("this Java runtime cannot write PNG");
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }
}
