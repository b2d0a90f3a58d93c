package org.tallywall.core.play;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.tallywall.core.TestCards;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.rules.TableRules;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;
import org.tallywall.core.tile.TileSet;
import org.tallywall.core.tile.TileText;

/** The worked cases of the rules about the set and the deal, EC-01 to EC-04. */
class EdgeCasesOfTheDealTest {
  private static final ConcreteHands HANDS = new ConcreteHands(TestCards.testCard());

  @Test
  void ec01_freshSet_has152TilesOf36Kinds() {
    Rack all = Rack.of(TileSet.USUAL.tiles());
    assertThat(all.total()).isEqualTo(152);
    for (int kind = 0; kind < Tile.FLOWER; kind++) {
      assertThat(all.held(kind)).as(Tile.symbol(kind)).isEqualTo(4);
    }
    assertThat(all.held(Tile.FLOWER)).isEqualTo(8);
    assertThat(all.held(Tile.JOKER)).isEqualTo(8);
    assertThat(Tile.FLOWER).isEqualTo(34);
  }

  @Test
  void ec02_anySeed_deals14And13And13And13AndLeaves99() {
    for (long seed = 0; seed < 300; seed++) {
      TableSetup setup = new TableSetup(HANDS, TableRules.STANDARD);
      GameState state = new GameState(setup);
      state.begin(Deal.of(seed, seed, TileSet.USUAL));
      Rack all = new Rack();
      for (int seat = 0; seat < 4; seat++) {
        assertThat(state.racks[seat].total()).isEqualTo(seat == 0 ? 14 : 13);
        for (int kind = 0; kind < Tile.KINDS; kind++) {
          all.add(kind, state.racks[seat].held(kind));
        }
      }
      assertThat(state.wallLeft()).isEqualTo(99);
      for (int place = 53; place < 152; place++) {
        all.add(state.deal().tile(place));
      }
      assertThat(all).isEqualTo(Rack.of(TileSet.USUAL.tiles()));
    }
  }

  /** The map of the rules: three rounds of four, then one each and one more to East. */
  @Test
  void ec02_placesOfTheWall_goToTheSeatsOfTheRules() {
    for (int round = 0; round < 3; round++) {
      for (int seat = 0; seat < 4; seat++) {
        for (int tile = 0; tile < 4; tile++) {
          assertThat(Deal.dealtTo(16 * round + 4 * seat + tile)).isEqualTo(seat);
        }
      }
    }
    assertThat(List.of(48, 49, 50, 51, 52).stream().map(Deal::dealtTo))
        .containsExactly(0, 1, 2, 3, 0);
  }

  @Test
  void ec03_hotWallSwitch_movesNoTile() {
    for (long seed = 0; seed < 50; seed++) {
      List<String> without = course(seed, TableRules.STANDARD);
      List<String> with =
          course(seed, TableRules.STANDARD.with("wall.hot", "PAY_ALL_IF_UNACCOUNTED"));
      assertThat(with).isEqualTo(without).hasSizeGreaterThan(200);
    }
  }

  /** Racks as dealt, dice, draws and discards of players who throw what they draw. */
  private static List<String> course(long seed, TableRules rules) {
    List<String> course = new ArrayList<>();
    GameListener notes =
        new GameListener() {
          @Override
          public void began(OpenTable table) {
            for (int seat = 0; seat < 4; seat++) {
              Rack rack = new Rack();
              table.view(seat).copyRack(rack);
              course.add(rack.toString());
            }
            course.add(table.deal().die(0) + " " + table.deal().die(1));
          }

          @Override
          public void drew(int seat, int tile) {
            course.add(seat + " draws " + tile);
          }

          @Override
          public void discarded(int seat, int tile) {
            course.add(seat + " throws " + tile);
          }
        };
    List<ScriptedPlayer> players =
        List.of(
            new ScriptedPlayer(), new ScriptedPlayer(), new ScriptedPlayer(), new ScriptedPlayer());
    new Game(new TableSetup(HANDS, rules), players, notes).play(Deal.of(seed, 3, rules.tiles()));
    return course;
  }

  @Test
  void ec04_flowersOfAnyEngraving_areOneKind() {
    int[] tiles = TileSet.USUAL.tiles();
    assertThat(java.util.Arrays.stream(tiles).filter(kind -> kind == Tile.FLOWER)).hasSize(8);
    assertThat(TileText.rack("FFFFFFFF").held(Tile.FLOWER)).isEqualTo(8);
    StackedGame game = StackedGame.play().rack(0, "FF 7777d 7777b GGGG");
    game.seat(0).turn(TurnChoice.mahjong());
    assertThat(game.run().win().line()).as("T2, by its place on the card").isEqualTo(1);
  }
}
