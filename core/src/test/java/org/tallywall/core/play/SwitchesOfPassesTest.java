package org.tallywall.core.play;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.tallywall.core.record.GameEvent;
import org.tallywall.core.tile.Tile;

/** What each switch about the passes and about East's early win changes in a game. */
class SwitchesOfPassesTest {
  private static long passes(StackedGame game) {
    return game.events(GameEvent.Pass.class).size();
  }

  @Test
  void charlestonFirst_none_leavesOnlyTheCourtesyPass() {
    StackedGame game = StackedGame.withPasses("charleston.first", "NONE");
    game.run();
    assertThat(passes(game)).isZero();
    assertThat(game.events(GameEvent.Stop.class)).isEmpty();
    assertThat(game.seat(2).asked.get(0)).isEqualTo("courtesy number");
  }

  @ParameterizedTest
  @CsvSource({"COMPULSORY, 24", "NONE, 12"})
  void charlestonSecond_fixed_asksNobody(String value, int passes) {
    StackedGame game = StackedGame.withPasses("charleston.second", value);
    game.seats.forEach(ScriptedPlayer::stops);
    game.run();
    assertThat(passes(game)).isEqualTo(passes);
    assertThat(game.events(GameEvent.Stop.class)).isEmpty();
    assertThat(game.seats).allMatch(player -> !player.asked.contains("stop"));
  }

  @ParameterizedTest
  @CsvSource({"1, 24", "2, 24", "3, 12", "4, 12"})
  void charlestonSecond_majority_needsThreeToStop(int stoppers, int passes) {
    StackedGame game = StackedGame.withPasses("charleston.second", "MAJORITY");
    List<Integer> heard = new ArrayList<>();
    for (int seat = 0; seat < stoppers; seat++) {
      game.seat(seat).stops();
    }
    game.seat(3)
        .watch(
            (question, view) -> {
              if (question.equals("courtesy number")) {
                heard.addAll(view.stoppers());
              }
            });
    game.run();
    assertThat(passes(game)).isEqualTo(passes);
    assertThat(game.events(GameEvent.Stop.class).get(0).seats()).hasSize(stoppers);
    assertThat(heard).hasSize(passes == 12 ? 1 : 0);
  }

  @ParameterizedTest
  @CsvSource({"AFTER_SEEING_FIRST_LEFT, 3", "BEFORE_SEEING_FIRST_LEFT, 2"})
  void stopTiming_decidesWhetherTheThirdPassWasSeen(String value, int seen) {
    StackedGame game = StackedGame.withPasses("charleston.stopTiming", value);
    List<Integer> passesSeen = new ArrayList<>();
    for (ScriptedPlayer player : game.seats) {
      player.watch(
          (question, view) -> {
            if (question.equals("stop")) {
              passesSeen.add(view.passes().size());
            }
          });
    }
    game.seat(1).stops();
    game.run();
    assertThat(passesSeen).containsExactly(seen, seen, seen, seen);
    assertThat(passes(game)).isEqualTo(12);
    assertThat(game.course().get(12)).isEqualTo("stop [1]");
  }

  @ParameterizedTest
  @CsvSource({"FIRST_STOPPER, 1", "ALL, 2", "NOBODY, 0"})
  void stopReveal_decidesWhoIsHeard(String value, int names) {
    StackedGame game = StackedGame.withPasses("charleston.stopReveal", value);
    game.seat(1).stops();
    game.seat(3).stops();
    List<List<Integer>> heard = new ArrayList<>();
    game.seat(0)
        .watch(
            (question, view) -> {
              if (question.equals("courtesy number")) {
                heard.add(view.stoppers());
              }
            });
    game.run();
    assertThat(heard).containsExactly(List.of(1, 3).subList(0, names));
    assertThat(game.events(GameEvent.Stop.class).get(0).seats()).containsExactly(1, 3);
  }

  @Test
  void blind_none_wantsThreeOwnTilesAlways() {
    StackedGame game = StackedGame.withPasses("charleston.blind", "NONE").rack(1, "NN");
    game.seat(1).pass(PassStep.LEFT_1, "NN");
    assertThatThrownBy(game::run).hasMessageContaining("at most 0 tiles may be blind");
  }

  @ParameterizedTest
  @EnumSource(PassStep.class)
  void blind_allPasses_isAllowedInEachOfTheSix(PassStep step) {
    StackedGame game = StackedGame.withPasses("charleston.blind", "ALL_PASSES").rack(1, "N");
    game.seat(1).pass(step, "N");
    game.run();
    GameEvent.Pass pass = game.events(GameEvent.Pass.class).get(4 * step.ordinal() + 1);
    assertThat(pass.step()).isEqualTo(step.text());
    assertThat(pass.own()).containsExactly(Tile.NORTH);
    assertThat(pass.forwarded()).hasSize(2);
  }

  @Test
  void blindMax_one_wantsTwoOwnTilesAtLeast() {
    StackedGame two = StackedGame.withPasses("charleston.blindMax", 1).rack(1, "NN");
    two.seat(1).pass(PassStep.LEFT_1, "NN");
    two.run();
    GameEvent.Pass pass = two.events(GameEvent.Pass.class).get(9);
    assertThat(pass.own()).containsExactly(Tile.NORTH, Tile.NORTH);
    assertThat(pass.forwarded()).hasSize(1);
    StackedGame one = StackedGame.withPasses("charleston.blindMax", 1).rack(1, "NN");
    one.seat(1).pass(PassStep.LEFT_1, "N");
    assertThatThrownBy(one::run).hasMessageContaining("at most 1 tiles may be blind");
  }

