package org.tallywall.core.play;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.tallywall.core.hand.HandMeter;
import org.tallywall.core.record.Breach;
import org.tallywall.core.record.GameEvent;
import org.tallywall.core.tile.Exposure;
import org.tallywall.core.tile.Tile;
import org.tallywall.core.tile.TileSet;
import org.tallywall.core.tile.TileText;

/** The worked cases of the rules about jokers, EC-40 to EC-55a. */
class EdgeCasesOfJokersTest {
  private static final GameEvent.Losers NOBODY = new GameEvent.Losers(List.of(), List.of());
  private static final TurnChoice MAHJONG = TurnChoice.mahjong();

  private static int tile(String symbol) {
    return TileText.tile(symbol);
  }

  /** East throws 7d, South lays 77dJ open as a kong with it; the fourth lies where a test wants. */
  private static StackedGame kongWithJoker() {
    StackedGame game = StackedGame.play().rack(0, "7d").rack(1, "77d J");
    game.seat(0).discard("7d");
    game.seat(1).claim("7d", ClaimChoice.expose(4, 1));
    return game;
  }

  /** What a seat may do in its turns, turn by turn, each question of its own. */
  private static List<List<TurnChoice>> choices(StackedGame game, int seat) {
    List<List<TurnChoice>> choices = new ArrayList<>();
    game.seat(seat)
        .watch(
            (question, view) -> {
              if (question.equals("turn")) {
                choices.add(LegalMoves.turn(view));
              }
            });
    return choices;
  }

  @Test
  void ec40_exchangeBeforeTheDraw_isRejected() {
    StackedGame game = kongWithJoker().rack(2, "7d");
    List<Integer> tiles = new ArrayList<>();
    game.seat(2)
        .watch(
            (question, view) -> {
              if (question.equals("turn")) {
                tiles.add(view.rackSize());
              }
            });
    game.run();
    assertThat(tiles).as("asked with 14 tiles only").isNotEmpty().allMatch(size -> size == 14);
    assertThat(game.course().get(3)).startsWith("2 draws");
    Breach early = game.breachOf(3, new GameEvent.Exchange(2, 1, 0, tile("7d")));
    assertThat(early.event()).isEqualTo(3);
    assertThat(early.message()).startsWith("here comes a draw (rule 3.2)");
  }

  @Test
  void ec41_claimThatNeedsAJokerOfAnotherRack_isRejected() {
    StackedGame game = kongWithJoker().rack(2, "7d 4c J").rack(1, "4c");
    game.seat(1).discard("4c");
    game.seat(2).claim("4c", ClaimChoice.expose(4, 2));
    game.run();
    assertThat(game.course().subList(1, 3)).containsExactly("1 claims 7d for 4", "1 throws 4c");
    assertThat(game.seat(2).asked).doesNotContain("claim 4c");
    GameEvent claim = new GameEvent.Claim(2, 1, tile("4c"), tile("4c"), 4, 2, NOBODY);
    assertThat(game.breachOf(3, claim).message()).startsWith("seat 2 may not lay 4 tiles of 4c");
  }

  @Test
  void ec42_exchangeAfterAClaim_winsAsSelfDrawn() {
    StackedGame game = kongWithJoker().rack(1, "4c").rack(2, "11b 7d 444c NNNN RRR");
    game.seat(1).discard("4c");
    game.seat(2).claim("4c", ClaimChoice.expose(4, 0)).turn(TurnChoice.exchange(1, 0), MAHJONG);
    Outcome outcome = game.run();
    assertThat(game.course())
        .endsWith("2 claims 4c for 4", "2 gives 7d to 1.0", "2 wins by exchange");
    assertThat(outcome.win().from()).isEqualTo(-1);
    assertThat(outcome.points()).containsExactly(-50, -50, 150, -50);
  }

