package org.tallywall.reports.svg;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.tallywall.reports.SampleFigures;
import org.tallywall.reports.figure.SquareMap;

/** The border of a map, and what rows without a part in it make of it. */
class BorderPiecesTest {
  private static final int NO = SquareMap.Border.NO_LINE;
  private static final Pattern LINE = Pattern.compile("<path[^>]* d=\"(M[^\"]* L[^\"]*)\"[^>]*>");
  private static final Pattern POINT = Pattern.compile("([-0-9.]+),([-0-9.]+)");

  /** The points of the dark lines, piece by piece, as x and y. */
  private static List<List<double[]>> pieces(Integer... places) {
    SquareMap map = SampleFigures.map();
    SquareMap.Border border = new SquareMap.Border(List.of(places), "the line");
    String svg =
        SvgWriter.text(
            new SquareMap(
                map.caption(),
                map.measure(),
                map.across(),
                map.down(),
                map.squares(),
                Optional.of(border)));
    List<List<double[]>> pieces = new ArrayList<>();
    Matcher lines = LINE.matcher(svg);
    while (lines.find()) {
      if (lines.group().contains("stroke-width=\"9\"")) {
        List<double[]> points = new ArrayList<>();
        Matcher point = POINT.matcher(lines.group(1));
        while (point.find()) {
          points.add(
              new double[] {
                Double.parseDouble(point.group(1)), Double.parseDouble(point.group(2))
              });
        }
        pieces.add(points);
      }
    }
    return pieces;
  }

  private static List<Double> down(List<double[]> piece) {
    return piece.stream().map(point -> point[1]).distinct().toList();
  }

  private static List<Double> across(List<double[]> piece) {
    return piece.stream().map(point -> point[0]).distinct().toList();
  }

  /** Heights of the whole line: above the field, its top, three lines between rows, below it. */
  @Test
  void border_withARowLeftOut_isDrawnInTwoPieces() {
    List<double[]> whole = pieces(3, 3, 2, 1).get(0);
    List<List<double[]>> parts = pieces(3, NO, 2, 1);

    assertThat(pieces(3, 3, 2, 1)).hasSize(1);
    assertThat(down(whole)).hasSize(6).isSorted();
    assertThat(parts).hasSize(2);
    assertThat(down(parts.get(0))).isEqualTo(down(whole).subList(0, 3));
    assertThat(across(parts.get(0))).isEqualTo(across(whole).subList(0, 1));
    assertThat(down(parts.get(1))).isEqualTo(down(whole).subList(3, 6));
    assertThat(across(parts.get(1))).isEqualTo(across(whole).subList(1, 3));
  }

  @Test
  void border_withoutFirstAndLastRow_staysWithinTheField() {
    List<Double> whole = down(pieces(3, 3, 2, 1).get(0));
    List<List<double[]>> parts = pieces(NO, 3, 2, NO);

    assertThat(parts).hasSize(1);
    assertThat(down(parts.get(0))).isEqualTo(whole.subList(2, 5));
    assertThat(pieces(NO, NO, NO, NO)).isEmpty();
  }
}
