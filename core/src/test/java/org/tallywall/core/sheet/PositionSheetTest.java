package org.tallywall.core.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tallywall.core.play.PassStep;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.text.FaultyFileException;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;
import org.tallywall.core.tile.TileText;

/** What a sheet says stands in the view; what it leaves out is unknown. */
class PositionSheetTest {
  private static int tile(String symbol) {
    return TileText.tile(symbol);
  }

  @Test
  void view_ofATurn_saysWhatTheSheetSays() {
    PositionSheet sheet = Sheets.read(Sheets.TURN);
    SeatView view = sheet.view();
    Rack rack = new Rack();
    view.copyRack(rack);

    assertThat(sheet.seat()).isZero();
    assertThat(sheet.moment()).isEqualTo(new Moment.Turn(tile("S")));
    assertThat(rack).isEqualTo(TileText.rack("222b 66c 888c 66d FF E S"));
    assertThat(view.rackSize()).isEqualTo(14);
    assertThat(view.wallLeft()).isEqualTo(95);
    assertThat(view.drawn()).isEqualTo(tile("S"));
    assertThat(view.offered()).isEqualTo(-1);
    assertThat(view.exposures(2)).isEqualTo(TileText.exposures("NNNJ"));
    assertThat(view.exposures(1)).isEmpty();
    assertThat(view.reach(2).lines()).isEqualTo(1);
    assertThat(view.reach(0).size()).isEqualTo(Sheets.TABLE.hands().size());
    assertThat(view.discarded(tile("4d"))).isEqualTo(1);
    assertThat(view.faceUp(tile("N"))).isEqualTo(3);
    assertThat(view.faceUp(Tile.JOKER)).isEqualTo(1);
    assertThat(view.unseen(tile("N"))).isEqualTo(1);
    assertThat(view.unseen(tile("2b"))).isEqualTo(1);
    assertThat(view.unseen(Tile.FLOWER)).isEqualTo(6);
    assertThat(view.complete()).isFalse();
  }

  @Test
  void sheet_fromAStream_isTheSameAsFromItsText() {
    byte[] bytes = Sheets.TURN.getBytes(StandardCharsets.UTF_8);
    PositionSheet sheet =
        PositionSheet.read("standard input", new ByteArrayInputStream(bytes), Sheets.TABLE);
    assertThat(sheet.moment()).isEqualTo(new Moment.Turn(tile("S")));
    assertThat(sheet.view().wallLeft()).isEqualTo(95);
  }

  @Test
  void sheet_fromAStreamWithAFault_namesWhereItCameFrom() {
    byte[] bytes = "seat 7\n".getBytes(StandardCharsets.UTF_8);
    assertThatThrownBy(
            () ->
                PositionSheet.read("standard input", new ByteArrayInputStream(bytes), Sheets.TABLE))
        .isInstanceOf(FaultyFileException.class)
        .hasMessageContaining("standard input:1:6: there is no seat \"7\"");
  }

  @Test
  void view_whatTheSheetLeavesOut_isUnknown() {
    SeatView view = Sheets.read(Sheets.TURN).view();

    assertThat(view.discards()).isZero();
    assertThat(view.passes()).isEmpty();
    assertThat(view.stoppers()).isEmpty();
    assertThat(view.lostClaims()).isEmpty();
    assertThat(view.exchanges()).isEmpty();
    for (int seat = 0; seat < 4; seat++) {
      assertThat(view.courtesyAsked(seat)).isEqualTo(-1);
      assertThat(view.dead(seat)).isFalse();
    }
  }

  @Test
  void lines_inAnyOrderWithRemarksAndMoreLines_areTheSame() {
    PositionSheet sheet =
        Sheets.read(
            """
            // from the Tuesday table
            exposed 2 NNNJ   // called from East
            discards 1b 2c
              3d             // and on this line

              4d
            rack 222b,66c 888c 66d
            \tFF E S
            wall 95
            moment turn drew S
            seat East
            """);

    assertThat(sheet.view().faceUp(tile("4d"))).isEqualTo(1);
    assertThat(sheet.view().held(Tile.FLOWER)).isEqualTo(2);
    assertThat(sheet.seat()).isZero();
    assertThat(sheet.discardsLeftOut()).isZero();
  }

  @Test
  void seats_byName_areThoseSeenFromEast() {
    String text = Sheets.turnWith("exposed", "exposed across of East NNNJ");

    assertThat(Sheets.read(text).view().exposures(2)).hasSize(1);
    assertThat(Sheets.read(Sheets.turnWith("exposed", "exposed right NNNJ")).view().exposures(1))
        .hasSize(1);
    assertThat(Sheets.read(Sheets.turnWith("exposed", "exposed left NNNJ")).view().exposures(3))
        .hasSize(1);
  }

  @Test
  void discards_inOrder_areListedWithTheirSeats() {
    SeatView view =
        Sheets.read(Sheets.turnWith("discards", "discards in order 0:1b 1:2c 2:3d left:4d")).view();

    assertThat(view.discards()).isEqualTo(4);
    assertThat(view.discardTile(1)).isEqualTo(tile("2c"));
    assertThat(view.discardSeat(1)).isEqualTo(1);
    assertThat(view.discardSeat(3)).isEqualTo(3);
    assertThat(view.discarded(tile("4d"))).isEqualTo(1);
  }