  /** 3.5.7: complete by the claimed tile alone is a win on the discard, exchange or not. */
  @Test
  void ec42_handCompleteByTheClaim_isAWinOnTheDiscardInSpiteOfAnExchange() {
    StackedGame game =
        StackedGame.play().rack(0, "4c").rack(2, "11b JJ 44c NNNN RRR").rack(3, "3b");
    game.seat(0).discard("4c");
    game.seat(2).claim("4c", ClaimChoice.expose(4, 1)).turn(MAHJONG);
    Outcome outcome = game.run();
    assertThat(game.course()).endsWith("2 claims 4c for 4", "2 wins by discard from 0");
    assertThat(outcome.points()).containsExactly(-50, -25, 100, -25);
    StackedGame idle =
        StackedGame.play().rack(0, "R").rack(1, "JJ 4c").rack(2, "111b 444c NNNN RR J");
    idle.seat(0).discard("R");
    idle.seat(1).claim("R", ClaimChoice.expose(3, 2)).discard("4c");
    idle.seat(2).claim("4c", ClaimChoice.expose(4, 0)).turn(TurnChoice.exchange(1, 0), MAHJONG);
    assertThat(idle.run().points()).containsExactly(-25, -50, 100, -25);
    assertThat(idle.course()).endsWith("2 gives R to 1.0", "2 wins by discard from 1");
  }

  @Test
  void ec43_exchangesWithTwoRacks_areLegalInOneTurn() {
    StackedGame game = kongWithJoker().rack(1, "R").rack(2, "RJ 3b").rack(3, "7d R").draws("4b");
    game.seat(1).discard("R");
    game.seat(2).claim("R", ClaimChoice.expose(3, 1)).discard("3b");
    game.seat(3).turn(TurnChoice.exchange(1, 0), TurnChoice.exchange(2, 0));
    List<List<TurnChoice>> choices = choices(game, 3);
    game.run();
    assertThat(choices.get(0)).contains(TurnChoice.exchange(1, 0), TurnChoice.exchange(2, 0));
    assertThat(game.course())
        .containsSequence("3 draws 4b", "3 gives 7d to 1.0", "3 gives R to 2.0");
    assertThat(choices.get(2)).contains(TurnChoice.discard(Tile.JOKER));
  }

  @Test
  void ec44_exchangesWithTheOwnExposure_areLegal() {
    StackedGame game =
        StackedGame.play("claims.lineFit", "LENIENT")
            .rack(0, "F")
            .rack(1, "FF JJ")
            .draws("- - - F");
    game.seat(0).discard("F");
    game.seat(1)
        .claim("F", ClaimChoice.expose(4, 2))
        .turn(null, TurnChoice.exchange(1, 0), TurnChoice.exchange(1, 0))
        .discard("J");
    List<List<TurnChoice>> choices = choices(game, 1);
    List<Exposure> shown = new ArrayList<>();
    game.seat(2).watch((question, view) -> shown.addAll(view.exposures(1)));
    game.run();
    assertThat(game.course()).containsSequence("1 draws F", "1 gives F to 1.0", "1 gives F to 1.0");
    assertThat(shown)
        .contains(new Exposure(Tile.FLOWER, 4, 2))
        .endsWith(new Exposure(Tile.FLOWER, 4, 0));
    assertThat(choices.get(3))
        .as("no joker is left there")
        .allMatch(choice -> choice instanceof TurnChoice.Discard);
  }

  @Test
  void ec45_jokerForAnExposedNatural_isRejected() {
    StackedGame game = kongWithJoker().rack(2, "J").draws("3b");
    List<List<TurnChoice>> choices = choices(game, 2);
    game.run();
    assertThat(choices.get(0)).allMatch(choice -> choice instanceof TurnChoice.Discard);
    Breach breach = game.breachOf(4, new GameEvent.Exchange(2, 1, 0, Tile.JOKER));
    assertThat(breach.event()).isEqualTo(4);
    assertThat(breach.message()).contains("the joker stands for 7d");
  }

  @Test
  void ec46_discard_cannotBeTakenForAnExchange() {
    StackedGame game = kongWithJoker().rack(2, "3b").draws("7d");
    game.seat(2).discard("7d");
    game.run();
    assertThat(game.course()).containsSequence("2 draws 7d", "2 throws 7d");
    assertThat(game.seats)
        .allMatch(player -> player == game.seat(1) || !player.asked.contains("claim 7d"));
    assertThat(game.breachOf(5, new GameEvent.Exchange(3, 1, 0, tile("7d"))).message())
        .startsWith("here comes a draw (rule 3.2)");
  }

