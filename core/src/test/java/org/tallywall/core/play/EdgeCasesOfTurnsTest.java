package org.tallywall.core.play;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.tallywall.core.record.GameEvent;
import org.tallywall.core.tile.Exposure;
import org.tallywall.core.tile.TileText;

/** The worked cases of the rules about turns and claims, EC-18 to EC-39. */
class EdgeCasesOfTurnsTest {
  private static final GameEvent.Losers NOBODY = new GameEvent.Losers(List.of(), List.of());
  private static final ClaimChoice MAHJONG = ClaimChoice.mahjong();

  private static int tile(String symbol) {
    return TileText.tile(symbol);
  }

  /** The exposures that the rules offer a seat whenever it is asked about a tile. */
  private static List<List<ClaimChoice>> offers(StackedGame game, int seat, String tile) {
    List<List<ClaimChoice>> offers = new ArrayList<>();
    game.seat(seat)
        .watch(
            (question, view) -> {
              if (question.equals("claim " + tile)) {
                offers.add(LegalMoves.exposures(view));
              }
            });
    return offers;
  }

  @Test
  void ec18_eastsFirstTurn_hasNoDraw() {
    StackedGame game = StackedGame.withPasses().rack(0, "N");
    List<Integer> drawn = new ArrayList<>();
    game.seat(0).discard("N");
    game.seat(0)
        .watch(
            (question, view) -> {
              if (question.equals("turn")) {
                drawn.add(view.drawn());
              }
            });
    game.run();
    int first = game.course().indexOf("0 throws N");
    assertThat(game.course().subList(first - 2, first))
        .containsExactly("courtesy [0, 2] [0, 0]", "courtesy [1, 3] [0, 0]");
    assertThat(game.course().get(first + 1)).startsWith("1 draws");
    assertThat(drawn.get(0)).isEqualTo(-1);
    assertThat(drawn.get(1)).isNotEqualTo(-1);
  }

  @Test
  void ec19_eastsFirstDiscard_mayBeClaimedForMahjong() {
    StackedGame game = StackedGame.play().rack(0, "R").rack(2, "111b 4444c NNNN RR");
    game.seat(0).discard("R");
    game.seat(2).claim("R", MAHJONG);
    game.run();
    assertThat(game.course()).containsExactly("0 throws R", "2 wins by discard from 0");
  }

  @Test
  void ec20_claimByAcross_skipsTheSeatBetween() {
    StackedGame game = StackedGame.play().rack(0, "4c").rack(2, "444c 3b");
    game.seat(0).discard("4c");
    game.seat(2).claim("4c", ClaimChoice.expose(4, 0)).discard("3b");
    game.run();
    assertThat(game.course().subList(0, 3))
        .containsExactly("0 throws 4c", "2 claims 4c for 4", "2 throws 3b");
    assertThat(game.course().get(3)).startsWith("3 draws");
    assertThat(game.course().subList(0, 7)).noneMatch(event -> event.startsWith("1 draws"));
  }

  @Test
  void ec21_twoExposureClaims_goToTheNextInTurn() {
    StackedGame game =
        StackedGame.play().rack(1, "4c").rack(2, "4c JJ").rack(3, "4c JJ").rack(0, "3b");
    game.seat(0).discard("3b");
    game.seat(1).discard("4c");
    game.seat(2).claim("4c", ClaimChoice.expose(4, 2));
    game.seat(3).claim("4c", ClaimChoice.expose(4, 2));
    game.run();
    assertThat(game.course()).contains("2 claims 4c for 4").doesNotContain("3 claims 4c for 4");
    assertThat(game.events(GameEvent.Claim.class).get(0).losers().exposures()).containsExactly(3);
  }

