package org.tallywall.core.play;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.tallywall.core.tile.Tile;
import org.tallywall.core.tile.TileText;

/** The numbered cases about turns and claims. */
class ClaimCasesTest {
  private static final int KONG_OF_4C = TileText.tile("4c");

  private static void assertRefused(TestTable table, String reason) {
    assertThatThrownBy(table::play)
        .isInstanceOf(IllegalMoveException.class)
        .hasMessageContaining(reason);
  }

  @Test
  void ec18_eastsFirstTurn_discardsWithoutDrawing() {
    TestTable table = TestTable.withoutPasses();
    List<Integer> seen = new ArrayList<>();
    table.seat(0).looking(view -> seen.add(view.drawn()));
    table.play();
    assertThat(table.events.get(0)).startsWith("discard 0");
    assertThat(table.events.get(1)).startsWith("draw 1");
    assertThat(seen.get(0)).isEqualTo(-1);
  }

  @Test
  void ec19_eastsFirstDiscard_canBeClaimedForMahjong() {
    TestTable table =
        TestTable.withoutPasses().wall(wall -> wall.rack(0, "R").rack(2, "111b4444cNNNNRR"));
    table.seat(0).throwing("R");
    table.play();
    assertThat(table.from(0))
        .isEqualTo("discard 0 R\nmahjong 2 discard 0 also 0 0\nend mahjong [-100, -50, 200, -50]");
  }

  @Test
  void ec20_claimByAcross_skipsTheSeatBetween() {
    TestTable table = TestTable.withoutPasses().wall(wall -> wall.rack(0, "4c").rack(2, "444c9d"));
    table.seat(0).throwing("4c");
    table.seat(2).claiming("4c", ClaimChoice.expose(4, 0)).throwing("9d");
    table.play();
    assertThat(table.events.get(1)).isEqualTo("claim 2 0 4444c also 0 0");
    assertThat(table.events.get(2)).isEqualTo("discard 2 9d");
    assertThat(table.events.get(3)).startsWith("draw 3");
  }

  @Test
  void ec21_twoExposureClaims_theNextInTurnGetsTheTile() {
    TestTable table =
        TestTable.withoutPasses()
            .wall(wall -> wall.rack(0, "5d").rack(1, "4c").rack(2, "4cJJ").rack(3, "4cJJJ"));
    table.seat(0).throwing("5d");
    table.seat(1).throwing("4c");
    table.seat(2).claiming("4c", ClaimChoice.expose(4, 2));
    table.seat(3).claiming("4c", ClaimChoice.expose(4, 2));
    table.play();
    assertThat(table.events.get(3)).isEqualTo("claim 2 1 44cJJ also 8 0");
    assertThat(table.table.view(0).lostClaims())
        .containsExactly(new SeatView.LostClaim(3, KONG_OF_4C, false));
  }

  @Test
  void ec22_mahjongClaim_beatsANearerExposure() {
    TestTable table = mahjongAgainstExposure();
    table.play();
    assertThat(table.events.get(3)).isEqualTo("mahjong 0 discard 1 also 4 0");
  }

  private static TestTable mahjongAgainstExposure() {
    TestTable table =
        TestTable.withoutPasses()
            .wall(wall -> wall.rack(0, "111b444cNNNNRRR9d").rack(1, "4c").rack(2, "JJJ"));
    table.seat(0).throwing("9d");
    table.seat(1).throwing("4c");
    table.seat(2).claiming("4c", ClaimChoice.expose(4, 3));
    return table;
  }

  @Test
  void ec23_twoMahjongClaims_theNextInTurnWinsAlone() {
    assertThat(winnersOfSouth()).isEqualTo("mahjong 2 discard 1 also 0 1");
  }

  /** Seat 0 waits for S on T5, seat 2 on T6; seat 1 throws it. */
  private static String winnersOfSouth() {
    TestTable table =
        TestTable.withoutPasses()
            .wall(
                wall -> wall.rack(0, "222d666dSSJJJJJ9d").rack(1, "S").rack(2, "NEW2222c99d66bJ"));
    table.seat(0).throwing("9d");
    table.seat(1).throwing("S");
    table.play();
    return table.events.get(3);
  }

  @Test
  void ec24_aDiscardedJoker_opensNoWindow() {
    TestTable table =
        TestTable.withoutPasses().wall(wall -> wall.rack(0, "J").rack(1, "111b4444cNNNNRR"));
    List<Integer> offers = new ArrayList<>();
    table.seat(0).throwing("J");
    table.seat(1).lookingAtOffers(view -> offers.add(view.offered()));
    table.play();
    assertThat(offers).doesNotContain(Tile.JOKER);
    assertThat(table.events.get(1)).startsWith("draw 1");
  }

