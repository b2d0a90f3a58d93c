package org.tallywall.reports.png;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.tallywall.reports.SampleFigures;
import org.tallywall.reports.figure.Figure;
import org.tallywall.reports.svg.SvgWriter;

class PngWriterTest {

  static List<Figure> figures() {
    return SampleFigures.all();
  }

  /**
   * A machine without fonts cannot draw; there the answer must say so. Where it can, the picture is
   * as large as the drawing, white at its corner, and not white all over.
   */
  @ParameterizedTest
  @MethodSource("figures")
  void figure_drawn_isAsWideAsASlide(Figure figure) throws IOException {
    PngResult result = PngWriter.draw(figure);
    if (result instanceof PngResult.NotDrawn not) {
      assertThat(not.reason()).contains("cannot draw PNG pictures").contains("as SVG");
      return;
    }
    byte[] bytes = ((PngResult.Drawn) result).bytes();
    BufferedImage image = ImageIO.read(new ByteArrayInputStream(bytes));
    assertThat(image.getWidth()).isEqualTo(SvgWriter.WIDTH);
    String height = SvgWriter.element(figure, "x").attributes().get("height");
    assertThat(image.getHeight()).isEqualTo(Integer.parseInt(height));
    assertThat(image.getRGB(0, 0)).isEqualTo(0xFFFFFFFF);
    assertThat(colours(image)).hasSizeGreaterThan(16);
  }

  /** A runtime of the modules that the rest of the program needs, without the one that draws. */
  @Test
  void runtime_withoutDrawing_saysSoAndGoesOn() throws Exception {
    ProcessBuilder builder =
        new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "--limit-modules",
            "java.base,java.xml,java.logging",
            "-cp",
            System.getProperty("java.class.path"),
            DrawOnce.class.getName());
    Process process = builder.redirectErrorStream(true).start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(process.waitFor()).as(said).isZero();
    assertThat(said.strip())
        .isEqualTo(
            "This Java runtime cannot draw PNG pictures, because it lacks the module java.desktop;"
                + " the same pictures are there as SVG.");
  }

  private static Set<Integer> colours(BufferedImage image) {
    Set<Integer> colours = new HashSet<>();
    for (int y = 0; y < image.getHeight(); y += 3) {
      for (int x = 0; x < image.getWidth(); x++) {
        colours.add(image.getRGB(x, y));
      }
    }
    return colours;
  }
}