  @Test
  void ec22_mahjongClaim_beatsANearerExposureClaim() {
    StackedGame game =
        StackedGame.play().rack(0, "3b 111b 4c JJ NNNN RRR").rack(1, "4c").rack(2, "4c JJ");
    game.seat(0).discard("3b").claim("4c", MAHJONG);
    game.seat(1).discard("4c");
    game.seat(2).claim("4c", ClaimChoice.expose(4, 2));
    Outcome outcome = game.run();
    assertThat(outcome.win().seat()).isZero();
    assertThat(outcome.win().from()).isEqualTo(1);
    assertThat(game.events(GameEvent.Mahjong.class).get(0).losers())
        .isEqualTo(new GameEvent.Losers(List.of(2), List.of()));
  }

  @Test
  void ec23_twoMahjongClaims_makeOneWinnerWhomTheOtherPays() {
    StackedGame game =
        StackedGame.play()
            .rack(0, "3b F 7777d 7777b GGGG")
            .rack(1, "F")
            .rack(2, "F 222b 555c 888d WWW");
    game.seat(0).discard("3b").claim("F", MAHJONG);
    game.seat(1).discard("F");
    game.seat(2).claim("F", MAHJONG);
    Outcome outcome = game.run();
    assertThat(outcome.win().seat()).isEqualTo(2);
    assertThat(outcome.points()).as("T3, 40, jokerless").containsExactly(-80, -160, 320, -80);
    assertThat(game.events(GameEvent.Mahjong.class).get(0).losers())
        .isEqualTo(new GameEvent.Losers(List.of(), List.of(0)));
  }

  @Test
  void ec24_discardedJoker_cannotBeClaimed() {
    StackedGame game = StackedGame.play().rack(0, "J").rack(2, "111b 4444c NNNN RR").rack(3, "RR");
    game.seat(0).discard("J");
    game.seat(2).claim("J", MAHJONG);
    game.run();
    assertThat(game.course().get(1)).startsWith("1 draws");
    assertThat(game.seats).allMatch(player -> !player.asked.contains("claim J"));
    assertThat(game.breachOf(1, new GameEvent.Mahjong(2, "discard", 0, NOBODY)).event())
        .isEqualTo(1);
    assertThat(
            game.breachOf(1, new GameEvent.Claim(3, 0, tile("J"), tile("R"), 3, 0, NOBODY))
                .message())
        .contains("may not claim");
  }

  @Test
  void ec25_pairTile_isClaimedOnlyAsTheFourteenth() {
    StackedGame game = StackedGame.play().rack(0, "9d").rack(2, "NEWS 2222c 9d 666b 3b");
    game.seat(0).discard("9d");
    game.seat(2).claim("9d", ClaimChoice.expose(3, 1));
    game.run();
    assertThat(game.seat(2).asked).doesNotContain("claim 9d");
    assertThat(game.breachOf(1, new GameEvent.Mahjong(2, "discard", 0, NOBODY)).message())
        .contains("not a hand of the card");
    StackedGame last = StackedGame.play().rack(0, "9d").rack(2, "NEWS 2222c 9d 6666b");
    last.seat(0).discard("9d");
    last.seat(2).claim("9d", MAHJONG);
    assertThat(last.run().win().seat()).isEqualTo(2);
  }

  @Test
  void ec26_singleOfACluster_isClaimedOnlyAsTheFourteenth() {
    StackedGame last = StackedGame.play().rack(0, "W").rack(2, "NES 2222c 99d 6666b");
    last.seat(0).discard("W");
    last.seat(2).claim("W", MAHJONG);
    assertThat(last.run().win().line()).as("T6").isEqualTo(5);
    StackedGame game = StackedGame.play().rack(0, "W").rack(2, "NES 2222c 99d 666b 3b");
    game.seat(0).discard("W");
    game.seat(2).claim("W", MAHJONG);
    game.run();
    assertThat(game.seat(2).asked).doesNotContain("claim W");
    assertThat(game.breachOf(1, new GameEvent.Mahjong(2, "discard", 0, NOBODY)).event())
        .isEqualTo(1);
  }