  @Test
  void courtesy_none_asksNobody() {
    StackedGame game = StackedGame.withPasses("charleston.courtesy", "NONE");
    game.run();
    assertThat(game.events(GameEvent.Courtesy.class)).isEmpty();
    assertThat(game.seat(0).asked).doesNotContain("courtesy number");
  }

  @ParameterizedTest
  @CsvSource({"BOTH_NUMBERS, 3, 1, 2, 2", "LOWER_ONLY, -1, 1, 2, 2"})
  void courtesyReveal_decidesWhichNumbersAreHeard(
      String value, int east, int west, int south, int north) {
    StackedGame game = StackedGame.withPasses("charleston.courtesyReveal", value);
    game.seat(0).courtesy(3, null);
    game.seat(2).courtesy(1, null);
    game.seat(1).courtesy(2, null);
    game.seat(3).courtesy(2, null);
    List<Integer> heard = new ArrayList<>();
    game.seat(3)
        .watch(
            (question, view) -> {
              if (question.equals("courtesy tiles 2")) {
                for (int seat : new int[] {0, 2, 1, 3}) {
                  heard.add(view.courtesyAsked(seat));
                }
              }
            });
    game.run();
    assertThat(heard).as("before the tiles are chosen").containsExactly(east, west, south, north);
    assertThat(game.events(GameEvent.Courtesy.class).get(0).asked()).containsExactly(3, 1);
  }

  @Test
  void courtesyNumber_outOfRange_isRejected() {
    StackedGame game = StackedGame.withPasses();
    game.seat(2).courtesy(4, null);
    assertThatThrownBy(game::run).hasMessageContaining("a courtesy number is 0 to 3, not 4");
  }

  @Test
  void jokersMayPass_true_letsThemPassEverywhere() {
    StackedGame game =
        StackedGame.withPasses("charleston.jokersMayPass", true).rack(1, "JJ NN").rack(3, "WW");
    game.seat(1).pass(PassStep.RIGHT_1, "J NN").courtesy(1, "J");
    game.seat(3).courtesy(1, "W");
    game.run();
    assertThat(game.events(GameEvent.Pass.class).get(1).own()).contains(Tile.JOKER);
    assertThat(game.events(GameEvent.Courtesy.class).get(1).tiles().get(0))
        .containsExactly(Tile.JOKER);
  }

  /** With many jokers in the set a rack can lack three naturals; it passes what it has. */
  @Test
  void jokers_onARackWithTwoNaturals_makeUpThePass() {
    StackedGame game =
        StackedGame.withPasses("tiles.jokers", 12).rack(1, "JJJJJJJJ").rack(1, "JJJ NN");
    game.seat(1).pass(PassStep.RIGHT_1, "J NN");
    game.run();
    assertThat(game.events(GameEvent.Pass.class).get(1).own())
        .containsExactly(Tile.NORTH, Tile.NORTH, Tile.JOKER);
    StackedGame three =
        StackedGame.withPasses("tiles.jokers", 12).rack(1, "JJJJJJJJ").rack(1, "JJ NNN");
    three.seat(1).pass(PassStep.RIGHT_1, "J NN");
    assertThatThrownBy(three::run).hasMessageContaining("a joker may not be passed");
  }

  @Test
  void heavenly_false_doesNotAskEastAsDealt() {
    StackedGame game =
        StackedGame.withPasses("east.heavenly", false).rack(0, "FF 7777d 7777b GGGG");
    game.seat(0).declaresEarly();
    game.run();
    assertThat(game.seat(0).asked.get(0)).isEqualTo("pass right-1");
    StackedGame asked = StackedGame.withPasses().rack(0, "FF 7777d 7777b GGGG");
    asked.run();
    assertThat(asked.seat(0).asked.get(0)).isEqualTo("declare");
  }

  @Test
  void earthlyBetweenRounds_false_doesNotAskEastAfterTheFirstRound() {
    assertThat(afterFirstRound(true)).contains("declare");
    assertThat(afterFirstRound(false)).doesNotContain("declare").contains("stop");
  }

  /** East is complete after the first left, and declines. */
  private static List<String> afterFirstRound(boolean allowed) {
    StackedGame game =
        StackedGame.withPasses("east.earthlyBetweenRounds", allowed)
            .rack(0, "111b 4444c NNNN 345b")
            .rack(1, "RRR")
            .rack(2, "445d")
            .rack(3, "789c");
    game.seat(0).pass(PassStep.RIGHT_1, "345b").pass(PassStep.ACROSS_1, "789c");
    game.seat(0).pass(PassStep.LEFT_1, "445d");
    game.seat(1).pass(PassStep.LEFT_1, "RRR");
    game.seat(2).pass(PassStep.ACROSS_1, "445d");
    game.seat(3).pass(PassStep.RIGHT_1, "789c");
    game.run();
    return game.seat(0).asked;
  }
}
