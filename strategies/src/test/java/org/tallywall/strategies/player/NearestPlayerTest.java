package org.tallywall.strategies.player;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.play.ClaimChoice;
import org.tallywall.core.play.PassChoice;
import org.tallywall.core.play.PassStep;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.TurnChoice;
import org.tallywall.core.random.Purpose;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.random.StreamKey;
import org.tallywall.core.rules.TableRules;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.TileText;
import org.tallywall.strategies.HandMadeView;
import org.tallywall.strategies.TestTable;

/** What the nearest player does in positions made by hand, worked out on paper. */
class NearestPlayerTest {
  /**
   * A: pungs and kongs of bams and craks. B: pairs only. C: honors. D: as A, but dearer in dots.
   */
  private static final ConcreteHands HANDS =
      TestTable.card(
          """
          { "id": "A", "tiles": "111b 333b 5555c 7777c", "value": 25 },
          { "id": "B", "tiles": "22d 44d 66d 88d NN EE FF", "value": 50, "concealed": true },
          { "id": "C", "tiles": "RRR GGGG 000 WWWW", "value": 30 },
          { "id": "D", "tiles": "111b 333b 5555d 7777d", "value": 40 }
          """);

  private static final int A = 0;
  private static final int B = 1;
  private static final int C = 2;
  private static final int D = 3;

  private final NearestPlayer player = new NearestPlayer();
  private final RandomStream random =
      new RandomStream(new StreamKey(1, 1, Purpose.DECISION, 1, 0, 0));

  private static HandMadeView view(String tiles) {
    return new HandMadeView(HANDS, tiles);
  }

  private static String words(int[] kinds) {
    return Rack.of(kinds).toString();
  }

  private static TurnChoice discard(String tile) {
    return TurnChoice.discard(TileText.tile(tile));
  }

  @Test
  void aim_isTheLineFewestTilesAway() {
    assertThat(player.aim(view("111b 333b 555c 2468d"))).isEqualTo(A);
    assertThat(player.aim(view("22d 44d 66d 8d N E F 1b 3b"))).isEqualTo(B);
    assertThat(player.aim(view("RRR GGG 00 WW 1b 3b 5c"))).isEqualTo(C);
  }

  @Test
  void aim_ofLinesAsNear_isTheDearer() {
    assertThat(player.aim(view("111b 333b 55c 55d 89c F"))).isEqualTo(D);
  }

  /** E has two ways at the least distance, F one, though F pays more. */
  @Test
  void aim_ofLinesAsNear_isTheOneWithMoreWays() {
    ConcreteHands hands =
        TestTable.card(
            """
            { "id": "F", "tiles": "2222b 4444b 666b 000", "value": 90 },
            { "id": "E", "tiles": "2222b 4444b 666b (RRR|GGG)", "value": 25 }
            """);
    assertThat(player.aim(new HandMadeView(hands, "2222b 4444b 666b NE"))).isEqualTo(1);
  }

  @Test
  void aim_passesOverLinesThatAreDead() {
    HandMadeView alive = view("22d 44d 66d 88d NN E RRR");
    assertThat(player.aim(alive)).isEqualTo(B);
    HandMadeView dead = view("22d 44d 66d 88d NN E RRR").thrown("EEE");
    assertThat(player.aim(dead)).as("the pair of E cannot be made").isEqualTo(C);
  }

  /** The last two E make the pair, unless South itself has just thrown one of them. */
  @Test
  void aim_countsTheTileOnOfferUnlessItIsTheOwn() {
    String tiles = "22d 44d 66d 88d NN RRR";
    assertThat(player.aim(view(tiles).thrown("EE").offered(0, "E"))).isEqualTo(B);
    assertThat(player.aim(view(tiles).thrown("EE").offered(1, "E"))).isEqualTo(C);
  }

  @Test
  void aim_whereNothingCanBeMade_isNone() {
    ConcreteHands one =
        TestTable.card(
            "{ \"tiles\": \"NN EE WW SS RR GG 00\", \"value\": 50, \"concealed\": true }");
    SeatView view = new HandMadeView(one, "NE WW SS RR GG 00 1b").thrown("NNN");
    assertThat(player.aim(view)).isEqualTo(Player.NO_AIM);
    assertThat(player.turn(view, random)).isInstanceOf(TurnChoice.Discard.class);
  }

  @Test
  void pass_givesThreeTilesThatTheLineDoesNotWant() {
    PassChoice pass = player.pass(view("111b 333b 555c J 8b 9b N"), PassStep.RIGHT_1, random);
    assertThat(words(pass.own())).isEqualTo("89b N");
    assertThat(pass.blind()).isZero();
  }

  @Test
  void pass_whereBlindPassingIsAllowed_keepsWhatTheLineWants() {
    SeatView view = view("111b 333b 555c 77c J 8b");
    assertThat(player.pass(view, PassStep.LEFT_1, random)).isEqualTo(PassChoice.of(7));
    PassChoice compulsory = player.pass(view, PassStep.ACROSS_1, random);
    assertThat(compulsory.own()).hasSize(3).contains(7);
    assertThat(words(compulsory.own())).doesNotContain("J");
  }

  @Test
  void pass_withEverythingWanted_passesAllThreeBlind() {
    SeatView view = view("111b 333b 5555c 777c");
    assertThat(player.pass(view, PassStep.RIGHT_2, random)).isEqualTo(PassChoice.of());
    SeatView oneBlind =
        new HandMadeView(
            HANDS, "111b 333b 5555c 777c", TableRules.of(Map.of("charleston.blindMax", 1)));
    assertThat(player.pass(oneBlind, PassStep.RIGHT_2, random).own()).hasSize(2);
  }

