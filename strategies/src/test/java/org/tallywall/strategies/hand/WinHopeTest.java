package org.tallywall.strategies.hand;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.tallywall.strategies.HandMadeView;
import org.tallywall.strategies.TestTable;

class WinHopeTest {
  private static final double[] ONES = new double[WinHope.names().size()];

  static {
    Arrays.fill(ONES, 1);
  }

  /** By hand: wall 80 lies halfway between 70 and 90, so the two share 1 between them. */
  @Test
  void chance_isTheLogitOfWhatIsSeen() {
    HandMadeView view = new HandMadeView(TestTable.HANDS, "123456789b 1234c J").wall(80);
    WinHope hope = new WinHope(ONES);

    hope.look(view);

    double log = Math.log(0.3);
    double sum = 1 + log + log * log;
    assertThat(hope.chance(0.3)).isCloseTo(1 / (1 + Math.exp(-sum)), within(1e-12));
  }

  /**
   * One exposure of one's own, three of an opponent's and one of another's: 1 + 1 + 4 + 4 walls.
   */
  @Test
  void chance_countsExposures() {
    HandMadeView view =
        new HandMadeView(TestTable.HANDS, "123456789b J")
            .wall(45)
            .exposed(1, "NNNN")
            .exposed(0, "EEE SSS WWW")
            .exposed(2, "RRR");
    WinHope hope = new WinHope(ONES);

    hope.look(view);

    double log = Math.log(2);
    double sum = 1 + log + log * log + 1 + 1 + 4 + 4 * 45 / 90.0;
    assertThat(hope.chance(2)).isCloseTo(1 / (1 + Math.exp(-sum)), within(1e-12));
  }

  @Test
  void fitted_moreWorthIsMoreHope_andALowWallIsLess() {
    double before = 0;
    for (double worth = 0.001; worth < 2; worth *= 1.5) {
      double last = 1;
      for (int wall = 90; wall >= 0; wall -= 10) {
        HandMadeView view = new HandMadeView(TestTable.HANDS, "123456789b 1234c").wall(wall);
        WinHope hope = new WinHope();
        hope.look(view);
        assertThat(hope.chance(worth)).as("worth %s, wall %s", worth, wall).isLessThan(last);
        last = hope.chance(worth);
        if (wall == 50) {
          assertThat(last).isGreaterThan(before);
          before = last;
        }
      }
    }
  }
}
