package org.tallywall.reports.svg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lengths, widths of text, lines, labels that move apart. */
class LayoutTest {

  @ParameterizedTest
  @CsvSource({"1, 1", "0.125, 0.13", "-0.001, 0", "1600, 1600", "33.30, 33.3", "-2.675, -2.67"})
  void length_written_hasTwoDecimals(double length, String text) {
    assertThat(Units.of(length)).isEqualTo(text);
  }

  /** 28 + 62 + 100 hundredths of 24, by the table. */
  @Test
  void width_ofLetters_isTheirSum() {
    assertThat(TextWidth.of("ia@", Face.SMALL)).isCloseTo(24 * 1.90, within(1e-9));
  }

  @Test
  void width_ofWideLetters_isMore() {
    assertThat(TextWidth.of("雀", Face.PLAIN)).isGreaterThan(TextWidth.of("é", Face.PLAIN));
  }

  @Test
  void words_tooManyForALine_goOnInTheNext() {
    double width = TextWidth.of("the long", Face.SMALL);
    assertThat(Lines.wrap(" the  long\nname ", width, Face.SMALL))
        .containsExactly("the long", "name");
  }

  @Test
  void word_tooLongForALine_isCut() {
    double width = TextWidth.of("aaaa", Face.SMALL);
    assertThat(Lines.wrap("aaaaaaaaaa", width, Face.SMALL)).containsExactly("aaaa", "aaaa", "aa");
  }

  @Test
  void letter_widerThanALine_standsAlone() {
    assertThat(Lines.wrap("\ud83c\udc04\ud83c\udc04", 1, Face.SMALL))
        .containsExactly("\ud83c\udc04", "\ud83c\udc04");
  }

  @Test
  void nothing_wrapped_isOneEmptyLine() {
    assertThat(Lines.wrap("", 100, Face.SMALL)).containsExactly("");
  }

  @Test
  void labels_tooNear_moveApart() {
    double[] middles = Spread.apart(new double[] {10, 12, 90}, new double[] {20, 20, 20}, 0, 200);
    assertThat(middles).containsExactly(10, 46, 90);
  }

  @Test
  void labels_atTheEnd_moveBack() {
    double[] middles = Spread.apart(new double[] {80, 99}, new double[] {20, 20}, 0, 100);
    assertThat(middles).containsExactly(54, 90);
  }

  @Test
  void title_ofTheSmallestFace_isFourteenPointsOnASlide() {
    double pixelsPerInch = SvgWriter.WIDTH / (40.0 / 3);
    for (Face face : Face.values()) {
      assertThat(face.size() / pixelsPerInch * 72).isGreaterThanOrEqualTo(14);
      assertThat(face.size()).isGreaterThanOrEqualTo(SvgWriter.LEAST_TEXT);
    }
  }

  @Test
  void patterns_ofNeighbors_differInShadeOrLines() {
    List<Pattern> parts = List.of(Pattern.values());
    assertThat(parts.stream().map(pattern -> pattern.fill("x")).distinct()).hasSameSizeAs(parts);
  }
}