  @Test
  void stop_isSaidWithFewerThanThreeTilesToSpare() {
    assertThat(player.stops(view("111b 333b 555c 77c 89b"), random)).isTrue();
    assertThat(player.stops(view("111b 333b 555c 7c 89b N"), random)).isFalse();
  }

  @Test
  void courtesyNumber_isTheTilesToSpareUpToThree() {
    assertThat(player.courtesyNumber(view("111b 333b 5555c 777c"), random)).isZero();
    assertThat(player.courtesyNumber(view("111b 333b 555c 77c 89b"), random)).isEqualTo(2);
    assertThat(player.courtesyNumber(view("111b 333b 55c 7c 89b NN"), random)).isEqualTo(3);
    int[] tiles = player.courtesyTiles(view("111b 333b 55c 7c 89b NN"), 2, random);
    assertThat(Arrays.stream(tiles).boxed().toList()).isSubsetOf(List.of(7, 8, TileText.tile("N")));
  }

  @Test
  void claim_forMahjong_isAlwaysMade() {
    assertThat(player.claim(view("111b 333b 5555c 777c").offered("7c"), random))
        .isEqualTo(ClaimChoice.mahjong());
  }

  @Test
  void claim_thatBringsTheHandNearer_isMadeWithNaturalsFirst() {
    assertThat(player.claim(view("11b 333b 555c 77c J NE").offered("1b"), random))
        .isEqualTo(ClaimChoice.expose(3, 0));
    assertThat(player.claim(view("11b 333b 555c 7c JJ NE").offered("7c"), random))
        .isEqualTo(ClaimChoice.expose(4, 2));
  }

  /** Two tiles from B, many from C: laying C's group open would close the nearer concealed line. */
  @Test
  void claim_thatClosesTheNearerLine_isNotMade() {
    HandMadeView view = view("22d 44d 66d 88d N E F RR").offered("R");
    assertThat(player.claim(view, random)).isEqualTo(ClaimChoice.nothing());
  }

  @Test
  void claim_ofATileThatServesNoNearestHand_isNotMade() {
    HandMadeView view = view("11b 333b 5555c 77c GG").offered("G");
    assertThat(player.claim(view, random)).isEqualTo(ClaimChoice.nothing());
  }

  @Test
  void claim_ofSeveralSizes_takesTheOneThatComesNearest() {
    ConcreteHands hands =
        TestTable.card(
            """
            { "id": "P", "tiles": "222b 4444b 666b 8888b", "value": 25 },
            { "id": "K", "tiles": "2222b 5555c 777c 999c", "value": 25 }
            """);
    SeatView kong = new HandMadeView(hands, "222b 5555c 77c 99c NE").offered("2b");
    assertThat(player.claim(kong, random)).isEqualTo(ClaimChoice.expose(4, 0));
    SeatView pung = new HandMadeView(hands, "22b 4444b 66b 88b NEW").offered("2b");
    assertThat(player.claim(pung, random)).isEqualTo(ClaimChoice.expose(3, 0));
  }

  @Test
  void turn_withACompleteHand_declares() {
    assertThat(player.turn(view("111b 333b 5555c 777c J"), random)).isEqualTo(TurnChoice.mahjong());
    assertThat(player.declares(view("111b 333b 5555c 777c J"), random)).isTrue();
  }

  @Test
  void turn_withASparedNatural_redeemsAJoker() {
    HandMadeView view = view("111b 333b 555c 77c W 89b").exposed(3, "WWWJ");
    assertThat(player.turn(view, random)).isEqualTo(TurnChoice.exchange(3, 0));
  }

  /** The natural serves the hand as well as a joker would: the exchange is made all the same. */
  @Test
  void turn_withANaturalOfAGroup_redeemsToo() {
    HandMadeView view = view("111b 333b 555c 77c J 89b").exposed(0, "7cJJJ");
    assertThat(player.turn(view, random)).isEqualTo(TurnChoice.exchange(0, 0));
  }

  /** In a pair no joker stands, so the natural is worth more. */
  @Test
  void turn_withANaturalOfAPair_keepsIt() {
    HandMadeView view = view("22d 44d 66d 88d NN EE F G").exposed(0, "FFFJ");
    assertThat(player.turn(view, random)).isEqualTo(discard("G"));
  }

  @Test
  void turn_discardsTheTileSparedMostEasily() {
    assertThat(player.turn(view("111b 333b 555c 777c 1d R"), random)).isEqualTo(discard("1d"));
    assertThat(player.turn(view("111b 333b 555c 7c 555d R"), random))
        .as("5d serves D, which is one tile further; R serves nothing near")
        .isEqualTo(discard("R"));
  }

  @Test
  void turn_ofTilesSparedAlike_discardsTheOneThatMostLieFaceUp() {
    assertThat(player.turn(view("111b 333b 555c 777c 2c 9c"), random)).isEqualTo(discard("2c"));
    assertThat(player.turn(view("111b 333b 555c 777c 2c 9c").thrown("99c 2c"), random))
        .isEqualTo(discard("9c"));
  }

  /** South has laid open what no line wants besides: nothing can be made, jokers are kept. */
  @Test
  void turn_withHardlyANaturalLeft_keepsTheJokers() {
    assertThat(player.turn(view("1b JJJJ").exposed(1, "5555c 8888b"), random))
        .isEqualTo(discard("1b"));
    assertThat(player.turn(view("JJJJJJ").exposed(1, "5555c 8888b"), random))
        .isEqualTo(discard("J"));
  }
}
