package org.tallywall.core.play;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tallywall.core.TestCards;
import org.tallywall.core.record.GameEvent;
import org.tallywall.core.rules.TableRules;

/** What each switch about the set and the wall's end changes in a game. */
class SwitchesOfTheWallTest {
  private static final String HOT = "PAY_ALL_IF_UNACCOUNTED";

  @ParameterizedTest
  @CsvSource({"tiles.flowers, 4, 148", "tiles.flowers, 16, 160", "tiles.jokers, 0, 144"})
  void tiles_changeTheSizeOfTheSet(String key, int number, int size) {
    StackedGame game = StackedGame.play(key, number);
    game.run();
    assertThat(game.record().wall()).hasSize(size);
    assertThat(game.events(GameEvent.Discard.class)).hasSize(size - 52);
  }

  /** East waits for R; North throws it as tile number 'from the end' of the wall. */
  private static StackedGame red(TableRules rules, int fromTheEnd) {
    StackedGame game = StackedGame.on(TestCards.testCard(), rules);
    game.rack(0, "11b JJ 444c NNNN RR 3b").rack(1, "R");
    String[] last = new String[fromTheEnd];
    Arrays.fill(last, "-");
    last[0] = "R";
    game.lastDraws(String.join(" ", last));
    game.seat(0).discard("3b").claim("R", ClaimChoice.mahjong());
    return game;
  }

  private static TableRules rules(String key, Object value, Object lastSegment) {
    return StackedGame.noPasses().with(key, value).with("wall.lastSegment", lastSegment);
  }

  /** Dice 3 and 4: the last 14 tiles are the last wall, the 15th from the end is not. */
  @ParameterizedTest
  @CsvSource({"DICE, 14, true", "DICE, 15, false", "NONE, 1, false"})
  void lastSegment_decidesWhereTheLastWallBegins(String segment, int fromTheEnd, boolean last) {
    List<Integer> points = red(rules("wall.hot", HOT, segment), fromTheEnd).run().points();
    assertThat(points.stream().filter(each -> each < 0).count()).isEqualTo(last ? 1 : 3);
  }

  @ParameterizedTest
  @CsvSource({"19, 19, true", "19, 21, false", "0, 1, false", "99, 97, true"})
  void lastSegmentInTiles_decidesWhereTheLastWallBegins(int tiles, int fromTheEnd, boolean last) {
    List<Integer> points = red(rules("wall.hot", HOT, tiles), fromTheEnd).run().points();
    assertThat(points.stream().filter(each -> each < 0).count()).isEqualTo(last ? 1 : 3);
  }

  @Test
  void lastSegmentByDice_followsTheDice() {
    StackedGame four = red(rules("wall.hot", HOT, "DICE"), 5).dice(1, 1);
    assertThat(four.run().points()).containsExactly(100, -25, -25, -50);
  }

  @ParameterizedTest
  @CsvSource({"OFF, true", "NO_MAHJONG_CLAIM, false", "NO_CLAIM, false"})
  void cold_decidesWhetherTheLastWallsDiscardsWin(String value, boolean wins) {
    Outcome outcome = red(rules("wall.cold", value, "DICE"), 3).run();
    assertThat(outcome.how()).isEqualTo(wins ? Outcome.How.MAHJONG : Outcome.How.WALL_GAME);
  }

  @ParameterizedTest
  @CsvSource({"OFF, true", "NO_MAHJONG_CLAIM, true", "NO_CLAIM, false"})
  void cold_decidesWhetherTheLastWallsDiscardsAreLaidOpen(String value, boolean laid) {
    StackedGame game = StackedGame.play("wall.cold", value).rack(0, "444c").lastDraws("4c - -");
    game.seat(0).claim("4c", ClaimChoice.expose(4, 0));
    game.run();
    assertThat(game.course().contains("0 claims 4c for 4")).isEqualTo(laid);
  }