  @Test
  void ec27_earlierDiscard_cannotBeClaimed() {
    StackedGame game = StackedGame.play().rack(0, "4c").rack(3, "444c").draws("3b");
    game.seat(0).discard("4c");
    game.run();
    assertThat(game.course().subList(0, 3))
        .containsExactly("0 throws 4c", "1 draws 3b", "1 throws 3b");
    GameEvent late = new GameEvent.Claim(3, 0, tile("4c"), tile("4c"), 4, 0, NOBODY);
    assertThat(game.breachOf(3, late).message()).contains("only the latest discard");
    assertThat(game.breachOf(3, late).event()).isEqualTo(3);
    assertThat(
            game.breachOf(1, new GameEvent.Claim(3, 0, tile("4c"), tile("4c"), 4, 0, NOBODY))
                .event())
        .as("at once it is good; the next event lacks")
        .isEqualTo(2);
  }

  @Test
  void ec28_discarder_isNotAskedAboutTheOwnDiscard() {
    StackedGame game = StackedGame.play().rack(0, "4444c");
    game.seat(0).discard("4c").claim("4c", ClaimChoice.expose(4, 0));
    game.run();
    assertThat(game.seat(0).asked).noneMatch(question -> question.startsWith("claim"));
    GameEvent own = new GameEvent.Claim(0, 0, tile("4c"), tile("4c"), 4, 0, NOBODY);
    assertThat(game.breachOf(1, own).message()).contains("may not claim");
  }

  @Test
  void ec29_claimedTile_isNaturalEnoughUnlessTheTableWantsMore() {
    StackedGame game = StackedGame.play().rack(0, "4c").rack(2, "JJJ");
    List<List<ClaimChoice>> offers = offers(game, 2, "4c");
    game.seat(0).discard("4c");
    game.seat(2).claim("4c", ClaimChoice.expose(4, 3));
    game.run();
    assertThat(offers).containsExactly(List.of(ClaimChoice.expose(4, 3)));
    assertThat(game.course()).contains("2 claims 4c for 4");
    StackedGame strict =
        StackedGame.play("claims.minNaturalsFromRack", 1).rack(0, "4c").rack(2, "JJJ");
    strict.seat(0).discard("4c");
    strict.run();
    assertThat(strict.seat(2).asked).doesNotContain("claim 4c");
  }

  @Test
  void ec30_twoNaturalsAndAJoker_areOfferedAsAKongOnly() {
    StackedGame game = StackedGame.play().rack(0, "4c").rack(2, "44c J");
    List<List<ClaimChoice>> offers = offers(game, 2, "4c");
    game.seat(0).discard("4c");
    game.run();
    assertThat(offers.get(0)).containsExactly(ClaimChoice.expose(4, 1));
    StackedGame pung = StackedGame.play().rack(0, "4c").rack(2, "44c J");
    pung.seat(0).discard("4c");
    pung.seat(2).claim("4c", ClaimChoice.expose(3, 0));
    assertThatThrownBy(pung::run)
        .isInstanceOf(IllegalMoveException.class)
        .hasMessageContaining("4c may not be claimed for 3 tiles with 0 jokers");
  }

  /** A claim may use more jokers than needed and keep naturals back (3.3.6). */
  @Test
  void ec30_naturalsKeptBack_areOfferedWhereJokersAreThere() {
    StackedGame game = StackedGame.play().rack(0, "4c").rack(2, "44c JJ");
    List<List<ClaimChoice>> offers = offers(game, 2, "4c");
    game.seat(0).discard("4c");
    game.run();
    assertThat(offers.get(0)).containsExactly(ClaimChoice.expose(4, 1), ClaimChoice.expose(4, 2));
  }

  @Test
  void ec31_exposedKong_bringsNoReplacementTile() {
    StackedGame game = StackedGame.play().rack(0, "4c").rack(2, "444c");
    List<Integer> sizes = new ArrayList<>();
    game.seat(0).discard("4c");
    game.seat(2).claim("4c", ClaimChoice.expose(4, 0));
    game.seat(2).watch((question, view) -> sizes.add(view.rackSize()));
    game.run();
    assertThat(game.course().get(1)).isEqualTo("2 claims 4c for 4");
    assertThat(game.course().get(2)).startsWith("2 throws");
    assertThat(game.course().get(3)).startsWith("3 draws");
    assertThat(sizes.subList(0, 2)).as("asked, then on turn").containsExactly(13, 10);
  }

