package org.tallywall.reports.png;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.tallywall.reports.SampleFigures;
import org.tallywall.reports.figure.Figure;
import org.tallywall.reports.svg.SvgWriter;

class PngWriterTest {
  private static final Pattern WRITING = Pattern.compile("ImageIO\\.write\\([^;]*, (\\w+)\\)");
  private static final String WITHOUT_FONTS =
      "This Java runtime cannot draw PNG pictures, because its libraries for drawing or its fonts are"
          + " missing; the same pictures are there as SVG.";

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
    assertThat(SvgWriter.text(figure)).contains(" height=\"" + image.getHeight() + "\" viewBox=");
    assertThat(image.getRGB(0, 0)).isEqualTo(0xFFFFFFFF);
    assertThat(colors(image)).hasSizeGreaterThan(16);
  }

  /** A runtime of the modules that the rest of the program needs, without the one that draws. */
  @Test
  void runtime_withoutDrawing_saysSoAndGoesOn() throws Exception {
    assertThat(drawnWith("--limit-modules", "java.base,java.xml,java.logging"))
        .isEqualTo(
            "This Java runtime cannot draw PNG pictures, because it lacks the module java.desktop;"
                + " the same pictures are there as SVG.");
  }

  /** A folder for temporary files that is missing, full or locked is nothing to a picture. */
  @Test
  void picture_drawn_needsNoTemporaryFile() throws Exception {
    String said = drawnWith("-Djava.io.tmpdir=/no/such/folder");
    // Newer Java warns of the folder first.
    assertThat(said.substring(said.indexOf('\n') + 1)).isIn("drawn", WITHOUT_FONTS);
  }

  /**
   * Written to a plain stream, a picture goes by a temporary file, unless all the process forgoes
   * it.
   */
  @Test
  void source_hasNoPictureWrittenToAPlainStream() throws IOException {
    try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
      List<Path> sources = files.filter(file -> file.toString().endsWith(".java")).toList();
      assertThat(sources).isNotEmpty();
      for (Path source : sources) {
        String text = Files.readString(source);
        assertThat(text).as(source.toString()).doesNotContain("setUseCache");
        WRITING
            .matcher(text)
            .results()
            .forEach(hit -> assertThat(hit.group(1)).as(source.toString()).isEqualTo("memory"));
      }
    }
  }

  private static String drawnWith(String... options) throws Exception {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of(options));
    command.addAll(List.of("-cp", System.getProperty("java.class.path"), DrawOnce.class.getName()));
    Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(process.waitFor()).as(said).isZero();
    return said.strip();
  }

  private static Set<Integer> colors(BufferedImage image) {
    Set<Integer> colors = new HashSet<>();
    for (int y = 0; y < image.getHeight(); y += 3) {
      for (int x = 0; x < image.getWidth(); x++) {
        colors.add(image.getRGB(x, y));
      }
    }
    return colors;
  }
}
