package org.tallywall.core.play;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.tallywall.core.record.GameEvent;
import org.tallywall.core.tile.Exposure;
import org.tallywall.core.tile.Tile;

/** The worked cases of the rules about dead hands, EC-62 to EC-65. */
class EdgeCasesOfDeadHandsTest {
  /** Draws of West, North, East, South and so on, after South's claim; none serves anybody. */
  static final String DRAWS = "3b 4b 5b 3b 4b 5b 3b 4b 5b 4d 4d 4d 7c 7c 7c 9c";

  /** The same, and East draws the last tile of its hand. */
  static final String DRAWS_WITH_WIN = DRAWS + " 8c R";

  /**
   * South lays a kong of 7d open, so that only T2 is left, and holds one flower; West and North
   * throw the other seven, North the seventh in its fourth turn.
   */
  static StackedGame deadSouth(String calls) {
    StackedGame game =
        StackedGame.play("dead.calls", calls)
            .rack(0, "7d 111b 4444c NNNN RR")
            .rack(1, "F 777d 345b 1c")
            .rack(2, "FFF")
            .rack(3, "FFFF");
    game.seat(0).discard("7d");
    game.seat(1).claim("7d", ClaimChoice.expose(4, 0)).discard("1c");
    game.seat(2).discard("F F F");
    game.seat(3).discard("F F F F");
    return game;
  }

  @Test
  void ec62_impossibleHand_goesOnWhereNobodyCallsIt() {
    StackedGame game = deadSouth("OFF").draws(DRAWS);
    List<Boolean> complete = new ArrayList<>();
    game.seat(1).watch((question, view) -> complete.add(view.complete()));
    game.run();
    assertThat(game.events(GameEvent.Dead.class)).isEmpty();
    assertThat(game.course().stream().filter(event -> event.startsWith("1 draws")).count())
        .isGreaterThan(20);
    assertThat(complete).doesNotContain(true);
  }

  @Test
  void ec62_impossibleHand_isRemovedAtTheNextCheckWhereItIsCalled() {
    StackedGame game = deadSouth("AUTO").draws(DRAWS);
    game.run();
    int dead = game.course().indexOf("1 is dead");
    assertThat(game.course().subList(dead - 3, dead))
        .containsExactly("3 throws F", "0 draws 7c", "0 throws 7c");
    assertThat(game.course().subList(dead, game.course().size()))
        .noneMatch(event -> event.startsWith("1 draws") || event.startsWith("1 throws"));
    assertThat(game.events(GameEvent.Dead.class).get(0).seat()).isEqualTo(1);
  }

  /** The tile on offer can still be claimed: whoever wins by it is not dead before the window. */
  @Test
  void ec62_tileOnOffer_stillCountsForThoseWhoMayClaimIt() {
    StackedGame played = lastWest();
    Outcome outcome = played.run();
    assertThat(played.course()).endsWith("2 throws W", "1 wins by discard from 2");
    assertThat(outcome.win().seat()).isEqualTo(1);
  }

  /**
   * South shows a kong of 6b, so only T6 is left, and waits for W; West throws the last of four.
   */
  private static StackedGame lastWest() {
    StackedGame game =
        StackedGame.play("dead.calls", "AUTO")
            .rack(0, "6b W")
            .rack(1, "NES 2222c 99d 666b 4b")
            .rack(2, "WW")
            .rack(3, "W")
            .draws("3b 3b 4b 4b 5b 5b 5b");
    game.seat(0).discard("6b W");
    game.seat(1)
        .claim("6b", ClaimChoice.expose(4, 0))
        .claim("W", ClaimChoice.nothing())
        .claim("W", ClaimChoice.nothing())
        .claim("W", ClaimChoice.nothing())
        .claim("W", ClaimChoice.mahjong())
        .discard("4b");
    game.seat(2).discard("W W");
    game.seat(3).discard("W");
    return game;
  }

  @Test
  void ec63_deadHandsEarlierExposure_staysOpenToExchanges() {
    StackedGame game =
        StackedGame.play("dead.calls", "AUTO")
            .rack(0, "7d")
            .rack(1, "F 77d J 345b 1c")
            .rack(2, "FFF 7d")
            .rack(3, "FFFF")
            .draws(DRAWS);
    game.seat(0).discard("7d");
    game.seat(1).claim("7d", ClaimChoice.expose(4, 1)).discard("1c");
    game.seat(2).discard("F F F -").turn(TurnChoice.exchange(1, 0));
    game.seat(3).discard("F F F F");
    game.run();
    assertThat(game.course()).containsSequence("1 is dead", "2 draws 9c", "2 gives 7d to 1.0");
  }