  @Test
  void ec47_naturalOfAnotherSuit_isRejected() {
    StackedGame game = kongWithJoker().rack(2, "7b").rack(3, "7d").draws("3b 4b");
    List<List<TurnChoice>> west = choices(game, 2);
    List<List<TurnChoice>> north = choices(game, 3);
    game.run();
    assertThat(west.get(0)).doesNotContain(TurnChoice.exchange(1, 0));
    assertThat(north.get(0)).contains(TurnChoice.exchange(1, 0));
    assertThat(game.breachOf(4, new GameEvent.Exchange(2, 1, 0, tile("7b"))).message())
        .contains("the joker stands for 7d");
    StackedGame insists = kongWithJoker().rack(2, "7b").draws("3b");
    insists.seat(2).turn(TurnChoice.exchange(1, 0));
    assertThatThrownBy(insists::run).hasMessageContaining("no joker may be redeemed");
  }

  @Test
  void ec48_soapForAJokerAmongZeros_isAccepted() {
    StackedGame game = StackedGame.play().rack(0, "0").rack(1, "0J").rack(2, "0").draws("3b");
    game.seat(0).discard("0");
    game.seat(1).claim("0", ClaimChoice.expose(3, 1));
    game.seat(2).turn(TurnChoice.exchange(1, 0));
    game.run();
    assertThat(game.course()).contains("2 gives 0 to 1.0");
  }

  @Test
  void ec49_redeemedJoker_makesNoNewExposureInThatTurn() {
    StackedGame game = kongWithJoker().rack(2, "7d 444c").draws("3b");
    game.seat(2).turn(TurnChoice.exchange(1, 0));
    List<List<TurnChoice>> choices = choices(game, 2);
    game.run();
    assertThat(choices.get(1)).allMatch(choice -> choice instanceof TurnChoice.Discard);
    GameEvent claim = new GameEvent.Claim(2, 1, tile("4c"), tile("4c"), 4, 1, NOBODY);
    assertThat(game.breachOf(5, claim).message()).startsWith("here comes a discard (rule 3.2)");
  }

  @Test
  void ec50_pairWithAJoker_isNoPair() {
    StackedGame wrong = StackedGame.play().rack(0, "F J 7777d 7777b GGGG");
    wrong.seat(0).turn(MAHJONG);
    assertThatThrownBy(wrong::run)
        .isInstanceOf(IllegalMoveException.class)
        .hasMessageContaining("not a hand of the card");
    StackedGame right = StackedGame.play().rack(0, "FF 7d 7b GG JJJJJJJJ");
    right.seat(0).turn(MAHJONG);
    assertThat(right.run().points()).containsExactly(180, -60, -60, -60);
  }

  @Test
  void ec51_groupOfJokersOnly_isAllowedInAConcealedPart() {
    StackedGame game = StackedGame.play().rack(0, "2222d J JJJJJ SSSS");
    game.seat(0).turn(MAHJONG);
    Outcome outcome = game.run();
    assertThat(game.hands().line(outcome.win().line()).id()).isEqualTo("T5");
    assertThat(outcome.win().jokers()).isEqualTo(6);
  }

  @Test
  void ec52_kongAndPairOfOneKind_needTwoJokers() {
    StackedGame good = StackedGame.play().rack(0, "FFFFF 3333c JJ 000");
    good.seat(0).turn(MAHJONG);
    assertThat(good.hands().line(good.run().win().line()).id()).isEqualTo("T7");
    StackedGame bad = StackedGame.play().rack(0, "FFFFF 3c JJJJJ 000");
    bad.seat(0).turn(MAHJONG);
    assertThatThrownBy(bad::run).hasMessageContaining("not a hand of the card");
    HandMeter meter = new HandMeter();
    meter.hold(TileText.rack("FFFFF 3333c J 000"));
    assertThat(meter.away(good.hands().closed(), 6)).as("T7 with one joker").isEqualTo(1);
    assertThat(good.hands().hand(6).jokersNeeded(TileSet.USUAL)).isEqualTo(2);
  }

