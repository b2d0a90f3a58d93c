package org.tallywall.experiments.chances;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Draws that a wall leaves, and what may come in them. */
class WallAndWaitingTest {
  private static final Fractions EXACT = new Fractions();

  /** Tile by tile round the table. */
  @Test
  void draws_countedRoundTheTable_areTheSame() {
    for (int tiles = 0; tiles <= 111; tiles++) {
      int[] draws = new int[4];
      for (int tile = 0; tile < tiles; tile++) {
        draws[tile % 4]++;
      }
      for (int before = 0; before < 4; before++) {
        assertThat(new Wall(tiles).drawsAfter(before)).isEqualTo(draws[before]);
      }
      assertThat(new Wall(tiles).byFour()).isEqualTo(draws[3]);
    }
  }

  /** After a deal 99 tiles are left; the player at East's right draws first (rule 1.3). */
  @Test
  void wholeWall_leavesEastOneDrawFewer() {
    Wall wall = new Wall(99);
    assertThat(new int[] {wall.drawsAfter(0), wall.drawsAfter(1), wall.drawsAfter(2)})
        .containsOnly(25);
    assertThat(wall.drawsAfter(3)).isEqualTo(24);
  }

  @Test
  void walls_thatCannotBe_areRefused() {
    assertThatThrownBy(() -> new Wall(-1)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Wall(9).drawsAfter(4))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Wall(9).drawsAfter(-1))
        .isInstanceOf(IllegalArgumentException.class);
  }

  /** Waiting with so many outs, 60 unseen tiles, 10 draws; exact sums, to 12 places. */
  @ParameterizedTest
  @CsvSource({"3, 0.427235534775", "2, 0.307909604520", "4, 0.527720528674"})
  void waiting_hasTheChanceOfAnExactSum(int outs, double chance) {
    assertThat(new Waiting(outs, 40, 20, 10).youDraw())
        .isCloseTo(chance, Offset.offset(1e-12))
        .isCloseTo(Fractions.number(EXACT.any(60, outs, 10)), Offset.offset(1e-15));
  }

  /** The first of m outs among N unseen tiles within d draws, from tables of exact sums. */
  @ParameterizedTest
  @CsvSource({
    "60, 1, 20, 0.3333333333",
    "60, 8, 5, 0.5241317789",
    "80, 5, 15, 0.6564108776",
    "80, 2, 10, 0.2357594937",
    "99, 4, 20, 0.6008631975",
    "99, 7, 5, 0.3124305609"
  })
  void drawsOfUnseenTiles_haveTheChancesOfTheTables(int unseen, int outs, int draws, double any) {
    assertThat(new Waiting(outs, unseen, 0, draws).youDraw()).isCloseTo(any, Offset.offset(5e-11));
  }

  /** Somebody draws one unless every one stands in a rack. */
  @Test
  void somebody_drawsOneUnlessAllStandInRacks() {
    Waiting wait = new Waiting(6, 40, 39, 10);
    double inRacks = Fractions.number(EXACT.exactly(79, 6, 39, 6));
    assertThat(wait.anybodyDraws()).isCloseTo(1 - inRacks, Offset.offset(1e-14));
    assertThat(wait.unseen()).isEqualTo(79);
    assertThat(new Waiting(6, 40, 0, 10).anybodyDraws()).isEqualTo(1);
  }

  @Test
  void nothing_comesWhereNothingIsLeft() {
    assertThat(new Waiting(0, 0, 0, 0).youDraw()).isZero();
    assertThat(new Waiting(0, 0, 0, 0).anybodyDraws()).isZero();
    assertThat(new Waiting(3, 0, 39, 0).anybodyDraws()).isZero();
    assertThat(new Waiting(0, 40, 39, 10).youDraw()).isZero();
  }

  @ParameterizedTest
  @CsvSource({
    "1, -1, 5, 0",
    "1, 5, -1, 0",
    "-1, 5, 5, 0",
    "1, 5, 5, -1",
    "1, 5, 5, 6",
    "9, 4, 4, 1"
  })
  void positions_thatCannotBe_areRefused(int outs, int wall, int hidden, int draws) {
    assertThatThrownBy(() -> new Waiting(outs, wall, hidden, draws))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