  @Test
  void ec63_exposureOfAConcealedLine_isGoneWithTheHand() {
    StackedGame game =
        StackedGame.play("dead.calls", "AUTO", "claims.lineFit", "LENIENT")
            .rack(0, "2b")
            .rack(1, "2b J")
            .rack(2, "2b")
            .draws("3b");
    List<List<Exposure>> shown = new ArrayList<>();
    List<TurnChoice> choices = new ArrayList<>();
    game.seat(0).discard("2b");
    game.seat(1).claim("2b", ClaimChoice.expose(3, 1));
    game.seat(2)
        .watch(
            (question, view) -> {
              if (question.equals("turn") && shown.isEmpty()) {
                shown.add(List.copyOf(view.exposures(1)));
                choices.addAll(LegalMoves.turn(view));
              }
            });
    game.run();
    assertThat(game.course().get(3)).isEqualTo("1 is dead");
    assertThat(shown).containsExactly(List.of());
    assertThat(choices).allMatch(choice -> choice instanceof TurnChoice.Discard);
    assertThat(game.breachOf(5, new GameEvent.Exchange(2, 1, 0, 1)).message())
        .contains("there is no such exposure");
  }

  /** 6.4.2: the exposure that fits no line goes back; the one before it stays. */
  @Test
  void ec63_exposureThatKilledTheHand_goesBackAndTheEarlierStays() {
    StackedGame game =
        StackedGame.play("dead.calls", "AUTO", "claims.lineFit", "LENIENT")
            .rack(0, "7d")
            .rack(1, "77d J 33b 1c 8c")
            .rack(2, "3b 7d");
    List<List<Exposure>> shown = new ArrayList<>();
    List<Integer> jokers = new ArrayList<>();
    game.seat(0).discard("7d");
    game.seat(1)
        .claim("7d", ClaimChoice.expose(4, 1))
        .claim("3b", ClaimChoice.expose(3, 0))
        .discard("1c 8c");
    game.seat(2).discard("3b").turn(TurnChoice.exchange(1, 0));
    game.seat(3)
        .watch(
            (question, view) -> {
              if (view.dead(1)) {
                shown.add(List.copyOf(view.exposures(1)));
                jokers.add(view.faceUp(Tile.JOKER));
              }
            });
    game.run();
    assertThat(game.course()).containsSequence("1 claims 3b for 3", "1 throws 8c", "1 is dead");
    assertThat(shown.get(0)).hasSize(1);
    assertThat(game.course()).contains("2 gives 7d to 1.0");
    assertThat(jokers).contains(0);
  }

  @Test
  void ec64_deadSeat_isSkippedInTurn() {
    StackedGame game = deadSouth("AUTO").draws(DRAWS);
    game.run();
    assertThat(game.course()).containsSequence("0 throws 7c", "1 is dead", "2 draws 9c");
  }

  @Test
  void ec65_threeDeadHands_makeTheGameVoid() {
    StackedGame game =
        threeDead(StackedGame.play("dead.calls", "AUTO", "claims.lineFit", "LENIENT"));
    Outcome outcome = game.run();
    assertThat(game.course()).endsWith("3 throws 1c", "3 is dead", "void");
    assertThat(outcome.how()).isEqualTo(Outcome.How.VOID);
    assertThat(outcome.points()).containsExactly(0, 0, 0, 0);
  }

  /** East throws 3b; each of the others lays a pung open that fits no line and throws the next. */
  static StackedGame threeDead(StackedGame game) {
    game.rack(0, "3b").rack(1, "33b 4b").rack(2, "44b 5b").rack(3, "55b 1c");
    game.seat(0).discard("3b");
    game.seat(1).claim("3b", ClaimChoice.expose(3, 0)).discard("4b");
    game.seat(2).claim("4b", ClaimChoice.expose(3, 0)).discard("5b");
    game.seat(3).claim("5b", ClaimChoice.expose(3, 0)).discard("1c");
    return game;
  }
}
