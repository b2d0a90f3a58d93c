package org.tallywall.core.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.tallywall.core.record.GameEvent.Courtesy;
import org.tallywall.core.record.GameEvent.Pass;
import org.tallywall.core.record.GameEvent.Stop;
import org.tallywall.core.rules.TableRules;
import org.tallywall.core.tile.Tile;

/** Breaches planted in the header, the wall and the passes of good records: each is found there. */
class PlantedInPassesTest {
  private static final int LEFT_1 = 8;
  private static final int STOP = 12;

  /** A game of greedy players and players by lot, all six passes played. */
  private static final GameRecord GAME =
      Records.find(
          TableRules.STANDARD,
          game ->
              game.events().size() > 40
                  && game.events().get(13) instanceof Pass
                  && game.events().get(LEFT_1 + 1) instanceof Pass pass
                  && !pass.forwarded().isEmpty());

  private static void found(GameRecord planted, int event, String message) {
    assertThat(Replay.check(Records.HANDS, planted))
        .hasValueSatisfying(
            breach -> {
              assertThat(breach.message()).contains(message);
              assertThat(breach.event()).as(breach.message()).isEqualTo(event);
            });
  }

  private static Pass pass(int at) {
    return (Pass) GAME.events().get(at);
  }

  private static GameRecord passWith(int at, List<Integer> own, List<Integer> forwarded) {
    Pass pass = pass(at);
    return Records.with(GAME, at, new Pass(pass.step(), pass.from(), pass.to(), own, forwarded));
  }

  @Test
  void goodGame_hasNoBreach() {
    assertThat(Replay.check(Records.HANDS, GAME)).isEmpty();
  }

  private static GameRecord headed(GameRecord.Header header) {
    return new GameRecord(header, GAME.wall(), GAME.dice(), GAME.events(), GAME.end());
  }

  private static GameRecord.Header header(Map<String, Object> rules, List<Object> players) {
    GameRecord.Header old = GAME.header();
    return new GameRecord.Header(
        old.study(), old.seed(), old.game(), old.deal(), "", -1, old.card(), rules, players);
  }

  @Test
  void otherCard_isFound() {
    GameRecord.Header old = GAME.header();
    GameRecord.CardName other = new GameRecord.CardName(old.card().card(), "sha256:0");
    found(
        headed(new GameRecord.Header("", 1, 0, 0, "", -1, other, old.rules(), old.players())),
        -1,
        "another card");
  }

  @Test
  void unknownSwitch_isFound() {
    Map<String, Object> rules = new LinkedHashMap<>(GAME.header().rules());
    rules.put("wall.warm", "ON");
    found(headed(header(rules, GAME.header().players())), -1, "unknown switch \"wall.warm\"");
  }

  @Test
  void unknownValueOfASwitch_isFound() {
    Map<String, Object> rules = new LinkedHashMap<>(GAME.header().rules());
    rules.put("wall.cold", "ICY");
    found(headed(header(rules, GAME.header().players())), -1, "may be OFF, NO_MAHJONG_CLAIM");
    rules.put("wall.cold", null);
    found(headed(header(rules, GAME.header().players())), -1, "may be OFF, NO_MAHJONG_CLAIM");
  }

  @Test
  void threePlayers_areFound() {
    found(headed(header(GAME.header().rules(), List.of("a", "b", "c"))), -1, "four players");
  }

  @Test
  void fifthCopyInTheWall_isFound() {
    found(
        Records.wall(
            GAME,
            wall -> {
              wall.set(0, wall.get(0) == 3 ? 4 : 3);
              return wall;
            }),
        -1,
        "the wall holds");
  }

  @Test
  void shortWall_isFound() {
    found(Records.wall(GAME, wall -> wall.subList(0, 151)), -1, "the wall holds");
  }

  @Test
  void wrongDice_areFound() {
    found(Records.dice(GAME, 7, 1), -1, "a die shows 1 to 6");
    found(Records.dice(GAME, 0, 1), -1, "a die shows 1 to 6");
    found(Records.dice(GAME, 3), -1, "two dice");
  }

  @Test
  void dealtTilesChanged_areFoundAtTheFirstPassThatLacksOne() {
    int gone = pass(0).own().get(0);
    found(
        Records.wall(
            GAME,
            wall -> {
              List<Integer> ownPlaces = new ArrayList<>();
              for (int place = 0; place < 53; place++) {
                if (place < 48 ? place / 4 % 4 == 0 : place == 48 || place == 52) {
                  ownPlaces.add(place);
                }
              }
              List<Integer> lasts = new ArrayList<>();
              for (int place = 151; place > 53; place--) {
                if (wall.get(place) != gone) {
                  lasts.add(place);
                }
              }
              int next = 0;
              for (int place : ownPlaces) {
                if (wall.get(place) == gone) {
                  Collections.swap(wall, place, lasts.get(next++));
                }
              }
              return wall;
            }),
        0,
        "seat 0 holds no " + Tile.symbol(gone));
  }

