package org.tallywall.core.play;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tallywall.core.record.GameEvent;
import org.tallywall.core.tile.Exposure;
import org.tallywall.core.tile.Tile;
import org.tallywall.core.tile.TileText;

/** What each switch about claims and jokers changes in a game. */
class SwitchesOfClaimsTest {
  private static final ClaimChoice MAHJONG = ClaimChoice.mahjong();

  /** South throws 4c; West, next in turn, wants a kong of it, East would win by it. */
  private static StackedGame twoClaims(StackedGame game) {
    game.rack(0, "3b 111b 4c JJ NNNN RRR").rack(1, "4c").rack(2, "4c JJ");
    game.seat(0).discard("3b").claim("4c", MAHJONG);
    game.seat(1).discard("4c");
    game.seat(2).claim("4c", ClaimChoice.expose(4, 2));
    return game;
  }

  @Test
  void priority_turnOrderOnly_letsTheNearerExposureGoFirst() {
    StackedGame game = twoClaims(StackedGame.play("claims.priority", "TURN_ORDER_ONLY"));
    game.run();
    assertThat(game.course()).contains("2 claims 4c for 4");
    assertThat(game.events(GameEvent.Claim.class).get(0).losers())
        .isEqualTo(new GameEvent.Losers(List.of(), List.of(0)));
    StackedGame standard = twoClaims(StackedGame.play());
    assertThat(standard.run().win().seat()).isZero();
  }

  @ParameterizedTest
  @CsvSource({"true", "false"})
  void losingClaimsPublic_decidesWhetherTheTableHears(boolean heard) {
    StackedGame game =
        StackedGame.play("claims.losingClaimsPublic", heard, "claims.priority", "TURN_ORDER_ONLY");
    twoClaims(game);
    List<SeatView.LostClaim> lost = new ArrayList<>();
    game.seat(3).watch((question, view) -> lost.addAll(view.lostClaims()));
    game.run();
    SeatView.LostClaim expected = new SeatView.LostClaim(0, TileText.tile("4c"), true);
    if (heard) {
      assertThat(lost).isNotEmpty().containsOnly(expected);
    } else {
      assertThat(lost).isEmpty();
    }
  }

  @ParameterizedTest
  @CsvSource({"ON, true, true", "OFF, false, false", "OWN_ONLY, true, false"})
  void exchange_decidesFromWhomJokersAreRedeemed(String value, boolean own, boolean others) {
    assertThat(mayExchange(value, 1)).isEqualTo(own);
    assertThat(mayExchange(value, 2)).isEqualTo(others);
  }

  @Test
  void exchange_othersOnly_barsTheOwnExposures() {
    assertThat(mayExchange("OTHERS_ONLY", 1)).isFalse();
    assertThat(mayExchange("OTHERS_ONLY", 2)).isTrue();
  }

  /** Whether a seat that holds a 7d may redeem the joker of South's kong, tried for real. */
  private static boolean mayExchange(String value, int seat) {
    StackedGame game = StackedGame.play("joker.exchange", value);
    game.rack(0, "7d").rack(1, "77d JJ").rack(2, "7d").draws("3b 4b 5b 3b");
    game.seat(0).discard("7d");
    game.seat(1).claim("7d", ClaimChoice.expose(4, 2));
    List<Boolean> offered = new ArrayList<>();
    game.seat(seat)
        .watch(
            (question, view) -> {
              if (question.equals("turn") && offered.isEmpty()) {
                offered.add(LegalMoves.turn(view).contains(TurnChoice.exchange(1, 0)));
              }
            });
    game.seat(seat).turn(TurnChoice.exchange(1, 0));
    if (offered(game)) {
      assertThat(offered).containsExactly(true);
      return true;
    }
    assertThat(offered).containsExactly(false);
    return false;
  }

  private static boolean offered(StackedGame game) {
    try {
      game.run();
      return true;
    } catch (IllegalMoveException refused) {
      assertThat(refused).hasMessageContaining("no joker may be redeemed");
      return false;
    }
  }

