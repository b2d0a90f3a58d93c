package org.tallywall.core.play;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;
import org.tallywall.core.tile.TileSet;
import org.tallywall.core.tile.TileText;

/** The numbered cases about the set, the deal and the passes. */
class SetAndPassCasesTest {
  private static final String ANY_FIFTEEN = "1b2b3b";

  @Test
  void ec01_freshSet_has152Tiles() {
    int[] tiles = TileSet.USUAL.tiles();
    Rack all = Rack.of(tiles);
    assertThat(tiles).hasSize(152);
    for (int kind = 0; kind < Tile.FLOWER; kind++) {
      assertThat(all.held(kind)).isEqualTo(4);
    }
    assertThat(all.held(Tile.FLOWER)).isEqualTo(8);
    assertThat(all.jokers()).isEqualTo(8);
  }

  @Test
  void ec02_anySeed_deals14And13AndLeaves99() {
    for (long seed = 0; seed < 50; seed++) {
      Deal deal = Deal.of(seed, seed * 7, TileSet.USUAL);
      int[] sizes = new int[4];
      Rack all = new Rack();
      for (int at = 0; at < deal.size(); at++) {
        all.add(deal.tile(at));
        if (at < Deal.DEALT) {
          sizes[Deal.dealtTo(at)]++;
        }
      }
      assertThat(sizes).containsExactly(14, 13, 13, 13);
      assertThat(deal.size() - Deal.DEALT).isEqualTo(99);
      assertThat(all).isEqualTo(Rack.of(TileSet.USUAL.tiles()));
    }
  }

  @Test
  void ec03_hotWallSwitch_changesNoTile() {
    List<String> walls = new ArrayList<>();
    for (String hot : List.of("OFF", "PAY_ALL_IF_UNACCOUNTED")) {
      TestTable table = TestTable.withoutPasses().rule("wall.hot", hot).play();
      StringBuilder wall = new StringBuilder();
      for (int at = 0; at < table.table.deal().size(); at++) {
        wall.append(Tile.symbol(table.table.deal().tile(at)));
      }
      walls.add(wall.toString());
    }
    assertThat(walls.get(0)).isEqualTo(walls.get(1));
    assertThat(Deal.of(5, 6, TileSet.USUAL).tile(0))
        .isEqualTo(Deal.of(5, 6, TileSet.USUAL).tile(0));
  }

  @Test
  void ec04_flowersOfAnyEngraving_areOneKind() {
    assertThat(TileText.tile("F")).isEqualTo(Tile.FLOWER);
    assertThat(TileText.rack("FFFFFFFF").held(Tile.FLOWER)).isEqualTo(8);
  }

  @Test
  void ec05_aJoker_mayNotBePassed() {
    for (boolean courtesy : new boolean[] {false, true}) {
      TestTable table = TestTable.withPasses().wall(wall -> wall.rack(1, "J111222333b4b"));
      if (courtesy) {
        table.rule("charleston.first", "NONE");
        table.seat(1).courtesy(1, "J");
        table.seat(3).courtesy(1, "");
      } else {
        table.seat(1).pass(PassStep.RIGHT_1, "J11b");
      }
      assertThatThrownBy(table::play)
          .isInstanceOf(IllegalMoveException.class)
          .hasMessageContaining("joker may not be passed");
    }
  }

  @Test
  void ec06_tilesReceived_canBePassedInTheNextPassOnly() {
    TestTable table =
        TestTable.withPasses()
            .wall(wall -> wall.rack(0, "NNN11122233344b").rack(1, "555666777c888c9c"));
    table.seat(0).pass(PassStep.RIGHT_1, "NNN");
    table.seat(1).pass(PassStep.RIGHT_1, "555c").pass(PassStep.ACROSS_1, "NNN");
    table.play();
    assertThat(table.events.get(5)).isEqualTo("pass across-1 1 NNN/");
    TestTable early =
        TestTable.withPasses()
            .wall(wall -> wall.rack(0, "NNN11122233344b").rack(1, "555666777c888c9c"));
    early.seat(0).pass(PassStep.RIGHT_1, "NNN");
    early.seat(1).pass(PassStep.RIGHT_1, "NNN");
    assertThatThrownBy(early::play).isInstanceOf(IllegalMoveException.class);
  }

