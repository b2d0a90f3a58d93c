package org.tallywall.strategies.player;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tallywall.core.play.ForwardingPlayer;
import org.tallywall.core.play.OpenTable;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.Position;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.Seats;
import org.tallywall.core.play.SeesOpenTable;
import org.tallywall.core.play.TurnChoice;
import org.tallywall.core.random.Purpose;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;
import org.tallywall.strategies.TestTable;
import org.tallywall.strategies.guess.LikelyTiles;
import org.tallywall.strategies.habit.KnowsHabit;

/** What a yardstick knows of hidden tiles lies where it lies, and all tiles are there once. */
class KnownTilesTest {
  private static final int SEAT = 2;

  /** Guesses at each of its turns and compares with the table. */
  private static final class Guessing extends ForwardingPlayer implements SeesOpenTable {
    private final boolean racks;
    private final Knowledge knowledge;
    private final KnownTiles tiles;
    private OpenTable table;
    int compared;
    int otherwise;

    Guessing(boolean racks, int draws) {
      super(new NearestPlayer());
      this.racks = racks;
      knowledge = new Knowledge(new KnowsHabit(false, false, racks, draws, false, 0, 0));
      tiles = new KnownTiles(knowledge, new LikelyTiles());
    }

    @Override
    public void sitAt(OpenTable open) {
      table = open;
      knowledge.sitAt(open);
    }

    @Override
    public TurnChoice turn(SeatView view, RandomStream random) {
      knowledge.inPlay(view);
      Position position = new Position();
      position.begin(view, random);
      tiles.look(view);
      tiles.deal(view, random.beside(Purpose.ROLLOUT, 2), position);
      compare(view, position);
      compared++;
      return super.turn(view, random);
    }

    private void compare(SeatView view, Position position) {
      int[] draws = knowledge.draws(view, true);
      for (int at = 0; at < draws.length; at++) {
        assertThat(position.wall(SEAT + Seats.COUNT * at)).isEqualTo(draws[at]);
      }
      int[] hidden = new int[Tile.KINDS];
      for (int seat = 0; seat < Seats.COUNT; seat++) {
        if (seat != SEAT) {
          Rack truth = new Rack();
          table.view(seat).copyRack(truth);
          assertThat(position.rack(seat).total()).isEqualTo(truth.total());
          otherwise += position.rack(seat).equals(truth) ? 0 : 1;
          for (int tile : position.rack(seat).tiles()) {
            hidden[tile]++;
          }
        }
      }
      for (int at = 0; at < view.wallLeft(); at++) {
        hidden[position.wall(at)]++;
      }
      for (int kind = 0; kind < Tile.KINDS; kind++) {
        assertThat(hidden[kind]).isEqualTo(view.unseen(kind));
      }
      assertThat(racks && otherwise > 0).isFalse();
    }
  }

  @ParameterizedTest
  @CsvSource({"true, 3", "true, 0", "false, 3"})
  void hiddenTiles_lieWhereTheyAreKnownToLie(boolean racks, int draws) {
    Guessing guessing = new Guessing(racks, draws);
    List<Player> four = new ArrayList<>();
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      four.add(seat == SEAT ? guessing : new NearestPlayer());
    }
    for (int deal = 0; deal < 15; deal++) {
      TestTable.play(deal, four);
    }

    assertThat(guessing.compared).isGreaterThan(100);
    assertThat(guessing.otherwise > 0).isEqualTo(!racks);
  }
}
