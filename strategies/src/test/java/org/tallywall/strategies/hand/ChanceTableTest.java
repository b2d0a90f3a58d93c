package org.tallywall.strategies.hand;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Chances of copies among tiles drawn without putting back. No published table is leant on: every
 * value is worked out here from whole numbers ({@link Ways}); the figures beside it were worked out
 * before by a separate program and guard the sums themselves.
 */
class ChanceTableTest {
  private static final double SAME = 1e-12;

  private static ChanceTable table(double looks, double tiles) {
    ChanceTable table = new ChanceTable();
    table.set(looks, tiles);
    return table;
  }

  @ParameterizedTest
  @ValueSource(ints = {17, 60, 80, 99, 138})
  void wholeLooks_allCopiesAndNeeds_areTheHypergeometricLaw(int tiles) {
    for (int looks = 0; looks <= tiles; looks += 1 + looks / 7) {
      ChanceTable table = table(looks, tiles);
      for (int copies = 0; copies <= 16; copies++) {
        for (int needed = 0; needed <= 15; needed++) {
          assertThat(table.atLeast(needed, copies))
              .as("%d of %d among %d of %d", needed, copies, looks, tiles)
              .isCloseTo(Ways.atLeast(needed, copies, looks, tiles), within(SAME));
        }
      }
    }
  }

  /** Chance of at least one of m tiles by draw 5, 10, 15, 20: 1 − C(N−m, d) / C(N, d). */
  @ParameterizedTest
  @CsvSource({
    "60, 1, 0.0833333333, 0.1666666667, 0.2500000000, 0.3333333333",
    "60, 2, 0.1610169492, 0.3079096045, 0.4406779661, 0.5593220339",
    "60, 3, 0.2333430742, 0.4272355348, 0.5853302162, 0.7112799532",
    "60, 4, 0.3005936817, 0.5277205287, 0.6944538436, 0.8125852328",
    "60, 8, 0.5241317789, 0.7901687344, 0.9157541472, 0.9699429147",
    "80, 1, 0.0625000000, 0.1250000000, 0.1875000000, 0.2500000000",
    "80, 2, 0.1218354430, 0.2357594937, 0.3417721519, 0.4398734177",
    "80, 3, 0.1781280428, 0.3337390458, 0.4683544304, 0.5834956183",
    "80, 4, 0.2314963517, 0.4202664424, 0.5719217491, 0.6916785746",
    "80, 8, 0.4179894057, 0.6743307004, 0.8258775303, 0.9117337623",
    "99, 1, 0.0505050505, 0.1010101010, 0.1515151515, 0.2020202020",
    "99, 2, 0.0989486704, 0.1927437642, 0.2813852814, 0.3648732220",
    "99, 3, 0.1453946152, 0.2759660565, 0.3925112688, 0.4958271969",
    "99, 4, 0.1899053123, 0.3513862590, 0.4874313830, 0.6008631975",
    "99, 8, 0.3497984652, 0.5874713963, 0.7453567412, 0.8476130142"
  })
  void waits_anyOfSoManyTiles_areTheClosedForm(
      int tiles, int outs, double five, double ten, double fifteen, double twenty) {
    double[] figures = {five, ten, fifteen, twenty};
    for (int at = 0; at < figures.length; at++) {
      int draws = 5 * (at + 1);
      double exact = 1 - Ways.none(outs, draws, tiles);
      assertThat(exact).isCloseTo(figures[at], within(6e-11));
      assertThat(table(draws, tiles).atLeast(1, outs)).isCloseTo(exact, within(SAME));
    }
  }

  /**
   * The mean wait for the first of m among N is (N + 1) / (m + 1), its law C(N−k, m−1) / C(N, m).
   */
  @ParameterizedTest
  @ValueSource(ints = {60, 80, 99})
  void waits_summedOverDraws_haveTheMeanAndTheLawOfWaitingTimes(int tiles) {
    for (int outs = 1; outs <= 8; outs++) {
      double mean = 0;
      double before = 0;
      for (int draw = 1; draw <= tiles; draw++) {
        mean += 1 - before;
        double now = table(draw, tiles).atLeast(1, outs);
        double law = Ways.share(Ways.choose(tiles - draw, outs - 1), Ways.choose(tiles, outs));
        assertThat(now - before).isCloseTo(law, within(SAME));
        before = now;
      }
      assertThat(mean).isCloseTo((tiles + 1.0) / (outs + 1), within(1e-9));
    }
  }

  /** Broken numbers of looks, too: more looks say more, and all of them are certain. */
  @Test
  void brokenLooks_growWithTheLooks() {
    for (int copies = 1; copies <= 8; copies++) {
      for (int needed = 1; needed <= copies; needed++) {
        double before = 0;
        for (int quarter = 0; quarter <= 240; quarter++) {
          double now = table(quarter / 4.0, 60).atLeast(needed, copies);
          assertThat(now).isBetween(before - SAME, 1 + SAME);
          before = now;
        }
        assertThat(before).isCloseTo(1, within(SAME));
      }
    }
  }

  @Test
  void set_otherLooks_forgetsWhatWasKnown() {
    ChanceTable table = table(10, 60);
    double first = table.atLeast(2, 4);
    table.set(20, 60);
    assertThat(table.atLeast(2, 4)).isGreaterThan(first);
    table.set(10, 80);
    assertThat(table.atLeast(2, 4)).isLessThan(first);
    table.set(10, 60);
    assertThat(table.atLeast(2, 4)).isEqualTo(first);
  }
}