  /** A self-drawn win is good in a cold wall. */
  @Test
  void cold_noClaim_leavesSelfDrawnWinsAlone() {
    StackedGame game =
        StackedGame.play("wall.cold", "NO_CLAIM").rack(3, "11b J 4444c NNNN RR").lastDraws("R");
    for (int turn = 0; turn < 24; turn++) {
      game.seat(3).discard("-");
    }
    game.seat(3).turn(TurnChoice.mahjong());
    assertThat(game.run().points()).containsExactly(-50, -50, -50, 150);
  }

  @ParameterizedTest
  @CsvSource({"ANY, true, true", "MAHJONG_ONLY, true, false", "NONE, false, false"})
  void finalDiscard_decidesWhatTheVeryLastDiscardIsGoodFor(
      String value, boolean mahjong, boolean exposure) {
    Outcome outcome = red(StackedGame.noPasses().with("wall.finalDiscard.claim", value), 1).run();
    assertThat(outcome.how() == Outcome.How.MAHJONG).isEqualTo(mahjong);
    StackedGame game =
        StackedGame.play("wall.finalDiscard.claim", value).rack(0, "444c").lastDraws("4c");
    game.seat(0).claim("4c", ClaimChoice.expose(4, 0));
    game.run();
    assertThat(game.course().contains("0 claims 4c for 4")).isEqualTo(exposure);
  }

  /** The discard before the last is not concerned. */
  @Test
  void finalDiscard_none_leavesEarlierDiscardsAlone() {
    TableRules rules = StackedGame.noPasses().with("wall.finalDiscard.claim", "NONE");
    assertThat(red(rules, 5).run().how()).isEqualTo(Outcome.How.MAHJONG);
  }

  /** West throws four flowers in view, then the last tile is a fifth: four others accounted for. */
  @ParameterizedTest
  @CsvSource({"4, false", "5, true", "7, true"})
  void hotFlowerNeeds_decidesWhenAFlowerIsHot(int needs, boolean hot) {
    StackedGame game =
        StackedGame.play("wall.hot", HOT, "wall.hotFlowerNeeds", needs)
            .rack(0, "F 7777d 7777b GGG J 3b")
            .rack(1, "FF")
            .rack(2, "FFFF")
            .lastDraws("F");
    game.seat(0).discard("3b");
    game.seat(2).discard("F F F F");
    for (int time = 0; time < 4; time++) {
      game.seat(0).claim("F", ClaimChoice.nothing());
    }
    game.seat(0).claim("F", ClaimChoice.mahjong());
    assertThat(game.run().points())
        .isEqualTo(hot ? List.of(120, 0, 0, -120) : List.of(120, -30, -30, -60));
  }

  /**
   * The discarder judges by what lay open when the tile was thrown: the naturals that the winner
   * lays open with it do not cool it.
   */
  @Test
  void hot_isJudgedWhenTheTileIsThrown() {
    StackedGame game = StackedGame.play("wall.hot", HOT).rack(0, "11b J 444c NNNN RRR 3b");
    game.lastDraws("4c");
    game.seat(0).discard("3b").claim("4c", ClaimChoice.expose(4, 0));
    for (int turn = 0; turn < 24; turn++) {
      game.seat(0).discard("-");
    }
    game.seat(0).turn(TurnChoice.mahjong());
    assertThat(game.run().points()).containsExactly(100, 0, 0, -100);
    assertThat(game.course()).endsWith("0 claims 4c for 4", "0 wins by discard from 3");
  }

  /** Copies on the discarder's own rack are accounted for. */
  @Test
  void hot_countsTheDiscardersOwnRack() {
    StackedGame game = StackedGame.play("wall.hot", HOT).rack(0, "111b JJJJ 44c NNNN 3b");
    game.rack(3, "RRR").lastDraws("R");
    game.seat(0).discard("3b").claim("R", ClaimChoice.mahjong());
    assertThat(game.run().points()).containsExactly(100, -25, -25, -50);
  }
}