  @Test
  void ec25_secondTileOfAPair_canBeClaimedAsTheLastTileOnly() {
    TestTable notLast =
        TestTable.withoutPasses().wall(wall -> wall.rack(0, "9d").rack(1, "NEWS222c9d666bEE"));
    notLast.seat(0).throwing("9d");
    notLast.seat(1).claiming("9d", ClaimChoice.expose(3, 1));
    notLast.play();
    assertThat(notLast.events.get(1)).startsWith("draw 1");
    TestTable last =
        TestTable.withoutPasses().wall(wall -> wall.rack(0, "9d").rack(1, "NEWS2222c9d6666b"));
    last.seat(0).throwing("9d");
    last.play();
    assertThat(last.events.get(1)).isEqualTo("mahjong 1 discard 0 also 0 0");
  }

  @Test
  void ec26_aMissingSingle_canBeClaimedAsTheLastTileOnly() {
    TestTable last =
        TestTable.withoutPasses().wall(wall -> wall.rack(0, "W").rack(1, "NES2222c99d6666b"));
    last.seat(0).throwing("W");
    last.play();
    assertThat(last.events.get(1)).isEqualTo("mahjong 1 discard 0 also 0 0");
    TestTable more =
        TestTable.withoutPasses().wall(wall -> wall.rack(0, "W").rack(1, "NE2222c99d6666b1b"));
    more.seat(0).throwing("W");
    more.seat(1).claiming("W", ClaimChoice.mahjong());
    more.play();
    assertThat(more.events.get(1)).startsWith("draw 1");
  }

  @Test
  void ec27_anEarlierDiscard_cannotBeClaimed() {
    TestTable table =
        TestTable.withoutPasses().wall(wall -> wall.rack(0, "4c").rack(1, "9d").rack(3, "444c"));
    table.seat(0).throwing("4c");
    table.seat(1).throwing("9d");
    List<Integer> offers = new ArrayList<>();
    table.seat(3).lookingAtOffers(view -> offers.add(view.offered()));
    table.play();
    assertThat(offers.get(0)).isEqualTo(KONG_OF_4C);
    SeatView view = table.table.view(3);
    assertThat(LegalMoves.mayExpose(view, KONG_OF_4C, 4, 0)).isFalse();
  }

  @Test
  void ec28_theDiscarder_isNeverAsked() {
    TestTable table = TestTable.withoutPasses().wall(wall -> wall.rack(0, "4444c9999d"));
    List<Integer> offers = new ArrayList<>();
    table.seat(0).throwing("4c").lookingAtOffers(view -> offers.add(view.offeredBy()));
    table.play();
    assertThat(offers).doesNotContain(0);
  }

  @Test
  void ec29_threeJokers_layAKongUnlessANaturalIsWanted() {
    TestTable table = TestTable.withoutPasses().wall(wall -> wall.rack(0, "4c").rack(1, "JJJ"));
    table.seat(0).throwing("4c");
    table.seat(1).claiming("4c", ClaimChoice.expose(4, 3));
    table.play();
    assertThat(table.events.get(1)).isEqualTo("claim 1 0 4cJJJ also 0 0");
    TestTable strict =
        TestTable.withoutPasses()
            .rule("claims.minNaturalsFromRack", 1)
            .wall(wall -> wall.rack(0, "4c").rack(1, "JJJ"));
    strict.seat(0).throwing("4c");
    strict.seat(1).claiming("4c", ClaimChoice.expose(4, 3));
    strict.play();
    assertThat(strict.events.get(1)).startsWith("draw 1");
  }

  @Test
  void ec30_twoNaturalsAndAJoker_areOfferedAKongOnly() {
    TestTable table = TestTable.withoutPasses().wall(wall -> wall.rack(0, "4c").rack(1, "44cJ"));
    List<List<ClaimChoice>> legal = new ArrayList<>();
    table.seat(0).throwing("4c");
    table.seat(1).lookingAtOffers(view -> legal.add(LegalMoves.exposures(view)));
    table.play();
    assertThat(legal.get(0)).containsExactly(ClaimChoice.expose(4, 1));
  }

  @Test
  void ec31_anExposedKong_drawsNoFurtherTile() {
    TestTable table = TestTable.withoutPasses().wall(wall -> wall.rack(0, "4c").rack(1, "444c9d"));
    table.seat(0).throwing("4c");
    table.seat(1).claiming("4c", ClaimChoice.expose(4, 0)).throwing("9d");
    List<Integer> sizes = new ArrayList<>();
    table.seat(1).looking(view -> sizes.add(view.rackSize()));
    table.play();
    assertThat(table.events.get(2)).isEqualTo("discard 1 9d");
    assertThat(sizes.get(0)).isEqualTo(10);
  }

  @Test
  void ec32_aDrawnTile_redeemsTheJokerOfOnesOwnPung() {
    TestTable table =
        TestTable.withoutPasses()
            .wall(wall -> wall.rack(0, "1b").rack(1, "1bJ9999d").draws("E E E 1b"));
    table.seat(0).throwing("1b");
    table
        .seat(1)
        .claiming("1b", ClaimChoice.expose(3, 1))
        .throwing("9d")
        .turn(TurnChoice.exchange(1, 0));
    table.play();
    assertThat(table.events).contains("claim 1 0 11bJ also 0 0", "exchange 1 1 0 1b");
    assertThat(table.table.view(0).exposures(1)).hasToString("[111b]");
  }