  @Test
  void ec32_drawnTile_joinsNoExposureButRedeemsItsJoker() {
    StackedGame game = StackedGame.play().rack(0, "1b").rack(1, "1b J").draws("- - - 1b");
    List<List<TurnChoice>> choices = new ArrayList<>();
    game.seat(0).discard("1b");
    game.seat(1)
        .claim("1b", ClaimChoice.expose(3, 1))
        .turn(null, TurnChoice.exchange(1, 0))
        .watch(
            (question, view) -> {
              if (question.equals("turn")) {
                choices.add(LegalMoves.turn(view));
              }
            });
    game.run();
    assertThat(game.course().subList(1, 11))
        .contains("1 claims 1b for 3", "1 draws 1b", "1 gives 1b to 1.0");
    assertThat(choices.get(1)).contains(TurnChoice.exchange(1, 0));
    assertThat(choices.get(1))
        .allMatch(
            choice -> choice instanceof TurnChoice.Discard || choice == TurnChoice.exchange(1, 0));
  }

  @Test
  void ec33_claimOfTheWholeRack_isLegalOnlyAsMahjong() {
    StackedGame game =
        StackedGame.play().rack(0, "1b").rack(2, "11b NNN RR 444c 345b").draws("N R 4c");
    List<List<ClaimChoice>> offers = offers(game, 2, "4c");
    game.seat(0).discard("1b");
    game.seat(2)
        .claim("1b", ClaimChoice.expose(3, 0))
        .claim("N", ClaimChoice.expose(4, 0))
        .claim("R", ClaimChoice.expose(3, 0))
        .claim("4c", MAHJONG)
        .discard("3b 4b 5b");
    Outcome outcome = game.run();
    assertThat(offers).as("asked once, no exposure offered").containsExactly(List.of());
    assertThat(outcome.win().seat()).isEqualTo(2);
    assertThat(game.course())
        .endsWith("3 draws 4c", "3 throws 4c", "2 wins by discard from 3")
        .hasSize(14);
  }

  @Test
  void ec33_claimOfTheWholeRack_forAnExposureIsRejected() {
    StackedGame game =
        StackedGame.play().rack(0, "1b").rack(2, "11b NNN RR 444c 345b").draws("N R 4c");
    game.seat(0).discard("1b");
    game.seat(2)
        .claim("1b", ClaimChoice.expose(3, 0))
        .claim("N", ClaimChoice.expose(4, 0))
        .claim("R", ClaimChoice.expose(3, 0))
        .claim("4c", ClaimChoice.expose(4, 0))
        .discard("3b 4b 5b");
    assertThatThrownBy(game::run).hasMessageContaining("4c may not be claimed for 4 tiles");
  }

  @Test
  void ec34_exposureThatFitsAConcealedLineOnly_isRejectedUnlessLenient() {
    StackedGame strict = StackedGame.play().rack(0, "2b").rack(2, "22b");
    strict.seat(0).discard("2b");
    strict.run();
    assertThat(strict.seat(2).asked).doesNotContain("claim 2b");
    StackedGame lenient =
        StackedGame.play("claims.lineFit", "LENIENT").rack(0, "2b").rack(2, "22b");
    List<Integer> hands = new ArrayList<>();
    lenient.seat(0).discard("2b");
    lenient.seat(2).claim("2b", ClaimChoice.expose(3, 0));
    lenient.seat(2).watch((question, view) -> hands.add(view.reach(2).size()));
    lenient.run();
    assertThat(lenient.course()).contains("2 claims 2b for 3");
    assertThat(hands.subList(0, 2)).containsExactly(8, 0);
  }

