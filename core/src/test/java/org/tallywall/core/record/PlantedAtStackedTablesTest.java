package org.tallywall.core.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.tallywall.core.play.ClaimChoice;
import org.tallywall.core.play.StackedGame;
import org.tallywall.core.play.TurnChoice;
import org.tallywall.core.record.GameEvent.Claim;
import org.tallywall.core.record.GameEvent.Dead;
import org.tallywall.core.record.GameEvent.Draw;
import org.tallywall.core.record.GameEvent.Exchange;
import org.tallywall.core.record.GameEvent.Losers;
import org.tallywall.core.record.GameEvent.Mahjong;
import org.tallywall.core.rules.TableRules;
import org.tallywall.core.tile.TileText;

/** Breaches planted in games set up by hand, and games that break a switch: each is found. */
class PlantedAtStackedTablesTest {
  private static final Losers NOBODY = new Losers(List.of(), List.of());

  private static void found(Breach breach, int event, String message) {
    assertThat(breach).as("nothing found").isNotNull();
    assertThat(breach.message()).contains(message);
    assertThat(breach.event()).as(breach.message()).isEqualTo(event);
  }

  private static int tile(String symbol) {
    return TileText.tile(symbol);
  }

  /** East's kong of 7d has one joker; South redeems it. */
  private static StackedGame redeemed(StackedGame game) {
    game.rack(0, "7d").rack(1, "77d J").rack(2, "7d 7b").draws("3b 4b");
    game.seat(0).discard("7d");
    game.seat(1).claim("7d", ClaimChoice.expose(4, 1));
    game.seat(2).turn(TurnChoice.exchange(1, 0));
    return game;
  }

  @Test
  void exchangeOfANaturalNotHeld_isFound() {
    StackedGame game = redeemed(StackedGame.play());
    game.run();
    assertThat(game.course().get(4)).isEqualTo("2 gives 7d to 1.0");
    found(game.breachOf(5, new Exchange(2, 1, 0, tile("7d"))), 5, "holds no joker");
    StackedGame without = StackedGame.play();
    without.rack(0, "7d").rack(1, "77d J").rack(3, "7d").draws("3b");
    without.seat(0).discard("7d");
    without.seat(1).claim("7d", ClaimChoice.expose(4, 1));
    without.run();
    found(without.breachOf(4, new Exchange(2, 1, 0, tile("7d"))), 4, "seat 2 holds no 7d");
  }

  @Test
  void exchangesAgainstTheTablesSwitches_areFound() {
    barred("joker.exchange", "OFF", "joker.exchange (rule 4.4.3)");
    barred("joker.exchange", "OWN_ONLY", "joker.exchange (rule 4.4.3)");
  }

  private static void barred(String key, Object value, String message) {
    StackedGame game = redeemed(StackedGame.play());
    game.run();
    found(withRule(game, key, value), 4, message);
  }

  /** The record as if it had been played by another switch. */
  private static Breach withRule(StackedGame game, String key, Object value) {
    GameRecord played = game.record();
    GameRecord.Header old = played.header();
    TableRules rules = TableRules.of(old.rules()).with(key, value);
    GameRecord.Header header =
        new GameRecord.Header(
            "", old.seed(), 0, 0, "", -1, old.card(), rules.switches(), old.players());
    return Replay.check(
            game.hands(),
            new GameRecord(header, played.wall(), played.dice(), played.events(), played.end()))
        .orElse(null);
  }

  @Test
  void secondExchangeOfATurn_isFoundWhereOneIsAllowed() {
    StackedGame game = StackedGame.play();
    game.rack(0, "7d").rack(1, "7d JJ").rack(2, "77d").draws("3b");
    game.seat(0).discard("7d");
    game.seat(1).claim("7d", ClaimChoice.expose(4, 2));
    game.seat(2).turn(TurnChoice.exchange(1, 0), TurnChoice.exchange(1, 0));
    game.run();
    found(withRule(game, "joker.exchangePerTurn", 1), 5, "joker.exchangePerTurn");
  }

  @Test
  void exchangeAfterAClaim_isFoundWhereNoneIsAllowed() {
    StackedGame game = StackedGame.play();
    game.rack(0, "7d").rack(1, "77d JJ");
    game.seat(0).discard("7d");
    game.seat(1).claim("7d", ClaimChoice.expose(4, 2)).turn(TurnChoice.exchange(1, 0));
    game.run();
    found(withRule(game, "joker.exchangeAfterClaim", false), 2, "joker.exchangeAfterClaim");
    found(withRule(game, "joker.exchange", "OTHERS_ONLY"), 2, "joker.exchange (rule 4.4.3)");
  }

  @Test
  void claimThatFitsNoLine_isFound() {
    StackedGame game = StackedGame.play("claims.lineFit", "LENIENT").rack(0, "2b").rack(1, "22b");
    game.seat(0).discard("2b");
    game.seat(1).claim("2b", ClaimChoice.expose(3, 0));
    game.run();
    found(withRule(game, "claims.lineFit", "STRICT"), 1, "may not lay 3 tiles of 2b");
  }

