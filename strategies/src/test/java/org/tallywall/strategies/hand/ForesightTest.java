package org.tallywall.strategies.hand;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.tile.TileText;
import org.tallywall.strategies.HandMadeView;
import org.tallywall.strategies.TestTable;

/** A judge of racks that is told of its next draws, or of what lies in other racks. */
class ForesightTest {
  private static final String WINDS = "{ \"tiles\": \"NNNN EEEE WWWW RR\", \"value\": 25 }";

  /** Tells of some draws and of some tiles elsewhere. */
  private record Told(String drawn, String elsewhereTiles) implements Foresight {
    @Override
    public int[] draws(SeatView view, boolean throwsFirst) {
      return Arrays.stream(drawn.split("[, ]+"))
          .filter(word -> !word.isEmpty())
          .mapToInt(TileText::tile)
          .toArray();
    }

    @Override
    public int elsewhere(int kind) {
      return TileText.rack(elsewhereTiles).held(kind);
    }
  }

  private static RackJudge judge(String rack, Told told) {
    RackJudge judge = new RackJudge(new JudgeSettings(4, 0.5, 1, 3, 0.5), LineWeights.EVEN, told);
    judge.look(new HandMadeView(TestTable.card(WINDS), rack), 14, 0);
    return judge;
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "       | 3 | R is one of many",
        "W      | 2 | one that lacks comes",
        "W 9b   | 2 | a stranger comes, too",
        "W R W  | 0 | all come",
      })
  void draws_thatAreTold_countAsHeld(String draws, int away, String why) {
    String coming = draws == null ? "" : draws;
    RackJudge judge = judge("NNNN EEEE WW R 9b 9c 8d", new Told(coming, ""));

    assertThat(judge.least()).as(why).isEqualTo(away);
  }

  /** The same three draws, the one that it needs first or last. */
  @Test
  void draws_thatComeLater_countForLess() {
    double first = judge("NNNN EEEE WWWW R 9b", new Told("R, 8d, 7c", "")).worth();
    double last = judge("NNNN EEEE WWWW R 9b", new Told("8d, 7c, R", "")).worth();

    assertThat(last).isPositive().isLessThan(0.9 * first);
  }

  /** What will be drawn is not on the rack, so it can be neither missed nor taken. */
  @Test
  void leastMissed_namesOnlyWhatIsHeld() {
    RackJudge judge = judge("NNNN EEEE WWWW R S", new Told("5d", ""));

    assertThat(judge.leastMissed()).isEqualTo(TileText.tile("S"));
    assertThat(judge.leastMissed(kind -> kind == TileText.tile("5d"))).isEqualTo(-1);
  }

  /** A pair must be drawn; for a kong the last tile may be claimed, from whomever it comes. */
  @ParameterizedTest
  @CsvSource({
    "NNNN EEEE WWWW 9b 9c, RR RR, 0, no R is left in the wall for the pair",
    "NNNN EEEE WWW R 9b 9c, RRR, 1, two lack: the R may not be drawn",
    "NNNN EEEE WW RR 9b 9c, WW, 2, a W may still be thrown"
  })
  void tilesElsewhere_areNotDrawn_butMayBeThrown(
      String rack, String elsewhere, int kind, String why) {
    double usually = judge(rack, new Told("", "")).bestChance();
    double known = judge(rack, new Told("", elsewhere)).bestChance();

    assertThat(usually).isPositive();
    if (kind == 2) {
      assertThat(known).as(why).isPositive();
    } else {
      assertThat(known).as(why).isLessThan(usually);
    }
    if (kind == 0) {
      assertThat(known).as(why).isZero();
    }
  }

  /** The same 14 tiles and the same wall, whether a tile is held or comes for certain. */
  @Test
  void nothingTold_isAsWithoutForesight() {
    RackJudge plain = new RackJudge(new JudgeSettings(4, 0.5, 1, 3, 0.5));
    plain.look(new HandMadeView(TestTable.card(WINDS), "NNNN EEEE WW R 9b 9c 8d"), 14, 0);

    assertThat(judge("NNNN EEEE WW R 9b 9c 8d", new Told("", "")).worth())
        .isCloseTo(plain.worth(), within(0.0));
  }
}