  @Test
  void ec07_rackOfEightJokers_leavesTenWaysToPass() {
    int[] ways = {0};
    TestTable table =
        TestTable.withPasses()
            .wall(wall -> wall.rack(1, "JJJJJJJJ12345b"))
            .rule("charleston.courtesy", "NONE");
    table.play();
    SeatView view = new TableViews("JJJJJJJJ12345b").view();
    int[] tiles = TileText.rack("JJJJJJJJ12345b").tiles();
    for (int a = 0; a < 13; a++) {
      for (int b = a + 1; b < 13; b++) {
        for (int c = b + 1; c < 13; c++) {
          PassChoice choice = PassChoice.of(tiles[a], tiles[b], tiles[c]);
          ways[0] += LegalMoves.passFault(view, PassStep.RIGHT_1, choice) == null ? 1 : 0;
        }
      }
    }
    assertThat(ways[0]).isEqualTo(10);
  }

  @Test
  void ec08_fewerThanThreeTiles_areRefusedWhereNoBlindPassIs() {
    for (PassStep step :
        List.of(PassStep.RIGHT_1, PassStep.ACROSS_1, PassStep.LEFT_2, PassStep.ACROSS_2)) {
      TestTable table = TestTable.withPasses();
      table.seat(2).pass(step, "");
      assertThatThrownBy(table::play)
          .isInstanceOf(IllegalMoveException.class)
          .hasMessageContaining("blind");
    }
  }

  @Test
  void ec09_oneOwnTileInFirstLeft_keepsOneOfThree() {
    TestTable table = TestTable.withPasses().wall(wall -> wall.rack(1, ANY_FIFTEEN));
    table.seat(1).pass(PassStep.LEFT_1, "E");
    table.wall(wall -> wall.rack(1, "E123456789c123d"));
    table.play();
    String pass = table.events.get(9);
    assertThat(pass).startsWith("pass left-1 1 E/");
    assertThat(pass.substring(pass.indexOf('/') + 1)).hasSize(4);
    SeatView.PassSeen seen = table.table.view(1).passes().get(2);
    assertThat(seen.received()).hasSize(1);
    assertThat(seen.blind()).containsExactly(0, 2, 0, 0);
  }

  @Test
  void ec10_allTwoOwnInLastRight_everyoneHandsOnThreeAndKeepsTwo() {
    List<String> first = lastRight();
    assertThat(first).hasSize(4).isEqualTo(lastRight());
    for (String pass : first) {
      String[] parts = pass.substring(pass.lastIndexOf(' ') + 1).split("/");
      assertThat(TileText.rack(parts[0]).total()).isEqualTo(2);
      assertThat(TileText.rack(parts[1]).total()).isEqualTo(1);
    }
  }

  private static List<String> lastRight() {
    TestTable table =
        TestTable.withPasses()
            .wall(wall -> wall.rack(0, "NN").rack(1, "EE").rack(2, "WW").rack(3, "SS"));
    String[] own = {"NN", "EE", "WW", "SS"};
    for (int seat = 0; seat < 4; seat++) {
      table.seat(seat).pass(PassStep.RIGHT_2, own[seat]);
    }
    table.play();
    for (int seat = 0; seat < 4; seat++) {
      assertThat(table.table.view(seat).passes().get(5).received()).hasSize(2);
    }
    return table.events.stream().filter(event -> event.startsWith("pass right-2")).toList();
  }