  @Test
  void claimWithoutANaturalFromTheRack_isFoundWhereOneIsWanted() {
    StackedGame game = StackedGame.play().rack(0, "4c").rack(1, "JJJ");
    game.seat(0).discard("4c");
    game.seat(1).claim("4c", ClaimChoice.expose(4, 3));
    game.run();
    found(withRule(game, "claims.minNaturalsFromRack", 1), 1, "may not lay 4 tiles of 4c");
  }

  @Test
  void claimOfTheWholeRack_isFound() {
    StackedGame game =
        StackedGame.play().rack(0, "1b").rack(2, "11b NNN RR 444c 345b").draws("N R 4c");
    game.seat(0).discard("1b");
    game.seat(2)
        .claim("1b", ClaimChoice.expose(3, 0))
        .claim("N", ClaimChoice.expose(4, 0))
        .claim("R", ClaimChoice.expose(3, 0))
        .discard("3b 4b 5b");
    game.run();
    int at = game.course().indexOf("3 throws 4c") + 1;
    found(
        game.breachOf(at, new Claim(2, 3, tile("4c"), tile("4c"), 4, 0, NOBODY)),
        at,
        "may not lay 4 tiles of 4c");
  }

  @Test
  void claimOfAJoker_isFoundWhereNoneIsAllowed() {
    StackedGame game = StackedGame.play("joker.discardClaimable", true);
    game.rack(0, "J").rack(2, "444c");
    game.seat(0).discard("J");
    game.seat(2).claim("J", new ClaimChoice.Expose(tile("4c"), 4, 0));
    game.run();
    found(withRule(game, "joker.discardClaimable", false), 1, "this seat may not claim");
  }

  @Test
  void exposureClaimOutOfPriority_isFound() {
    StackedGame game = StackedGame.play().rack(1, "4c").rack(2, "4c JJ").rack(3, "4c JJ");
    game.rack(0, "3b");
    game.seat(0).discard("3b");
    game.seat(1).discard("4c");
    game.run();
    Claim farther =
        new Claim(3, 1, tile("4c"), tile("4c"), 4, 2, new Losers(List.of(2), List.of()));
    found(game.breachOf(3, farther), 3, "another claim goes first");
  }

  @Test
  void exposureBeforeMahjong_isFound() {
    StackedGame game = StackedGame.play().rack(0, "3b 111b 4c JJ NNNN RRR").rack(1, "4c");
    game.rack(2, "4c JJ");
    game.seat(0).discard("3b");
    game.seat(1).discard("4c");
    game.run();
    Claim exposure =
        new Claim(2, 1, tile("4c"), tile("4c"), 4, 2, new Losers(List.of(), List.of(0)));
    found(game.breachOf(3, exposure), 3, "another claim goes first");
  }

  @Test
  void fartherMahjongBeforeANearer_isFound() {
    StackedGame game = StackedGame.play().rack(0, "3b F 7777d 7777b GGGG").rack(1, "F");
    game.rack(2, "F 222b 555c 888d WWW");
    game.seat(0).discard("3b");
    game.seat(1).discard("F");
    game.run();
    Mahjong east = new Mahjong(0, "discard", 1, new Losers(List.of(), List.of(2)));
    found(game.breachOf(3, east), 3, "another claim goes first");
  }

  /**
   * North throws 4c: West wins by an exchange, East is nearer; only a switch gives West the tile.
   */
  @Test
  void claimThatWinsByAnExchange_isFoundWhereItRanksAsAnExposure() {
    StackedGame game = StackedGame.play("claims.mahjongViaExchange", true);
    game.rack(0, "7d 4c JJ").rack(1, "77d J 3b").rack(2, "11b 7d 44c J NNNN RR 5b").rack(3, "4c");
    game.draws("R 4b");
    game.seat(0).discard("7d").claim("4c", ClaimChoice.expose(4, 2));
    game.seat(1).claim("7d", ClaimChoice.expose(4, 1)).discard("3b");
    game.seat(2).discard("5b").claim("4c", ClaimChoice.expose(4, 1));
    game.seat(2).turn(TurnChoice.exchange(1, 0), TurnChoice.mahjong());
    game.seat(3).discard("4c");
    game.run();
    int at = game.course().indexOf("2 claims 4c for 4");
    found(withRule(game, "claims.mahjongViaExchange", false), at, "another claim goes first");
    found(withRule(game, "joker.exchangeAfterClaim", false), at, "another claim goes first");
    found(withRule(game, "joker.exchange", "OWN_ONLY"), at, "another claim goes first");
  }

  @Test
  void claimsOfAColdWall_areFound() {
    StackedGame game = StackedGame.play().rack(0, "444c").lastDraws("4c - -");
    game.seat(0).claim("4c", ClaimChoice.expose(4, 0));
    game.run();
    int at = game.course().indexOf("0 claims 4c for 4");
    found(withRule(game, "wall.cold", "NO_CLAIM"), at, "no exposure may be claimed now");
    assertThat(withRule(game, "wall.cold", "NO_MAHJONG_CLAIM")).isNull();
  }