  @Test
  void ec35_concealedHand_isWonByAClaimOfTheFourteenthTile() {
    StackedGame game = StackedGame.play().rack(0, "2b").rack(2, "FF 22b 555c 888d WWW");
    game.seat(0).discard("2b");
    game.seat(2).claim("2b", MAHJONG);
    Outcome outcome = game.run();
    assertThat(game.hands().line(outcome.win().line()).id()).isEqualTo("T3");
    assertThat(game.hands().line(outcome.win().line()).concealed()).isTrue();
    assertThat(outcome.points()).containsExactly(-160, -80, 320, -80);
  }

  @Test
  void ec36_exposedKongOfNorths_leavesTwoLines() {
    StackedGame game = StackedGame.play().rack(0, "N").rack(2, "NNN");
    List<String> lines = new ArrayList<>();
    game.seat(0).discard("N");
    game.seat(2).claim("N", ClaimChoice.expose(4, 0));
    game.seat(2)
        .watch(
            (question, view) -> {
              if (question.equals("turn") && lines.isEmpty()) {
                for (int at = 0; at < view.reach(2).size(); at++) {
                  lines.add(game.hands().line(view.reach(2).line(at)).id());
                }
              }
            });
    game.run();
    assertThat(lines).containsExactly("T1", "T8");
  }

  @Test
  void ec37_selfDrawnKong_cannotBeExposed() {
    StackedGame game = StackedGame.play().rack(1, "444c").draws("4c");
    List<TurnChoice> choices = new ArrayList<>();
    game.seat(1)
        .watch(
            (question, view) -> {
              if (question.equals("turn") && choices.isEmpty()) {
                choices.addAll(LegalMoves.turn(view));
              }
            });
    game.run();
    assertThat(choices).isNotEmpty().allMatch(choice -> choice instanceof TurnChoice.Discard);
    GameEvent expose = new GameEvent.Claim(1, 1, tile("4c"), tile("4c"), 4, 0, NOBODY);
    assertThat(game.breachOf(2, expose).message()).startsWith("here comes a discard (rule 3.2)");
  }

  @Test
  void ec38_exposableLineWonConcealed_paysNoMore() {
    StackedGame game = StackedGame.play().rack(1, "11b J 4444c NNNN RR").draws("R");
    game.seat(1).turn(TurnChoice.mahjong());
    Outcome outcome = game.run();
    assertThat(outcome.win().by()).isEqualTo(WinBy.DRAW);
    assertThat(outcome.points()).containsExactly(-50, 150, -50, -50);
  }

  @Test
  void ec39_declinedWin_isNoBarToALaterOne() {
    StackedGame game = StackedGame.play().rack(1, "11b J 4444c NNNN RR").draws("R 3b 4b 5b 3c R");
    game.seat(1).discard("R -").claim("R", MAHJONG);
    Outcome outcome = game.run();
    assertThat(game.course()).startsWith("0 throws 3b", "1 draws R", "1 throws R", "2 draws 3b");
    assertThat(game.course()).endsWith("2 draws R", "2 throws R", "1 wins by discard from 2");
    assertThat(outcome.points()).containsExactly(-25, 100, -50, -25);
  }

  /** A player may also let a winning discard lie and win later (5.3.1). */
  @Test
  void ec39_declinedDiscard_isNoBarToALaterWin() {
    StackedGame game = StackedGame.play().rack(0, "R").rack(2, "111b 4444c NNNN RR").draws("- R");
    game.seat(0).discard("R");
    game.seat(2).turn(TurnChoice.mahjong());
    game.run();
    assertThat(game.seat(2).asked).containsExactly("claim R", "turn");
    assertThat(game.course()).endsWith("2 wins by draw");
  }

  @Test
  void exposures_ofAClaim_showWhatWasClaimed() {
    StackedGame game = StackedGame.play().rack(0, "4c").rack(2, "4c JJ");
    List<Exposure> shown = new ArrayList<>();
    game.seat(0).discard("4c").watch((question, view) -> shown.addAll(view.exposures(2)));
    game.seat(2).claim("4c", ClaimChoice.expose(4, 2));
    game.run();
    assertThat(shown.get(0)).isEqualTo(TileText.exposures("44cJJ").get(0));
  }
}
