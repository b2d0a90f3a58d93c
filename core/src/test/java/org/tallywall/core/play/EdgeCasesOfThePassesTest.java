package org.tallywall.core.play;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tallywall.core.record.GameEvent;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;
import org.tallywall.core.tile.TileText;

/** The worked cases of the rules about the passes before play, EC-05 to EC-17. */
class EdgeCasesOfThePassesTest {
  private static List<Integer> tiles(String text) {
    return java.util.Arrays.stream(TileText.rack(text).tiles()).boxed().toList();
  }

  private static List<GameEvent.Pass> passes(StackedGame game, PassStep step) {
    return game.events(GameEvent.Pass.class).stream()
        .filter(pass -> pass.step().equals(step.text()))
        .toList();
  }

  @ParameterizedTest
  @EnumSource(PassStep.class)
  void ec05_jokerInAPass_isRejected(PassStep step) {
    StackedGame game = StackedGame.withPasses().rack(1, "J NN");
    game.seat(1).pass(step, "J NN");
    assertThatThrownBy(game::run)
        .isInstanceOf(IllegalMoveException.class)
        .hasMessageContaining("2.1.2");
  }

  @Test
  void ec05_jokerInTheCourtesyPass_isRejected() {
    StackedGame game = StackedGame.withPasses().rack(1, "J NN");
    game.seat(1).courtesy(1, "J");
    game.seat(3).courtesy(1, null);
    assertThatThrownBy(game::run)
        .isInstanceOf(IllegalMoveException.class)
        .hasMessageContaining("2.1.2");
  }

  @Test
  void ec06_tilesOfAPass_areFixedBeforeAnyArriveAndMayGoOnInTheNext() {
    StackedGame game = StackedGame.withPasses().rack(0, "RRR 4b").rack(1, "EEE");
    List<Integer> seen = new ArrayList<>();
    for (ScriptedPlayer player : game.seats) {
      player.watch(
          (question, view) -> {
            if (question.equals("pass right-1")) {
              seen.add(view.passes().size());
            }
          });
    }
    game.seat(0).pass(PassStep.RIGHT_1, "RRR");
    game.seat(1).pass(PassStep.ACROSS_1, "RRR");
    game.run();
    assertThat(seen).as("asked once each, before any tile moved").containsExactly(0, 0, 0, 0);
    assertThat(passes(game, PassStep.RIGHT_1).get(0).own()).isEqualTo(tiles("RRR"));
    assertThat(passes(game, PassStep.ACROSS_1).get(1).own()).isEqualTo(tiles("RRR"));
    assertThat(passes(game, PassStep.ACROSS_1).get(1).to()).isEqualTo(3);
  }

  /** A tile that comes in cannot be in the same pass, blind passing apart. */
  @Test
  void ec06_tileThatIsComingIn_cannotBeSetOutInTheSamePass() {
    StackedGame game = StackedGame.withPasses().rack(0, "RRR 4b").rack(1, "EEE");
    game.seat(0).pass(PassStep.RIGHT_1, "RRR");
    game.seat(1).pass(PassStep.RIGHT_1, "R EE");
    assertThatThrownBy(game::run).hasMessageContaining("the rack holds 0 of R");
  }

  @Test
  void ec07_rackWithEightJokers_hasTenPassesByPosition() {
    StackedGame game = StackedGame.withPasses().rack(1, "JJJJJJJJ 13579b");
    List<Integer> legal = new ArrayList<>();
    game.seat(1)
        .watch(
            (question, view) -> {
              if (question.equals("pass right-1")) {
                legal.add(legalPasses(view));
              }
            });
    game.run();
    assertThat(legal).containsExactly(10);
  }

  private static int legalPasses(SeatView view) {
    Rack rack = new Rack();
    view.copyRack(rack);
    int[] tiles = rack.tiles();
    int legal = 0;
    for (int one = 0; one < tiles.length; one++) {
      for (int two = one + 1; two < tiles.length; two++) {
        for (int three = two + 1; three < tiles.length; three++) {
          PassChoice choice = PassChoice.of(tiles[one], tiles[two], tiles[three]);
          legal += LegalMoves.passFault(view, PassStep.RIGHT_1, choice) == null ? 1 : 0;
        }
      }
    }
    return legal;
  }

  @ParameterizedTest
  @EnumSource(
      value = PassStep.class,
      names = {"RIGHT_1", "ACROSS_1", "LEFT_2", "ACROSS_2"})
  void ec08_fewerThanThreeTiles_areRejectedWhereNothingGoesBlind(PassStep step) {
    StackedGame game = StackedGame.withPasses().rack(2, "NN");
    game.seat(2).pass(step, "NN");
    assertThatThrownBy(game::run)
        .isInstanceOf(IllegalMoveException.class)
        .hasMessageContaining("at most 0 tiles may be blind (rule 2.3.1)");
  }