  @Test
  void exchangePerTurn_one_barsASecond() {
    StackedGame game =
        StackedGame.play("joker.exchangePerTurn", 1)
            .rack(0, "7d")
            .rack(1, "7d JJ 3b")
            .rack(2, "77d")
            .draws("4b 5b 3b 4b 5b");
    game.seat(0).discard("7d");
    game.seat(1).claim("7d", ClaimChoice.expose(4, 2)).discard("3b");
    List<List<TurnChoice>> choices = new ArrayList<>();
    game.seat(2)
        .turn(TurnChoice.exchange(1, 0), null, TurnChoice.exchange(1, 0))
        .watch(
            (question, view) -> {
              if (question.equals("turn")) {
                choices.add(LegalMoves.turn(view));
              }
            });
    game.run();
    assertThat(choices.get(0)).contains(TurnChoice.exchange(1, 0));
    assertThat(choices.get(1)).doesNotContain(TurnChoice.exchange(1, 0));
    assertThat(choices.get(2)).as("in the next turn again").contains(TurnChoice.exchange(1, 0));
  }

  @Test
  void exchangeAfterClaim_false_waitsForADraw() {
    StackedGame game = StackedGame.play("joker.exchangeAfterClaim", false);
    game.rack(0, "7d").rack(1, "77d JJ").draws("3b 4b 5b 3b");
    game.seat(0).discard("7d");
    game.seat(1).claim("7d", ClaimChoice.expose(4, 2)).turn(null, TurnChoice.exchange(1, 0));
    List<List<TurnChoice>> choices = new ArrayList<>();
    game.seat(1)
        .watch(
            (question, view) -> {
              if (question.equals("turn")) {
                choices.add(LegalMoves.turn(view));
              }
            });
    game.run();
    assertThat(choices.get(0)).doesNotContain(TurnChoice.exchange(1, 0));
    assertThat(choices.get(1)).contains(TurnChoice.exchange(1, 0));
  }

  @Test
  void discardClaimable_true_letsAJokerBeLaidOpenForAKindOnTheRack() {
    StackedGame game = StackedGame.play("joker.discardClaimable", true);
    game.rack(0, "J").rack(2, "444c RR 345b 789c 45d");
    game.seat(0).discard("J");
    game.seat(2).claim("J", new ClaimChoice.Expose(TileText.tile("4c"), 4, 0));
    List<ClaimChoice> offers = new ArrayList<>();
    List<Exposure> shown = new ArrayList<>();
    game.seat(2)
        .watch(
            (question, view) -> {
              if (question.equals("claim J") && offers.isEmpty()) {
                offers.addAll(LegalMoves.exposures(view));
              }
              shown.addAll(view.exposures(2));
            });
    game.run();
    assertThat(offers)
        .containsExactly(
            new ClaimChoice.Expose(TileText.tile("4c"), 4, 0),
            new ClaimChoice.Expose(Tile.RED, 3, 0));
    assertThat(shown.get(0)).isEqualTo(new Exposure(TileText.tile("4c"), 4, 1));
    assertThat(game.events(GameEvent.Claim.class).get(0))
        .satisfies(claim -> assertThat(claim.tile()).isEqualTo(Tile.JOKER))
        .satisfies(claim -> assertThat(claim.kind()).isEqualTo(TileText.tile("4c")));
  }

  @Test
  void discardClaimable_true_letsAJokerCompleteTheHand() {
    StackedGame game = StackedGame.play("joker.discardClaimable", true);
    game.rack(0, "J").rack(2, "111b 4444c NNNN RR");
    game.seat(0).discard("J");
    game.seat(2).claim("J", MAHJONG);
    Outcome outcome = game.run();
    assertThat(outcome.win().jokers()).isEqualTo(1);
    assertThat(outcome.points()).containsExactly(-50, -25, 100, -25);
  }

  /** A joker does not stand in a pair, claimed or not. */
  @Test
  void discardClaimable_true_completesNoPair() {
    StackedGame game = StackedGame.play("joker.discardClaimable", true);
    game.rack(0, "J").rack(2, "F 7777d 7777b GGGG");
    game.seat(0).discard("J");
    List<Boolean> complete = new ArrayList<>();
    game.seat(2)
        .watch(
            (question, view) -> {
              if (question.equals("claim J")) {
                complete.add(view.complete());
              }
            });
    game.run();
    assertThat(complete).as("asked for a kong only").isNotEmpty().doesNotContain(true);
  }
}
