package org.tallywall.experiments.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.tallywall.reports.figure.Estimate;
import org.tallywall.reports.figure.SquareMap.Square;

/** Borders worked out by hand. A letter is a square: P and M clear, p and m not, o too few. */
class BorderTest {
  @Test
  void border_betweenPlusAndMinus_stepsWithTheRows() {
    assertThat(Border.of(map("PPPm", "PPoM", "PoMM", "oMMM"))).contains(List.of(3, 2, 1, 0));
  }

  @Test
  void border_throughSquaresThatAreNotClear_followsTheirSign() {
    assertThat(Border.of(map("PPpM", "PmMM"))).contains(List.of(3, 1));
  }

  @Test
  void border_thatMovesRightDownTheRows_isFoundToo() {
    assertThat(Border.of(map("PMMM", "PPMM", "PPPM"))).contains(List.of(1, 2, 3));
  }

  @Test
  void border_whereOneSignIsNeverClear_isNotDrawn() {
    assertThat(Border.of(map("PPPm", "Ppoo"))).isEmpty();
    assertThat(Border.of(map("oooo"))).isEmpty();
  }

  @Test
  void border_thatWouldLeaveAClearSquareOnTheWrongSide_isNotDrawn() {
    assertThat(Border.of(map("PMPM", "PMMM"))).isEmpty();
    assertThat(Border.of(map("MMPP"))).isEmpty();
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
      case 'P' -> Square.of(new Estimate(3, 1, 5));
      case 'M' -> Square.of(new Estimate(-3, -5, -1));
      case 'p' -> Square.of(new Estimate(1, -1, 3));
      case 'm' -> Square.of(new Estimate(-1, -3, 1));
      default -> Square.tooFew();
    };
  }
}