  @Test
  void ec09_oneOwnTile_keepsOneAndHandsTwoOn() {
    StackedGame game = StackedGame.withPasses().rack(1, "N").rack(2, "127d");
    game.seat(1).pass(PassStep.LEFT_1, "N");
    game.seat(2).pass(PassStep.LEFT_1, "127d");
    List<SeatView.PassSeen> seen = new ArrayList<>();
    game.seat(1)
        .watch(
            (question, view) -> {
              if (question.equals("stop")) {
                seen.addAll(view.passes());
              }
            });
    game.run();
    GameEvent.Pass pass = passes(game, PassStep.LEFT_1).get(1);
    assertThat(pass.own()).isEqualTo(tiles("N"));
    assertThat(pass.forwarded()).hasSize(2).isSubsetOf(tiles("127d"));
    List<Integer> kept = seen.get(2).received();
    assertThat(kept).hasSize(1);
    assertThat(both(pass.forwarded(), kept)).containsExactlyElementsOf(tiles("127d"));
    assertThat(seen.get(2).blind()).containsExactly(0, 2, 0, 0);
  }

  private static List<Integer> both(List<Integer> some, List<Integer> others) {
    List<Integer> all = new ArrayList<>(some);
    all.addAll(others);
    all.sort(null);
    return all;
  }

  @Test
  void ec10_twoOwnTilesEach_handOnThreeAndKeepTwo() {
    StackedGame game = allOwe("12d", "34d", "67d", "89d", PassStep.RIGHT_2);
    List<List<Integer>> kept = new ArrayList<>();
    watchKept(game, kept);
    game.run();
    TreeSet<Integer> moved = new TreeSet<>();
    for (GameEvent.Pass pass : passes(game, PassStep.RIGHT_2)) {
      assertThat(pass.own()).hasSize(2);
      assertThat(pass.forwarded()).hasSize(1);
      moved.addAll(pass.own());
    }
    assertThat(moved).hasSize(8);
    assertThat(kept).allMatch(received -> received.size() == 2);
    assertThat(kept.stream().flatMap(List::stream)).containsExactlyInAnyOrderElementsOf(moved);
    StackedGame again = allOwe("12d", "34d", "67d", "89d", PassStep.RIGHT_2);
    again.run();
    assertThat(again.record()).isEqualTo(game.record());
  }

  private static StackedGame allOwe(
      String east, String south, String west, String north, PassStep step) {
    String[] own = {east, south, west, north};
    StackedGame game = StackedGame.withPasses("charleston.second", "COMPULSORY");
    for (int seat = 0; seat < 4; seat++) {
      game.rack(seat, own[seat]);
      game.seat(seat).pass(step, own[seat]);
    }
    return game;
  }

  private static void watchKept(StackedGame game, List<List<Integer>> kept) {
    for (ScriptedPlayer player : game.seats) {
      player.watch(
          (question, view) -> {
            if (question.equals("courtesy number")) {
              kept.add(view.passes().get(5).received());
            }
          });
    }
  }

  @Test
  void ec11_allBlind_movesNothingAndPlayGoesOn() {
    StackedGame game = StackedGame.withPasses();
    List<String> before = new ArrayList<>();
    List<String> after = new ArrayList<>();
    for (ScriptedPlayer player : game.seats) {
      player.pass(PassStep.LEFT_1, "");
      player.watch(
          (question, view) -> {
            Rack rack = new Rack();
            view.copyRack(rack);
            if (question.equals("pass left-1")) {
              before.add(rack.toString());
            } else if (question.equals("stop")) {
              after.add(rack.toString());
            }
          });
    }
    game.run();
    assertThat(after).isEqualTo(before).hasSize(4);
    assertThat(passes(game, PassStep.LEFT_1))
        .allMatch(pass -> pass.own().isEmpty() && pass.forwarded().isEmpty());
    assertThat(passes(game, PassStep.LEFT_2)).hasSize(4);
  }

  @Test
  void ec12_oneStop_skipsTheSecondRoundButNotTheCourtesyPass() {
    StackedGame game = StackedGame.withPasses();
    game.seat(2).stops();
    game.run();
    assertThat(game.events(GameEvent.Stop.class))
        .singleElement()
        .satisfies(stop -> assertThat(stop.seats()).containsExactly(2));
    assertThat(game.events(GameEvent.Pass.class)).hasSize(12);
    for (ScriptedPlayer player : game.seats) {
      assertThat(player.asked.subList(0, 5))
          .containsExactly(
              "pass right-1", "pass across-1", "pass left-1", "stop", "courtesy number");
    }
  }

  @Test
  void ec13_noStop_isNotAskedForAgain() {
    StackedGame game = StackedGame.withPasses();
    game.run();
    assertThat(game.events(GameEvent.Stop.class)).hasSize(1);
    assertThat(game.events(GameEvent.Pass.class)).hasSize(24);
    for (ScriptedPlayer player : game.seats) {
      assertThat(player.asked.subList(0, 8))
          .containsExactly(
              "pass right-1",
              "pass across-1",
              "pass left-1",
              "stop",
              "pass left-2",
              "pass across-2",
              "pass right-2",
              "courtesy number");
    }
  }