  @Test
  void exposureOfTheLastDiscard_isFoundWhereNoneIsAllowed() {
    StackedGame game = StackedGame.play().rack(0, "444c").lastDraws("4c");
    game.seat(0).claim("4c", ClaimChoice.expose(4, 0));
    game.run();
    int at = game.course().indexOf("0 claims 4c for 4");
    found(withRule(game, "wall.finalDiscard.claim", "MAHJONG_ONLY"), at, "no exposure");
    found(withRule(game, "wall.finalDiscard.claim", "NONE"), at, "no exposure");
  }

  @Test
  void handThatIsNotCalledDead_isFoundWhereHandsAreCalled() {
    StackedGame game = StackedGame.play("claims.lineFit", "LENIENT").rack(0, "2b").rack(1, "22b");
    game.seat(0).discard("2b");
    game.seat(1).claim("2b", ClaimChoice.expose(3, 0));
    game.run();
    found(withRule(game, "dead.calls", "AUTO"), 3, "here comes a dead hand (rule 6.5)");
  }

  @Test
  void otherHandCalledDead_isFound() {
    StackedGame game =
        StackedGame.play("dead.calls", "AUTO", "claims.lineFit", "LENIENT")
            .rack(0, "2b")
            .rack(1, "22b");
    game.seat(0).discard("2b");
    game.seat(1).claim("2b", ClaimChoice.expose(3, 0));
    game.run();
    assertThat(game.course().get(3)).isEqualTo("1 is dead");
    found(game.breachOf(3, new Dead(2)), 3, "the hand of seat 1 is impossible");
    found(game.breachOf(4, new Draw(1, game.record().wall().get(53))), 4, "the next in turn draws");
  }

  @Test
  void handNotDeclared_isFoundWhereItMustBe() {
    StackedGame drawn = StackedGame.play().rack(1, "F 7777d 7777b GGGG").draws("F");
    drawn.run();
    found(withRule(drawn, "win.mayDecline", false), 2, "a complete hand is declared");
    StackedGame dealt = StackedGame.play().rack(0, "FF 7777d 7777b GGGG");
    dealt.run();
    found(withRule(dealt, "win.mayDecline", false), 0, "a complete hand is declared");
    StackedGame discarded = StackedGame.play().rack(0, "F").rack(2, "F 7777d 7777b GGGG");
    discarded.seat(0).discard("F");
    discarded.run();
    found(
        withRule(discarded, "win.mayDecline", false), 1, "the complete hand of seat 2 is declared");
  }

  @Test
  void handNotDeclaredBesideAClaim_isFoundWhereItMustBe() {
    StackedGame game = StackedGame.play().rack(0, "3b F 7777d 7777b GGGG").rack(1, "F");
    game.rack(2, "F 222b 555c 888d WWW").rack(3, "F JJJJ");
    game.seat(0).discard("3b");
    game.seat(1).discard("F");
    game.seat(2).claim("F", ClaimChoice.mahjong());
    game.run();
    assertThat(game.course()).endsWith("2 wins by discard from 1");
    found(withRule(game, "win.mayDecline", false), 3, "the complete hand of seat 0 is declared");
    StackedGame laid = StackedGame.play().rack(0, "3b F 7777d 7777b GGGG").rack(1, "F");
    laid.rack(3, "F JJJ");
    laid.seat(0).discard("3b");
    laid.seat(1).discard("F");
    laid.seat(3).claim("F", ClaimChoice.expose(5, 3));
    laid.run();
    assertThat(laid.course()).contains("3 claims F for 5");
    found(withRule(laid, "win.mayDecline", false), 3, "the complete hand of seat 0 is declared");
  }

  @Test
  void losersOfMahjongClaimsThatAreNoSeats_areFound() {
    StackedGame game = StackedGame.play().rack(0, "R").rack(2, "111b 4444c NNNN RR");
    game.seat(0).discard("R");
    game.seat(2).claim("R", ClaimChoice.mahjong());
    game.run();
    for (List<Integer> seats : List.of(List.of(9), List.of(3, 1), List.of(3, 3))) {
      Mahjong planted = new Mahjong(2, "discard", 0, new Losers(List.of(), seats));
      found(game.breachOf(1, planted), 1, "once each, ascending");
    }
  }

  @Test
  void loserOfBothClaims_isFound() {
    StackedGame game = StackedGame.play().rack(0, "3b 11b 4c JJJ NNNN RRR").rack(1, "4c");
    game.rack(2, "4c JJ");
    game.seat(0).discard("3b");
    game.seat(1).discard("4c");
    game.run();
    Losers both = new Losers(List.of(0), List.of(0));
    found(game.breachOf(3, new Claim(2, 1, tile("4c"), tile("4c"), 4, 2, both)), 3, "as well");
  }

  @Test
  void exposureOfTheWinningTileInAColdWall_isFound() {
    StackedGame game = StackedGame.play().rack(0, "111b 444c NNNN RRR 3b").lastDraws("4c");
    game.seat(0).discard("3b").claim("4c", ClaimChoice.expose(4, 0));
    game.run();
    int at = game.course().indexOf("0 claims 4c for 4");
    found(withRule(game, "wall.cold", "NO_MAHJONG_CLAIM"), at, "no exposure may be claimed now");
  }
}
