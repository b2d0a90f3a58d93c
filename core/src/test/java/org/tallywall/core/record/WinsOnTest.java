package org.tallywall.core.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.play.Deal;
import org.tallywall.core.play.Game;
import org.tallywall.core.play.GameListener;
import org.tallywall.core.play.GreedyPlayer;
import org.tallywall.core.play.MixedTable;
import org.tallywall.core.play.OpenTable;
import org.tallywall.core.play.Outcome;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.Seats;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.rules.TableRules;
import org.tallywall.core.rules.WallRules;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;

/**
 * The tiles on which somebody may win, as the open table has them, against tiles laid beside hands
 * one by one, after every fourth discard of whole games.
 */
class WinsOnTest {
  private static final int GAMES = 25;
  private static final ConcreteHands HANDS = new ConcreteHands(MixedTable.card());

  private final PlainHands plain = new PlainHands(HANDS);
  private OpenTable table;
  private int compared;
  private int winning;

  private final class Comparing implements GameListener {
    private int discards;

    @Override
    public void began(OpenTable open) {
      table = open;
    }

    @Override
    public void discarded(int seat, int tile) {
      if (++discards % 4 == 0) {
        for (int other = 0; other < Seats.COUNT; other++) {
          long expected = other == seat ? table.winsOn(seat) : byHand(other);
          assertThat(table.winsOn(other)).as("seat %s", other).isEqualTo(expected);
          compared++;
          winning += expected == 0 ? 0 : 1;
        }
      }
    }

    @Override
    public void ended(Outcome outcome) {
      table = null;
    }
  }

  private long byHand(int seat) {
    TableRules rules = table.setup().rules();
    SeatView view = table.view(seat);
    boolean cold = rules.wall().cold() != WallRules.Cold.OFF && inLastWall(rules);
    boolean last = table.wallLeft() == 0 && rules.wall().finalClaim() == WallRules.FinalClaim.NONE;
    if (view.dead(seat) || cold || last) {
      return 0;
    }
    long wins = 0;
    int kinds = rules.jokers().discardClaimable() ? Tile.KINDS : Tile.NATURALS;
    for (int kind = 0; kind < kinds; kind++) {
      Rack rack = new Rack();
      view.copyRack(rack);
      rack.add(kind);
      wins |= plain.complete(rack, view.exposures(seat)).isEmpty() ? 0 : 1L << kind;
    }
    return wins;
  }

  private boolean inLastWall(TableRules rules) {
    int tiles = rules.wall().lastTiles();
    int dice = 2 * (table.deal().die(0) + table.deal().die(1));
    return table.wallLeft() < (tiles == WallRules.BY_DICE ? dice : tiles);
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2, 3, 4, 5})
  void winsOn_afterDiscards_areTheTilesThatCompleteAHand(int which) {
    TableRules rules = MixedTable.rules().get(which);
    Game game =
        new Game(
            new TableSetup(HANDS, rules),
            Collections.nCopies(Seats.COUNT, new GreedyPlayer()),
            new Comparing());

    for (int deal = 0; deal < GAMES; deal++) {
      game.play(Deal.of(81_1, deal, rules.tiles()));
    }

    assertThat(compared).isGreaterThan(500);
    assertThat(winning).isGreaterThan(10);
  }

  /** East holds 14 tiles when the game begins. */
  @Test
  void winsOn_whoHoldsFourteenTiles_isNothing() {
    int[] asked = {0};
    GameListener listener =
        new GameListener() {
          @Override
          public void began(OpenTable open) {
            assertThat(open.view(Seats.EAST).rackSize()).isEqualTo(14);
            assertThat(open.winsOn(Seats.EAST)).isZero();
            asked[0]++;
          }
        };

    new Game(
            new TableSetup(HANDS, TableRules.STANDARD),
            List.of(new GreedyPlayer(), new GreedyPlayer(), new GreedyPlayer(), new GreedyPlayer()),
            listener)
        .play(Deal.of(1, 1, TableRules.STANDARD.tiles()));

    assertThat(asked[0]).isEqualTo(1);
  }
}
