package org.tallywall.core.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.tallywall.core.record.GameEvent.Claim;
import org.tallywall.core.record.GameEvent.Dead;
import org.tallywall.core.record.GameEvent.Discard;
import org.tallywall.core.record.GameEvent.Draw;
import org.tallywall.core.record.GameEvent.Exchange;
import org.tallywall.core.record.GameEvent.Losers;
import org.tallywall.core.rules.TableRules;
import org.tallywall.core.tile.Tile;

/** Breaches planted in the draws, discards, claims and exchanges of good records: each is found. */
class PlantedInPlayTest {
  private static final Losers NOBODY = new Losers(List.of(), List.of());

  /** A wall game with claims and exchanges. */
  private static final GameRecord GAME =
      Records.find(
          TableRules.STANDARD,
          game ->
              game.end().how().equals("wall-game")
                  && Records.index(game, Claim.class, claim -> claim.jokers() > 0) > 0
                  && Records.index(game, Exchange.class, exchange -> true) > 0);

  private static void found(GameRecord planted, int event, String message) {
    found(Replay.check(Records.HANDS, planted).orElse(null), event, message);
  }

  private static void found(Breach breach, int event, String message) {
    assertThat(breach).as("nothing found").isNotNull();
    assertThat(breach.message()).contains(message);
    assertThat(breach.event()).as(breach.message()).isEqualTo(event);
  }

  private static int first(Class<? extends GameEvent> kind) {
    return Records.index(GAME, kind, event -> true);
  }

  @Test
  void goodGame_hasNoBreach() {
    assertThat(Replay.check(Records.HANDS, GAME)).isEmpty();
  }

  @Test
  void wallOrderChanged_isFoundAtTheFirstDrawThatDiffers() {
    GameRecord swapped =
        Records.wall(
            GAME,
            wall -> {
              int other = 70;
              while (wall.get(other).equals(wall.get(60))) {
                other++;
              }
              Collections.swap(wall, 60, other);
              return wall;
            });
    int draw = 0;
    int drawn = 0;
    while (drawn < 8) {
      drawn += GAME.events().get(draw++) instanceof Draw ? 1 : 0;
    }
    found(swapped, draw - 1, "the next tile of the wall is");
  }

  @Test
  void eastDrawsFirst_isFound() {
    int at = first(Discard.class);
    found(Records.inserted(GAME, at, new Draw(0, GAME.wall().get(53))), at, "here comes a discard");
  }

  @Test
  void tileNotHeldThrown_isFound() {
    int at = first(Discard.class);
    int absent = 0;
    while (GAME.wall().subList(0, 53).contains(absent)) {
      absent++;
    }
    found(
        Records.with(GAME, at, new Discard(0, absent)),
        at,
        "seat 0 holds no " + Tile.symbol(absent));
  }

  @Test
  void discardOfAnotherSeat_isFound() {
    int at = first(Discard.class);
    Discard old = (Discard) GAME.events().get(at);
    found(Records.with(GAME, at, new Discard(1, old.tile())), at, "seat 0 is on turn");
  }

  @Test
  void drawOutOfTurn_isFound() {
    int at = first(Draw.class);
    Draw old = (Draw) GAME.events().get(at);
    Draw other = new Draw((old.seat() + 1) % 4, old.tile());
    found(Records.with(GAME, at, other), at, "the next in turn draws");
  }

  @Test
  void otherTileDrawn_isFound() {
    int at = first(Draw.class);
    Draw old = (Draw) GAME.events().get(at);
    Draw other = new Draw(old.seat(), (old.tile() + 1) % 36);
    found(Records.with(GAME, at, other), at, "the next tile of the wall is");
  }

  @Test
  void drawLeftOut_isFound() {
    int at = first(Draw.class);
    found(Records.without(GAME, at), at, "here comes a draw");
  }

  @Test
  void discardLeftOut_isFound() {
    int at = first(Draw.class) + 1;
    found(Records.without(GAME, at), at, "here comes a discard");
  }

  @Test
  void secondDraw_isFound() {
    int at = first(Draw.class);
    Draw old = (Draw) GAME.events().get(at);
    Draw more = new Draw(old.seat(), GAME.wall().get(54));
    found(Records.inserted(GAME, at + 1, more), at + 1, "here comes a discard");
  }

  @Test
  void discardWithoutEnd_isFound() {
    int last = GAME.events().size() - 1;
    found(Records.without(GAME, last), last, "here comes the wall game (rule 7.2), not the end");
  }

  @Test
  void eventsCutOff_areFoundWhereTheyStop() {
    for (int size : new int[] {0, 3, 12, 13, 30}) {
      GameRecord cut = Records.events(GAME, events -> events.subList(0, size));
      found(cut, size, "not the end");
    }
  }

  @Test
  void eventAfterTheEnd_isFound() {
    int size = GAME.events().size();
    found(
        Records.inserted(GAME, size, new GameEvent.WallGame()),
        size,
        "nothing happens after the end");
    found(Records.inserted(GAME, size, new Draw(0, 1)), size, "nothing happens after the end");
  }

  @Test
  void wallGameBeforeTheWallIsEmpty_isFound() {
    int at = first(Draw.class);
    GameRecord early =
        Records.events(
            GAME,
            events -> {
              events.subList(at, events.size()).clear();
              events.add(new GameEvent.WallGame());
              return events;
            });
    found(early, at, "here comes a draw (rule 3.2), not the event wallgame");
  }