  @Test
  void ec53_handWithKongAndPairOfOneKind_isNeverJokerless() {
    StackedGame game = StackedGame.play().rack(0, "FFFFF 3333c JJ 000");
    game.seat(0).turn(MAHJONG);
    Outcome outcome = game.run();
    assertThat(outcome.win().jokerless()).isFalse();
    assertThat(outcome.points()).containsExactly(270, -90, -90, -90);
    StackedGame suited = StackedGame.play().rack(0, "2222d JJ 6666d SSSS");
    suited.seat(0).turn(MAHJONG);
    assertThat(suited.run().win().jokers()).as("a quint of dots holds a joker").isEqualTo(2);
  }

  @Test
  void ec54_ownerWhoseJokerWasRedeemed_winsJokerless() {
    StackedGame game =
        StackedGame.play()
            .rack(0, "1b")
            .rack(1, "1b J 4444c NNNN RR 3b")
            .rack(2, "1b")
            .draws("4b - - R");
    game.seat(0).discard("1b");
    game.seat(1).claim("1b", ClaimChoice.expose(3, 1)).turn(null, MAHJONG);
    game.seat(2).turn(TurnChoice.exchange(1, 0));
    Outcome outcome = game.run();
    assertThat(game.course()).contains("2 gives 1b to 1.0").endsWith("1 draws R", "1 wins by draw");
    assertThat(outcome.win().jokerless()).isTrue();
    assertThat(outcome.points()).containsExactly(-100, 300, -100, -100);
  }

  @Test
  void ec55_afterADiscardedJoker_theNextDrawsAtOnce() {
    StackedGame game = StackedGame.play().rack(0, "J").rack(1, "JJ 44c").rack(2, "JJ");
    game.seat(0).discard("J");
    game.run();
    assertThat(game.course().get(0)).isEqualTo("0 throws J");
    assertThat(game.course().get(1)).startsWith("1 draws");
    assertThat(game.seat(1).asked.get(0)).isEqualTo("turn");
  }

  @Test
  void ec55a_claimThatWinsByAnExchange_hasExposurePriority() {
    StackedGame game = viaExchange(StackedGame.play());
    game.run();
    assertThat(game.course()).containsSequence("3 throws 4c", "0 claims 4c for 4");
    assertThat(game.events(GameEvent.Claim.class).get(1).losers().exposures()).containsExactly(2);
  }

  @Test
  void ec55a_claimThatWinsByAnExchange_ranksAsMahjongWhereTheTableSaysSo() {
    StackedGame game = viaExchange(StackedGame.play("claims.mahjongViaExchange", true));
    game.seat(2).turn(TurnChoice.exchange(1, 0), MAHJONG);
    Outcome outcome = game.run();
    assertThat(game.course())
        .endsWith("3 throws 4c", "2 claims 4c for 4", "2 gives 7d to 1.0", "2 wins by exchange");
    assertThat(outcome.points()).containsExactly(-50, -50, 150, -50);
  }

  /** Where no exchange may follow the claim, none can make it rank as mahjong. */
  @Test
  void ec55a_claimThatCouldNotExchange_ranksAsAnExposure() {
    StackedGame never =
        viaExchange(
            StackedGame.play("claims.mahjongViaExchange", true, "joker.exchangeAfterClaim", false));
    never.run();
    assertThat(never.course()).containsSequence("3 throws 4c", "0 claims 4c for 4");
    StackedGame own =
        viaExchange(
            StackedGame.play("claims.mahjongViaExchange", true, "joker.exchange", "OWN_ONLY"));
    own.run();
    assertThat(own.course()).containsSequence("3 throws 4c", "0 claims 4c for 4");
  }

  /**
   * North throws 4c: East, nearer, wants a kong of it; West would win by redeeming South's joker.
   */
  private static StackedGame viaExchange(StackedGame game) {
    game.rack(0, "7d 4c JJ").rack(1, "77d J 3b").rack(2, "11b 7d 44c J NNNN RR 5b").rack(3, "4c");
    game.draws("R 4b");
    game.seat(0).discard("7d").claim("4c", ClaimChoice.expose(4, 2));
    game.seat(1).claim("7d", ClaimChoice.expose(4, 1)).discard("3b");
    game.seat(2).discard("5b").claim("4c", ClaimChoice.expose(4, 1));
    game.seat(3).discard("4c");
    return game;
  }
}