  @Test
  void passesInWrongOrder_areFound() {
    found(
        Records.events(
            GAME,
            events -> {
              Collections.swap(events, 0, 4);
              return events;
            }),
        0,
        "the pass right-1 comes first, not across-1");
    found(
        Records.events(
            GAME,
            events -> {
              Collections.swap(events, 1, 2);
              return events;
            }),
        1,
        "from and to");
  }

  @Test
  void passToTheWrongSeat_isFound() {
    Pass old = pass(2);
    found(
        Records.with(GAME, 2, new Pass(old.step(), 2, 1, old.own(), old.forwarded())),
        2,
        "from and to");
  }

  @Test
  void missingPass_isFound() {
    found(Records.without(GAME, 7), 7, "the pass across-1 comes first, not left-1");
    found(Records.without(GAME, 11), 11, "here comes the pass left-1");
  }

  @Test
  void twoTilesPassed_areFound() {
    found(passWith(1, pass(1).own().subList(0, 2), List.of()), 1, "three tiles are passed");
  }

  @Test
  void fourTilesPassed_areFound() {
    List<Integer> four = new ArrayList<>(pass(0).own());
    four.add(someNaturalOfEast(four));
    found(passWith(0, four, List.of()), 0, "three tiles are passed");
  }

  private static int someNaturalOfEast(List<Integer> not) {
    for (int place = 0; place < 4; place++) {
      int kind = GAME.wall().get(place);
      if (kind != Tile.JOKER && !not.contains(kind)) {
        return kind;
      }
    }
    throw new AssertionError("the first four tiles do not serve");
  }

  @Test
  void tileNotHeld_isFoundAtItsPass() {
    int absent = 0;
    while (GAME.wall().subList(0, 53).contains(absent)) {
      absent++;
    }
    List<Integer> own = new ArrayList<>(pass(3).own());
    own.set(0, absent);
    found(passWith(3, own, List.of()), 3, "seat 3 holds no " + Tile.symbol(absent));
  }

  @Test
  void jokerPassed_isFound() {
    GameRecord game =
        Records.find(
            TableRules.STANDARD, record -> record.wall().subList(0, 4).contains(Tile.JOKER));
    Pass old = (Pass) game.events().get(0);
    List<Integer> own = new ArrayList<>(old.own());
    own.set(0, Tile.JOKER);
    found(
        Records.with(game, 0, new Pass(old.step(), 0, 1, own, List.of())),
        0,
        "a joker may not be passed");
  }

  @Test
  void blindTileInAPassWithout_isFound() {
    found(
        passWith(1, pass(1).own().subList(0, 2), List.of(pass(0).own().get(0))),
        1,
        "at least 3 own tiles here");
  }

  @Test
  void tileThatDidNotComeIn_isFound() {
    Pass old = pass(LEFT_1 + 1);
    List<Integer> forwarded = new ArrayList<>(old.forwarded());
    int stranger = 0;
    while (setOutBy(stranger)) {
      stranger++;
    }
    forwarded.set(0, stranger);
    found(passWith(LEFT_1 + 1, old.own(), forwarded), LEFT_1 + 1, "nobody set out the ");
  }

  private static boolean setOutBy(int kind) {
    for (int at = LEFT_1; at < LEFT_1 + 4; at++) {
      if (pass(at).own().contains(kind)) {
        return true;
      }
    }
    return false;
  }

  /** It was set out, but by a seat whose tiles did not come this way. */
  @Test
  void tileOfAnotherSeat_isFound() {
    Pass old = pass(LEFT_1 + 1);
    for (int kind : pass(LEFT_1).own()) {
      if (!pass(LEFT_1 + 2).own().contains(kind) && !pass(LEFT_1 + 2).forwarded().contains(kind)) {
        List<Integer> forwarded = new ArrayList<>(old.forwarded());
        forwarded.set(0, kind);
        found(passWith(LEFT_1 + 1, old.own(), forwarded), LEFT_1 + 1, "which did not come in");
        return;
      }
    }
    throw new AssertionError("East and West set out the same kinds");
  }