  @Test
  void ec33_aClaimThatLeavesNoTileToThrow_isRefused() {
    TestTable table =
        TestTable.withoutPasses()
            .wall(
                wall ->
                    wall.rack(0, "4cNR9d")
                        .rack(1, "444cNNNRR111b8d")
                        .draws("8d 8d 8d 8c 8c 8c 8c"));
    table.seat(0).throwing("4c", "9d");
    table.seat(1).claiming("4c", ClaimChoice.expose(4, 0)).throwing("8d");
    List<Boolean> whole = new ArrayList<>();
    table.seat(1).looking(view -> whole.add(view.rackSize() > 0));
    table.play();
    assertThat(whole).doesNotContain(false);
    SeatView full = new TableViews("111b4444cNNNNRR").view();
    assertThat(LegalMoves.mayExpose(full, Tile.RED, 3, 0)).isFalse();
  }

  @Test
  void ec34_aGroupOfAConcealedLine_isRefusedUnlessTheTableIsLenient() {
    TestTable strict = TestTable.withoutPasses().wall(wall -> wall.rack(0, "2b").rack(1, "22b9d"));
    strict.seat(0).throwing("2b");
    strict.seat(1).claiming("2b", ClaimChoice.expose(3, 0));
    strict.play();
    assertThat(strict.events.get(1)).startsWith("draw 1");
    TestTable lenient =
        TestTable.withoutPasses()
            .rule("claims.lineFit", "LENIENT")
            .wall(wall -> wall.rack(0, "2b").rack(1, "22b9d"));
    lenient.seat(0).throwing("2b");
    lenient.seat(1).claiming("2b", ClaimChoice.expose(3, 0)).throwing("9d");
    lenient.play();
    assertThat(lenient.events.get(1)).isEqualTo("claim 1 0 222b also 0 0");
    assertThat(lenient.table.view(0).reach(1).size()).isZero();
  }

  @Test
  void ec35_theLastTileOfAConcealedHand_canBeClaimed() {
    TestTable table =
        TestTable.withoutPasses().wall(wall -> wall.rack(0, "W").rack(1, "FF222b555c888dWW"));
    table.seat(0).throwing("W");
    table.play();
    assertThat(table.events.get(1)).isEqualTo("mahjong 1 discard 0 also 0 0");
    assertThat(table.outcome.win().line()).isEqualTo(2);
  }

  @Test
  void ec36_exposedKongOfNorth_leavesT1AndT8() {
    assertThat(TestTable.CARD.reach(TileText.exposures("NNNN")).lines()).isEqualTo(2);
  }

  @Test
  void ec37_aSelfDrawnKong_canNotBeExposed() {
    List<List<TurnChoice>> legal = new ArrayList<>();
    TestTable table = TestTable.withoutPasses().wall(wall -> wall.rack(0, "4444c"));
    table.seat(0).looking(view -> legal.add(LegalMoves.turn(view)));
    table.play();
    assertThat(legal.get(0)).isNotEmpty().allMatch(choice -> choice instanceof TurnChoice.Discard);
  }

  @Test
  void ec38_aConcealedWinOnAnExposableLine_hasNoBonus() {
    TestTable table =
        TestTable.withoutPasses()
            .wall(wall -> wall.rack(0, "9d").rack(1, "111b444cJNNNNRR").draws("R"));
    table.seat(0).throwing("9d");
    table.play();
    assertThat(table.outcome.points()).containsExactly(-50, 150, -50, -50);
  }

  @Test
  void ec39_aDeclinedWin_barsNoLaterOne() {
    TestTable table =
        TestTable.withoutPasses()
            .wall(wall -> wall.rack(0, "9dR").rack(1, "111b4444cNNNNRR").draws("R E E E"));
    table.seat(0).throwing("9d", "R");
    table.seat(1).throwing("R");
    table.play();
    assertThat(table.events.get(2)).isEqualTo("discard 1 R");
    assertThat(table.events).contains("mahjong 1 discard 0 also 0 0");
  }

  @Test
  void illegalAnswers_nameTheSeatAndTheRule() {
    TestTable notHeld = TestTable.withoutPasses().wall(wall -> wall.rack(0, "9d"));
    notHeld.seat(0).throwing("J");
    assertRefused(notHeld, "(3.2)");
    TestTable noHand = TestTable.withoutPasses();
    noHand.seat(0).turn(TurnChoice.mahjong());
    assertRefused(noHand, "(5.2)");
    TestTable noJoker = TestTable.withoutPasses();
    noJoker.seat(0).turn(TurnChoice.exchange(1, 0));
    assertRefused(noJoker, "(4.4)");
    TestTable nothing = TestTable.withoutPasses();
    nothing.seat(0).turn(view -> null);
    assertRefused(nothing, "no answer");
  }
}