  @Test
  void ec14_courtesyPass_movesTheLowerNumber() {
    StackedGame game = StackedGame.withPasses().rack(0, "NNN").rack(2, "WWW").rack(3, "EEE");
    game.seat(0).courtesy(3, "NNN");
    game.seat(2).courtesy(1, "WWW");
    game.seat(1).courtesy(0, null);
    game.seat(3).courtesy(3, "EEE");
    game.run();
    List<GameEvent.Courtesy> courtesy = game.events(GameEvent.Courtesy.class);
    assertThat(courtesy)
        .containsExactly(
            new GameEvent.Courtesy(
                List.of(0, 2), List.of(3, 1), List.of(List.of(Tile.NORTH), List.of(Tile.WEST))),
            new GameEvent.Courtesy(List.of(1, 3), List.of(0, 3), List.of(List.of(), List.of())));
    assertThat(game.seat(0).asked).contains("courtesy tiles 1");
    assertThat(game.seat(3).asked).noneMatch(question -> question.startsWith("courtesy tiles"));
  }

  @Test
  void ec15_eastCompleteAsDealt_winsWithoutPasses() {
    StackedGame game = StackedGame.withPasses().rack(0, "11b J 4444c NNNN RRR");
    game.seat(0).declaresEarly();
    assertThat(game.run().points()).containsExactly(150, -50, -50, -50);
    assertThat(game.course()).containsExactly("0 wins by deal");
    assertThat(game.seat(1).asked).isEmpty();
    StackedGame jokerless = StackedGame.withPasses().rack(0, "111b 4444c NNNN RRR");
    jokerless.seat(0).declaresEarly();
    assertThat(jokerless.run().points()).containsExactly(300, -100, -100, -100);
  }

  @Test
  void ec16_eastCompleteInTheMiddleOfARound_mustPassOn() {
    StackedGame game = StackedGame.withPasses().rack(0, "111b 4444c NNNN 345b").rack(3, "RRR");
    game.seat(0).pass(PassStep.RIGHT_1, "345b").pass(PassStep.ACROSS_1, "NNN").declaresEarly();
    game.seat(3).pass(PassStep.RIGHT_1, "RRR");
    List<Boolean> complete = new ArrayList<>();
    game.seat(0)
        .watch(
            (question, view) -> {
              if (question.equals("pass across-1")) {
                complete.add(view.complete());
              }
            });
    game.run();
    assertThat(complete).containsExactly(true);
    assertThat(passes(game, PassStep.ACROSS_1).get(0).own()).isEqualTo(tiles("NNN"));
    assertThat(game.seat(0).asked).doesNotContain("declare");
  }

  @Test
  void ec16_eastCompleteAfterTheFirstRound_mayDeclareThen() {
    StackedGame game =
        StackedGame.withPasses()
            .rack(0, "111b 4444c NNNN 345b")
            .rack(1, "RRR")
            .rack(2, "445d")
            .rack(3, "789c");
    game.seat(0).pass(PassStep.RIGHT_1, "345b").pass(PassStep.ACROSS_1, "789c");
    game.seat(0).pass(PassStep.LEFT_1, "445d").declaresEarly();
    game.seat(1).pass(PassStep.LEFT_1, "RRR");
    game.seat(2).pass(PassStep.ACROSS_1, "445d");
    game.seat(3).pass(PassStep.RIGHT_1, "789c");
    assertThat(game.run().win().by()).isEqualTo(WinBy.DEAL);
    assertThat(game.events(GameEvent.Pass.class)).hasSize(12);
    assertThat(game.events(GameEvent.Stop.class)).isEmpty();
  }

  @Test
  void ec17_tilesPassedOnBlind_areNotInThePassersView() {
    List<String> one = viewsOfSouth("127d", "EEE");
    List<String> other = viewsOfSouth("EEE", "127d");
    assertThat(one).hasSizeGreaterThan(10).isEqualTo(other);
  }

  /** What South sees when three tiles of West's go on to East unseen; the others lie last. */
  private static List<String> viewsOfSouth(String passed, String hidden) {
    StackedGame game =
        StackedGame.withPasses()
            .rack(2, passed)
            .lastDraws(hidden.equals("EEE") ? "E E E" : "1d 2d 7d");
    game.seat(1).pass(PassStep.LEFT_1, "");
    game.seat(2).pass(PassStep.LEFT_1, passed);
    List<String> views = new ArrayList<>();
    game.seat(1)
        .watch(
            (question, view) -> {
              if (view.wallLeft() > 3) {
                views.add(question + ViewText.of(view));
              }
            });
    game.run();
    assertThat(passes(game, PassStep.LEFT_1).get(1).forwarded())
        .containsExactlyElementsOf(tiles(passed));
    return views;
  }
}