  @Test
  void ec11_allBlind_movesNothing() {
    TestTable table = TestTable.withPasses();
    for (int seat = 0; seat < 4; seat++) {
      table.seat(seat).pass(PassStep.LEFT_1, "");
    }
    table.play();
    assertThat(table.events.subList(8, 12))
        .containsExactly(
            "pass left-1 0 /", "pass left-1 1 /", "pass left-1 2 /", "pass left-1 3 /");
    assertThat(table.events.get(12)).isEqualTo("stop 0");
    assertThat(table.table.view(2).passes().get(2).received()).isEmpty();
  }

  @Test
  void ec12_oneStop_skipsTheSecondRoundButNotTheCourtesy() {
    TestTable table = TestTable.withPasses();
    table.seat(2).stopping().courtesy(2, "");
    table.seat(0).courtesy(3, "");
    table.play();
    assertThat(table.events.get(12)).isEqualTo("stop 4");
    assertThat(table.events.get(13)).startsWith("courtesy 0 32 ");
    assertThat(table.events.get(14)).startsWith("courtesy 1 00 ");
    assertThat(table.table.view(0).stoppers()).containsExactly(2);
  }

  @Test
  void ec13_afterTheFourthPass_noStopIsOffered() {
    TestTable table = TestTable.withPasses().play();
    assertThat(table.events.stream().filter(event -> event.startsWith("stop"))).hasSize(1);
    assertThat(table.events.stream().filter(event -> event.startsWith("pass"))).hasSize(24);
  }

  @Test
  void ec14_courtesy_takesTheLowerNumberOfEachPair() {
    TestTable table = TestTable.withPasses();
    table.seat(0).courtesy(3, "");
    table.seat(2).courtesy(1, "");
    table.seat(1).courtesy(0, "");
    table.seat(3).courtesy(3, "");
    table.play();
    List<String> courtesies =
        table.events.stream().filter(event -> event.startsWith("courtesy")).toList();
    assertThat(courtesies.get(0)).startsWith("courtesy 0 31 ");
    String[] gave = courtesies.get(0).substring(14).split("/");
    assertThat(TileText.rack(gave[0]).total()).isEqualTo(1);
    assertThat(TileText.rack(gave[1]).total()).isEqualTo(1);
    assertThat(courtesies.get(1)).isEqualTo("courtesy 1 03 /");
  }

  @Test
  void ec15_eastDealtAHand_declaresBeforeThePasses() {
    TestTable natural =
        TestTable.withPasses().wall(wall -> wall.rack(0, "111b4444cNNNNRRR")).play();
    assertThat(natural.from(0))
        .isEqualTo("mahjong 0 deal -1 also 0 0\nend mahjong [300, -100, -100, -100]");
    TestTable joker = TestTable.withPasses().wall(wall -> wall.rack(0, "111b4444cNNNNRRJ")).play();
    assertThat(joker.outcome.points()).containsExactly(150, -50, -50, -50);
  }

  @Test
  void ec16_eastCompleteAfterFirstRight_mustPassAnyway() {
    TestTable table =
        TestTable.withPasses()
            .wall(wall -> wall.rack(0, "111b4444cNNNN123d").rack(3, "RRR56789c56789d"));
    table.seat(0).pass(PassStep.RIGHT_1, "123d");
    table.seat(3).pass(PassStep.RIGHT_1, "RRR");
    table.play();
    assertThat(table.events.get(4)).startsWith("pass across-1 0 111");
  }

  @Test
  void ec17_blindTiles_areNotInThePassersView() {
    TestTable table = TestTable.withPasses().wall(wall -> wall.rack(2, "NEW123456789c1c"));
    table.seat(2).pass(PassStep.LEFT_1, "NEW");
    table.seat(1).pass(PassStep.LEFT_1, "");
    table.play();
    assertThat(table.events.get(9)).startsWith("pass left-1 1 /").hasSize(18);
    SeatView.PassSeen seen = table.table.view(1).passes().get(2);
    assertThat(seen.given()).isEmpty();
    assertThat(seen.received()).isEmpty();
    assertThat(table.table.view(0).passes().get(2).received())
        .containsExactly(Tile.NORTH, Tile.EAST, Tile.WEST);
  }
}