  @Test
  void discards_someLeftOut_areCounted() {
    assertThat(Sheets.read(Sheets.turnWith("discards", "discards 1b 2c")).discardsLeftOut())
        .isEqualTo(2);
  }

  @Test
  void offer_isTheLatestDiscard() {
    PositionSheet sheet =
        Sheets.read(
            """
            seat 1
            moment offer 8c from 0
            wall 96
            rack 222b 66c 888c 66d FF E
            discards 1b 2c 3d
            """);
    SeatView view = sheet.view();

    assertThat(view.offered()).isEqualTo(tile("8c"));
    assertThat(view.offeredBy()).isZero();
    assertThat(view.discards()).isEqualTo(1);
    assertThat(view.discardTile(0)).isEqualTo(tile("8c"));
    assertThat(view.faceUp(tile("8c"))).isEqualTo(1);
    assertThat(view.unseen(tile("8c"))).isZero();
  }

  @Test
  void unseen_inPlaceOfDiscards_givesTheDiscardsAndTheWall() {
    Rack unseen = new Rack();
    SeatView known = Sheets.read(Sheets.TURN).view();
    for (int kind = 0; kind < Tile.KINDS; kind++) {
      unseen.add(kind, known.unseen(kind));
    }
    String line = "unseen " + unseen;

    SeatView view = Sheets.read(Sheets.turnWith("discards", line).replace("wall 95\n", "")).view();

    assertThat(view.wallLeft()).isEqualTo(95);
    for (int kind = 0; kind < Tile.KINDS; kind++) {
      assertThat(view.unseen(kind)).isEqualTo(known.unseen(kind));
      assertThat(view.discarded(kind)).isEqualTo(known.discarded(kind));
    }
  }

  @Test
  void passes_areSeenInTheirOrder() {
    PositionSheet sheet =
        Sheets.read(
            """
            seat 2
            moment pass left-1
            rack 222b 66c 888c 66d FF E
            received across-1 9d 1b 1b
            passed right-1 N 4b R
            passed across-1 3c 4c 5c
            blind 3 left-1 1
            """);

    assertThat(sheet.view().wallLeft()).isEqualTo(99);
    assertThat(sheet.view().passes())
        .containsExactly(
            new SeatView.PassSeen(
                PassStep.RIGHT_1,
                List.of(tile("4b"), tile("N"), tile("R")),
                List.of(),
                List.of(0, 0, 0, 0)),
            new SeatView.PassSeen(
                PassStep.ACROSS_1,
                List.of(tile("3c"), tile("4c"), tile("5c")),
                List.of(tile("1b"), tile("1b"), tile("9d")),
                List.of(0, 0, 0, 0)),
            new SeatView.PassSeen(PassStep.LEFT_1, List.of(), List.of(), List.of(0, 0, 0, 1)));
  }

  @Test
  void east_duringThePasses_holdsFourteen() {
    String lines = "moment stop\nrack 222b 66c 888c 66d FF E S\n";

    assertThat(Sheets.read("seat 0\n" + lines).view().rackSize()).isEqualTo(14);
    Sheets.assertFaulty("seat 1\n" + lines)
        .hasMessageContaining("14 tiles on the rack; at this moment seat 1 holds 13 in all");
  }

  @Test
  void scene_linesOfATest_areKept() {
    PositionSheet sheet =
        Sheets.read(
            Sheets.TURN
                + """
                scene throw-the-stranger
                players reckoner watchful
                plays 1 newcomer
                expect discard any E S
                expect discard 66c
                never discard 2b
                because E, at least, is in no line
                  of this card
                """
                    .replace("66c", "6c"));

    assertThat(sheet.scene()).isEqualTo("throw-the-stranger");
    assertThat(sheet.players()).containsExactly("reckoner", "watchful");
    assertThat(sheet.plays()).containsExactly(null, "newcomer", null, null);
    assertThat(sheet.expect()).hasSize(2);
    assertThat(sheet.never()).hasSize(1);
    assertThat(sheet.because()).isEqualTo("E, at least, is in no line of this card");
  }

  @ParameterizedTest
  @CsvSource({
    "first right, RIGHT_1",
    "First Across, ACROSS_1",
    "first left, LEFT_1",
    "second left, LEFT_2",
    "second across, ACROSS_2",
    "last right, RIGHT_2",
    "right-2, RIGHT_2"
  })
  void pass_asItIsSpoken_isThatPass(String spoken, PassStep step) {
    PositionSheet sheet =
        Sheets.read("seat 1\nmoment pass " + spoken + "\nrack 222b 66c 888c 66d FF E\n");
    assertThat(sheet.moment()).isEqualTo(new Moment.Pass(step));
  }

  @Test
  void offer_byASeat_isOneFromIt() {
    String sheet = Sheets.TURN.replace("moment turn drew S", "moment offer 8b by 2");
    assertThat(Sheets.read(sheet.replace("FF E S", "FF E").replace("wall 95", "wall 94")).moment())
        .isEqualTo(new Moment.Offer(tile("8b"), 2));
  }
}
