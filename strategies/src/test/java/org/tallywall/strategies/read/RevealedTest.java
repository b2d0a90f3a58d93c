package org.tallywall.strategies.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.tallywall.core.tile.Tile;
import org.tallywall.strategies.HandMadeView;
import org.tallywall.strategies.TestTable;

/** A reader that is told who is ready, or on which tiles. */
class RevealedTest {
  private static final int NOBODY = -1;

  /** Tells of one seat that it is ready, and of a tile on which it wins. */
  private record Told(boolean readiness, boolean waits, int seat, int tile) implements Revealed {
    @Override
    public boolean ready(int other) {
      return other == seat;
    }

    @Override
    public boolean winsOn(int other, int kind) {
      return other == seat && kind == tile;
    }
  }

  /** East shows two groups, across one. */
  private static OpponentReader reader(Revealed told) {
    OpponentReader reader = new OpponentReader(ReadSettings.USUAL, told);
    reader.look(view());
    return reader;
  }

  private static HandMadeView view() {
    return new HandMadeView(TestTable.HANDS, "123456789b 1234c J")
        .exposed(0, "NNNN EEE")
        .exposed(2, "222d")
        .thrown("W 5c");
  }

  @Test
  void readinessTold_whoIsNotReadyIsNotFeared_andTheTilesAreReadAsUsual() {
    OpponentReader fair = reader(Revealed.NOTHING);
    OpponentReader told = reader(new Told(true, false, 0, NOBODY));
    int wall = view().wallLeft();
    double factor = ReadyTable.win(true, 2, wall) / RiskTable.win(2, wall);
    int read = 0;
    for (int kind = 0; kind < Tile.NATURALS; kind++) {
      assertThat(told.winChance(2, kind)).isZero();
      assertThat(told.winChance(3, kind)).isZero();
      double expected = Math.min(0.95, factor * fair.winChance(0, kind));
      assertThat(told.winChance(0, kind)).isCloseTo(expected, within(1e-12));
      assertThat(told.claimChance(2, kind)).isEqualTo(fair.claimChance(2, kind));
      read += expected > 0 ? 1 : 0;
    }
    assertThat(factor).isGreaterThan(2);
    assertThat(read).isGreaterThan(1);
  }

  @Test
  void waitsTold_aTileWinsOrDoesNot() {
    OpponentReader told = reader(new Told(false, true, 2, 7));
    for (int other = 0; other < 4; other++) {
      for (int kind = 0; kind < Tile.KINDS; kind++) {
        assertThat(told.winChance(other, kind)).isEqualTo(other == 2 && kind == 7 ? 1 : 0);
      }
    }
    assertThat(told.cost(7, 0, 10, 0)).isGreaterThan(10);
    assertThat(told.cost(8, 1, 10, 0)).isZero();
  }
}
