package org.tallywall.core.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.tallywall.core.play.ClaimChoice;
import org.tallywall.core.play.StackedGame;
import org.tallywall.core.play.TurnChoice;
import org.tallywall.core.record.GameEvent.Losers;
import org.tallywall.core.record.GameEvent.Mahjong;

/** Breaches planted in declarations, ends and payments of good records: each is found. */
class PlantedInEndsTest {
  private static final Losers NOBODY = new Losers(List.of(), List.of());

  /** South draws the last tile of T1 and T8, with one joker. */
  private static StackedGame drawn() {
    StackedGame game = StackedGame.play().rack(1, "11b J 4444c NNNN RR").draws("R");
    game.seat(1).turn(TurnChoice.mahjong());
    game.run();
    return game;
  }

  private static void found(StackedGame game, GameRecord planted, int event, String message) {
    found(Replay.check(game.hands(), planted).orElse(null), event, message);
  }

  private static void found(Breach breach, int event, String message) {
    assertThat(breach).as("nothing found").isNotNull();
    assertThat(breach.message()).contains(message);
    assertThat(breach.event()).as(breach.message()).isEqualTo(event);
  }

  private static void ended(UnaryOperator<GameRecord.End> change, String message) {
    StackedGame game = drawn();
    found(game, Records.end(game.record(), change), 2, message);
  }

  private static GameRecord.End winOf(
      GameRecord.End end, String line, List<String> hand, int value, boolean jokerless) {
    GameRecord.Win old = end.win();
    GameRecord.Win win =
        new GameRecord.Win(old.seat(), old.by(), old.from(), line, hand, value, jokerless);
    return new GameRecord.End(end.how(), win, end.points(), end.wall());
  }

  @Test
  void wrongPayment_isFound() {
    ended(
        end -> new GameRecord.End(end.how(), end.win(), List.of(-50, 100, -25, -25), end.wall()),
        "the payments are [-50, 150, -50, -50]");
    ended(
        end -> new GameRecord.End(end.how(), end.win(), List.of(-50, 150, -50), end.wall()),
        "the payments are");
  }

  @Test
  void wrongNumberOfTilesLeft_isFound() {
    ended(
        end -> new GameRecord.End(end.how(), end.win(), end.points(), 97),
        "the wall has 98 tiles left");
  }

  @Test
  void cheaperLine_isFound() {
    ended(end -> winOf(end, "T8", end.win().hand(), 20, false), "another line pays more");
  }

  @Test
  void otherLine_isFound() {
    ended(end -> winOf(end, "T2", end.win().hand(), 30, false), "the tiles are not the hand");
    ended(end -> winOf(end, "T99", end.win().hand(), 25, false), "the tiles are not the hand");
  }

  @Test
  void otherHand_isFound() {
    ended(
        end -> winOf(end, "T1", List.of("4444c", "NNNN", "RRR", "111d"), 25, false),
        "the tiles are not the hand");
  }

  @Test
  void wrongValue_isFound() {
    ended(end -> winOf(end, "T1", end.win().hand(), 30, false), "the line's value is 25");
  }

  @Test
  void wronglyJokerless_isFound() {
    ended(end -> winOf(end, "T1", end.win().hand(), 25, true), "jokerless");
  }

  @Test
  void otherEndThanTheEvent_isFound() {
    ended(
        end -> new GameRecord.End("wall-game", null, List.of(0, 0, 0, 0), end.wall()),
        "the end does not say who won");
    ended(
        end -> {
          GameRecord.Win old = end.win();
          GameRecord.Win other =
              new GameRecord.Win(2, old.by(), -1, old.line(), old.hand(), 25, false);
          return new GameRecord.End(end.how(), other, end.points(), end.wall());
        },
        "the end and the event differ");
  }

  @Test
  void wallGameThatNamesAWinnerOrPays_isFound() {
    StackedGame game = StackedGame.play();
    game.run();
    int last = game.record().events().size() - 1;
    GameRecord.Win win = drawn().record().end().win();
    found(
        game,
        Records.end(game.record(), end -> new GameRecord.End("wall-game", win, end.points(), 0)),
        last,
        "the end is wall-game");
    found(
        game,
        Records.end(
            game.record(), end -> new GameRecord.End("wall-game", null, List.of(5, 5, 5, 5), 0)),
        last,
        "the payments are [0, 0, 0, 0]");
    found(
        game,
        Records.end(game.record(), end -> new GameRecord.End("void", null, end.points(), 0)),
        last,
        "the end is wall-game");
  }

  @Test
  void wrongWayOfWinning_isFound() {
    StackedGame game = drawn();
    found(game.breachOf(2, new Mahjong(1, "exchange", -1, NOBODY)), 2, "completed by draw");
    found(game.breachOf(2, new Mahjong(1, "discard", 0, NOBODY)), 2, "completed by draw");
    found(game.breachOf(2, new Mahjong(1, "luck", -1, NOBODY)), 2, "completed by draw");
    found(game.breachOf(2, new Mahjong(1, "draw", 0, NOBODY)), 2, "from (rule 3.5.7)");
  }