  @Test
  void voidGameWithoutReason_isFound() {
    int at = first(Draw.class);
    found(Records.inserted(GAME, at, new GameEvent.VoidGame()), at, "here comes a draw");
  }

  @Test
  void deathWithoutReason_isFound() {
    int at = first(Draw.class);
    found(Records.inserted(GAME, at, new Dead(2)), at, "here comes a draw");
  }

  @Test
  void stopInPlay_isFound() {
    int at = first(Draw.class);
    found(Records.inserted(GAME, at, new GameEvent.Stop(List.of())), at, "here comes a draw");
  }

  private static Claim claim() {
    return (Claim) GAME.events().get(claimAt());
  }

  private static int claimAt() {
    return Records.index(GAME, Claim.class, claim -> claim.jokers() > 0);
  }

  private static void claimed(Claim changed, String message) {
    found(Records.with(GAME, claimAt(), changed), claimAt(), message);
  }

  @Test
  void claimOfAnotherTile_isFound() {
    Claim old = claim();
    int other = (old.tile() + 1) % 35;
    claimed(
        new Claim(old.seat(), old.from(), other, other, old.size(), old.jokers(), NOBODY),
        "only the latest discard");
  }

  @Test
  void claimFromAnotherSeat_isFound() {
    Claim old = claim();
    int other = (old.from() + 1) % 4;
    claimed(
        new Claim(old.seat(), other, old.tile(), old.tile(), old.size(), old.jokers(), NOBODY),
        "only the latest discard");
  }

  @Test
  void claimByTheDiscarder_isFound() {
    Claim old = claim();
    claimed(
        new Claim(old.from(), old.from(), old.tile(), old.tile(), old.size(), old.jokers(), NOBODY),
        "this seat may not claim");
  }

  @Test
  void claimWithMoreNaturalsThanHeld_isFound() {
    Claim old = claim();
    claimed(
        new Claim(old.seat(), old.from(), old.tile(), old.tile(), 6, 0, NOBODY),
        "may not lay 6 tiles");
  }

  @Test
  void claimWithMoreJokersThanHeld_isFound() {
    Claim old = claim();
    claimed(
        new Claim(old.seat(), old.from(), old.tile(), old.tile(), 6, 5, NOBODY),
        "may not lay 6 tiles");
  }

  @Test
  void claimThatShowsAnotherKind_isFound() {
    Claim old = claim();
    int other = (old.tile() + 1) % 35;
    claimed(
        new Claim(old.seat(), old.from(), old.tile(), other, old.size(), old.jokers(), NOBODY),
        "may not lay");
  }

  @Test
  void loserThatIsTheWinner_isFound() {
    Claim old = claim();
    claimed(
        new Claim(
            old.seat(),
            old.from(),
            old.tile(),
            old.tile(),
            old.size(),
            old.jokers(),
            new Losers(List.of(old.seat()), List.of())),
        "could not have claimed an exposure");
  }

  @Test
  void loserThatCouldNotClaim_isFound() {
    Claim old = claim();
    Losers discarder = new Losers(List.of(old.from()), List.of());
    Losers mahjong =
        new Losers(
            List.of(),
            List.of(
                (old.from() + 1) % 4 == old.seat() ? (old.from() + 2) % 4 : (old.from() + 1) % 4));
    claimed(
        new Claim(
            old.seat(), old.from(), old.tile(), old.tile(), old.size(), old.jokers(), discarder),
        "could not have claimed an exposure");
    claimed(
        new Claim(
            old.seat(), old.from(), old.tile(), old.tile(), old.size(), old.jokers(), mahjong),
        "could not have claimed mahjong");
  }

  @Test
  void losersThatAreNoSeats_areFound() {
    Claim old = claim();
    for (List<Integer> seats : List.of(List.of(7), List.of(2, 1), List.of(1, 1), List.of(-1))) {
      claimed(
          new Claim(
              old.seat(),
              old.from(),
              old.tile(),
              old.tile(),
              old.size(),
              old.jokers(),
              new Losers(seats, List.of())),
          "once each, ascending");
    }
  }

  private static int exchangeAt() {
    return first(Exchange.class);
  }

  private static void exchanged(int seat, int owner, int exposure, int tile, String message) {
    GameRecord planted =
        Records.with(GAME, exchangeAt(), new Exchange(seat, owner, exposure, tile));
    found(planted, exchangeAt(), message);
  }

  @Test
  void exchangeWithTheWrongNatural_isFound() {
    Exchange old = (Exchange) GAME.events().get(exchangeAt());
    exchanged(
        old.seat(), old.owner(), old.exposure(), (old.tile() + 1) % 35, "the joker stands for");
    exchanged(old.seat(), old.owner(), old.exposure(), Tile.JOKER, "the joker stands for");
  }

  @Test
  void exchangeWithAnExposureThatIsNotThere_isFound() {
    Exchange old = (Exchange) GAME.events().get(exchangeAt());
    exchanged(old.seat(), old.owner(), 3, old.tile(), "there is no such exposure");
  }

  @Test
  void exchangeBySomebodyNotOnTurn_isFound() {
    Exchange old = (Exchange) GAME.events().get(exchangeAt());
    exchanged(
        (old.seat() + 1) % 4, old.owner(), old.exposure(), old.tile(), "only the player on turn");
  }
}