  /** Four that set nothing out and hand on tiles of the same kinds in a circle. */
  @Test
  void tilesFromNowhere_areFound() {
    GameRecord circle =
        Records.events(
            GAME,
            events -> {
              for (int at = LEFT_1; at < LEFT_1 + 4; at++) {
                Pass old = pass(at);
                events.set(
                    at, new Pass(old.step(), old.from(), old.to(), List.of(), List.of(1, 1, 2)));
              }
              return events;
            });
    found(circle, LEFT_1, "nobody set out the 2b that goes on unseen");
  }

  @Test
  void moreBlindThanTheTableAllows_isFound() {
    TableRules rules = TableRules.STANDARD.with("charleston.blindMax", 1);
    GameRecord blind =
        Records.find(
            TableRules.STANDARD,
            game ->
                game.events().size() > 12
                    && game.events().get(LEFT_1) instanceof Pass pass
                    && pass.own().size() == 1);
    GameRecord.Header old = blind.header();
    GameRecord.Header strict =
        new GameRecord.Header(
            "", old.seed(), 0, 0, "", -1, old.card(), rules.switches(), old.players());
    found(
        new GameRecord(strict, blind.wall(), blind.dice(), blind.events(), blind.end()),
        LEFT_1,
        "at least 2 own tiles here");
  }

  @Test
  void missingStopQuestion_isFound() {
    found(Records.without(GAME, STOP), STOP, "here comes the stop question");
  }

  @Test
  void stoppersOutOfOrderOrTwice_areFound() {
    found(Records.with(GAME, STOP, new Stop(List.of(2, 1))), STOP, "ascending");
    found(Records.with(GAME, STOP, new Stop(List.of(1, 1))), STOP, "once each");
    found(Records.with(GAME, STOP, new Stop(List.of(4))), STOP, "named once each");
  }

  @Test
  void secondRoundAfterAStop_isFound() {
    found(Records.with(GAME, STOP, new Stop(List.of(3))), STOP + 1, "here comes the courtesy pass");
  }

  @Test
  void secondRoundLeftOutWithoutAStop_isFound() {
    GameRecord cut =
        Records.events(
            GAME,
            events -> {
              events.subList(STOP + 1, STOP + 13).clear();
              return events;
            });
    found(cut, STOP + 1, "here comes the pass left-2");
  }

  private static int courtesyAt() {
    return Records.index(GAME, Courtesy.class, event -> true);
  }

  @Test
  void courtesyNumberOfFour_isFound() {
    Courtesy old = (Courtesy) GAME.events().get(courtesyAt());
    found(
        Records.with(GAME, courtesyAt(), new Courtesy(old.seats(), List.of(4, 4), old.tiles())),
        courtesyAt(),
        "a courtesy number is 0 to 3");
  }

  @Test
  void courtesySeatsOutOfOrder_areFound() {
    found(
        Records.events(
            GAME,
            events -> {
              Collections.swap(events, courtesyAt(), courtesyAt() + 1);
              return events;
            }),
        courtesyAt(),
        "opposite seats, 0 and 2 first");
  }

  @Test
  void moreThanTheLowerNumberGiven_isFound() {
    GameRecord game = courtesyOf(1);
    int at = Records.index(game, Courtesy.class, event -> event.tiles().get(0).size() == 1);
    Courtesy old = (Courtesy) game.events().get(at);
    List<Integer> two = List.of(old.tiles().get(0).get(0), old.tiles().get(0).get(0));
    found(
        Records.with(
            game, at, new Courtesy(old.seats(), old.asked(), List.of(two, old.tiles().get(1)))),
        at,
        "the lower number is exchanged");
  }

  private static GameRecord courtesyOf(int number) {
    return Records.find(
        TableRules.STANDARD,
        game ->
            Records.index(game, Courtesy.class, event -> event.tiles().get(0).size() == number)
                >= 0);
  }

  @Test
  void jokerInTheCourtesyPass_isFound() {
    GameRecord game = courtesyOf(1);
    int at = Records.index(game, Courtesy.class, event -> event.tiles().get(0).size() == 1);
    Courtesy old = (Courtesy) game.events().get(at);
    found(
        Records.with(
            game,
            at,
            new Courtesy(
                old.seats(), old.asked(), List.of(List.of(Tile.JOKER), old.tiles().get(1)))),
        at,
        "a joker may not be passed");
  }

  @Test
  void courtesyPassLeftOut_isFound() {
    found(
        Records.without(GAME, courtesyAt() + 1), courtesyAt() + 1, "here comes the courtesy pass");
  }
}