  @Test
  void losersOfASelfDrawnWin_areFound() {
    StackedGame game = drawn();
    Mahjong besides = new Mahjong(1, "draw", -1, new Losers(List.of(2), List.of()));
    found(game.breachOf(2, besides), 2, "nobody else claims");
  }

  @Test
  void declarationOutOfTurn_isFound() {
    found(drawn().breachOf(2, new Mahjong(2, "draw", -1, NOBODY)), 2, "seat 1 is on turn");
  }

  @Test
  void declarationOfAnUnfinishedHand_isFound() {
    StackedGame game = StackedGame.play().rack(1, "11b J 4444c NNNN RR").draws("3b");
    game.run();
    GameRecord end = drawn().record();
    GameRecord planted =
        new GameRecord(
            game.record().header(),
            game.record().wall(),
            game.record().dice(),
            List.of(
                game.record().events().get(0),
                game.record().events().get(1),
                new Mahjong(1, "exchange", -1, NOBODY)),
            new GameRecord.End(
                "mahjong",
                new GameRecord.Win(1, "exchange", -1, "T1", end.end().win().hand(), 25, false),
                end.end().points(),
                98));
    found(game, planted, 2, "the 14 tiles are not a hand of the card");
  }

  @Test
  void winOnADiscardThatCompletesNothing_isFound() {
    StackedGame game = StackedGame.play().rack(0, "3b").rack(1, "11b J 4444c NNNN RR");
    game.seat(0).discard("3b");
    game.run();
    found(
        game.breachOf(1, new Mahjong(1, "discard", 0, NOBODY)),
        1,
        "the 14 tiles are not a hand of the card");
  }

  /** East throws the red that West waits for. */
  private static StackedGame claimed() {
    StackedGame game = StackedGame.play().rack(0, "R").rack(2, "111b 4444c NNNN RR");
    game.seat(0).discard("R");
    game.seat(2).claim("R", ClaimChoice.mahjong());
    game.run();
    return game;
  }

  @Test
  void winOnADiscardOfAnother_isFound() {
    found(claimed().breachOf(1, new Mahjong(2, "discard", 1, NOBODY)), 1, "a win on the discard");
    found(claimed().breachOf(1, new Mahjong(2, "draw", -1, NOBODY)), 1, "a win on the discard");
  }

  @Test
  void discarderThatPaysTooLittle_isFound() {
    StackedGame game = claimed();
    found(
        game,
        Records.end(
            game.record(),
            end ->
                new GameRecord.End(end.how(), end.win(), List.of(-50, -50, 150, -50), end.wall())),
        1,
        "the payments are [-100, -50, 200, -50]");
  }

  @Test
  void eventAfterAWin_isFound() {
    StackedGame game = claimed();
    List<GameEvent> events = new ArrayList<>(game.record().events());
    events.add(new GameEvent.Discard(2, 1));
    GameRecord more =
        new GameRecord(
            game.record().header(),
            game.record().wall(),
            game.record().dice(),
            events,
            game.record().end());
    found(game, more, 2, "nothing happens after the end");
  }

  @Test
  void earlyWin_isFoundWhereItIsNotAllowedOrNotEasts() {
    StackedGame game = StackedGame.withPasses().rack(0, "FF 7777d 7777b GGGG");
    game.seat(0).declaresEarly();
    game.run();
    found(game.breachOf(0, new Mahjong(1, "deal", -1, NOBODY)), 0, "only East may declare");
    found(game.breachOf(0, new Mahjong(0, "draw", -1, NOBODY)), 0, "only East may declare");
    GameRecord.Header old = game.record().header();
    GameRecord.Header barred =
        new GameRecord.Header(
            "",
            7,
            0,
            0,
            "",
            -1,
            old.card(),
            org.tallywall.core.rules.TableRules.of(old.rules())
                .with("east.heavenly", false)
                .switches(),
            old.players());
    found(
        game,
        new GameRecord(
            barred,
            game.record().wall(),
            game.record().dice(),
            game.record().events(),
            game.record().end()),
        0,
        "East may not declare at this moment");
  }

  @Test
  void winBetweenTheFirstPasses_isFound() {
    StackedGame game = StackedGame.withPasses().rack(0, "111b 4444c NNNN 345b").rack(3, "RRR");
    game.seat(0).pass(org.tallywall.core.play.PassStep.RIGHT_1, "345b");
    game.seat(3).pass(org.tallywall.core.play.PassStep.RIGHT_1, "RRR");
    game.run();
    found(game.breachOf(4, new Mahjong(0, "deal", -1, NOBODY)), 4, "here comes the pass across-1");
  }
}
