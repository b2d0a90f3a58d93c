package org.tallywall.reports.charts;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.tallywall.reports.figure.PlotValue;
import org.tallywall.reports.figure.SquareMap.Square;

/**
 * Borders worked out by hand. A letter is a square: P and M clear, p and m not (S and N by luck:
 * their ranges leave out 0, but not with all squares counted), o too few.
 */
class BorderTest {
  private static final int NO = Border.NO_LINE;

  @Test
  void border_betweenClearSquares_stepsWithTheRows() {
    assertThat(places("PPPM", "PPMM", "PMMM", "MMMM")).isEqualTo(List.of(3, 2, 1, 0));
    assertThat(places("PMMM", "PPMM", "PPPM", "PPPP")).isEqualTo(List.of(1, 2, 3, 4));
  }

  @Test
  void border_ofTheOtherSign_isFoundToo() {
    assertThat(Border.of(map("MMP", "MPP"))).contains(new Border(List.of(2, 1), false));
    assertThat(Border.of(map("PPM"))).contains(new Border(List.of(2), true));
  }

  @Test
  void border_squaresFarFromIt_mayBeUnclear() {
    assertThat(places("pPMm", "mPMp")).isEqualTo(List.of(2, 2));
  }

  @Test
  void border_besideASquareThatIsNotClear_leavesTheRowOut() {
    assertThat(places("PPMM", "PpMM", "PSMM", "PmMM")).isEqualTo(List.of(2, NO, NO, NO));
  }

  @Test
  void border_throughRowsWithoutEvidence_isNotDrawnThere() {
    assertThat(places("PPMM", "oooo", "pppm", "PMMM")).isEqualTo(List.of(2, NO, NO, 1));
    assertThat(places("PPMM", "PPMo", "oPMM")).isEqualTo(List.of(2, NO, NO));
  }

  @Test
  void border_atTheEdge_takesARowThatIsClearThroughout() {
    assertThat(places("PPP", "PMM", "Mmm")).isEqualTo(List.of(3, 1, NO));
    assertThat(places("ppP", "PMM")).isEqualTo(List.of(NO, 1));
  }

  @Test
  void border_whereOneSignIsNeverClear_isNotDrawn() {
    assertThat(Border.of(map("PPPm", "Ppoo"))).isEmpty();
    assertThat(Border.of(map("PPNN", "SSNN"))).isEmpty();
    assertThat(Border.of(map("oooo"))).isEmpty();
  }

  @Test
  void border_whereNoRowHasAPlaceForIt_isNotDrawn() {
    assertThat(Border.of(map("PPpM", "PmMM"))).isEmpty();
  }

  @Test
  void border_thatWouldLeaveAClearSquareOnTheWrongSide_isNotDrawn() {
    assertThat(Border.of(map("PMPM", "PMMM"))).isEmpty();
    assertThat(Border.of(map("PMMM", "PPPM", "PMMM"))).isEmpty();
    assertThat(Border.of(map("PPMM", "Pppp", "MMPP"))).isEmpty();
    assertThat(Border.of(map("PPPM", "Mooo", "PPPM"))).isEmpty();
  }

  private static List<Integer> places(String... rows) {
    return Border.of(map(rows)).orElseThrow().places();
  }

  private static List<List<Square>> map(String... rows) {
    List<List<Square>> squares = new ArrayList<>();
    for (String row : rows) {
      squares.add(row.chars().mapToObj(letter -> square((char) letter)).toList());
    }
    return squares;
  }

  private static Square square(char letter) {
    return switch (letter) {
      case 'P' -> Square.of(new PlotValue(3, 1, 5));
      case 'M' -> Square.of(new PlotValue(-3, -5, -1));
      case 'p' -> Square.of(new PlotValue(1, -1, 3));
      case 'm' -> Square.of(new PlotValue(-1, -3, 1));
      case 'S' -> Square.unclear(new PlotValue(3, 1, 5));
      case 'N' -> Square.unclear(new PlotValue(-3, -5, -1));
      default -> Square.tooFew();
    };
  }
}
