package org.tallywall.strategies.hand;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tallywall.core.tile.Tile;
import org.tallywall.strategies.HandMadeView;
import org.tallywall.strategies.TestTable;

/** What a joker is worth to a rack with one hand to make: three quarters, or nothing if spare. */
class JokerLossTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "NNNN EEE WWW J R 9b 9c | 0.25 | one joker, and two tiles lack that it can be",
        "NNNN EEEE WW JJ R 9b   | 0.25 | two jokers, and two tiles lack that they can be",
        "NNNN EEEE WWW JJ R     | 1    | two jokers, and one tile lacks that one can be",
        "NNNN EEEE WWWW J R     | 1    | a joker that cannot be the tile of a pair",
      })
  void jokerThatIsNeeded_takesThreeQuartersOfTheWorth(String rack, double left, String why) {
    HandMadeView view =
        new HandMadeView(
            TestTable.card("{ \"tiles\": \"NNNN EEEE WWWW RR\", \"value\": 25 }"), rack);
    RackJudge judge = new RackJudge(new JudgeSettings(4, 0.5, 1, 3, 0.5));
    judge.look(view, 2, 0);
    double whole = judge.worth();
    assertThat(whole).as(why).isPositive();
    assertThat(judge.worthWithout(Tile.JOKER)).as(why).isCloseTo(left * whole, within(1e-12));
  }
}
