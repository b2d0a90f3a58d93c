package org.tallywall.strategies.guess;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tallywall.core.play.Deal;
import org.tallywall.core.play.ForwardingPlayer;
import org.tallywall.core.play.Game;
import org.tallywall.core.play.GameListener;
import org.tallywall.core.play.OpenTable;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.SeesOpenTable;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.play.TurnChoice;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.rules.TableRules;
import org.tallywall.core.tile.Rack;
import org.tallywall.strategies.TestTable;
import org.tallywall.strategies.catalog.Catalog;
import org.tallywall.strategies.catalog.PlayerSpec;

/**
 * No player lets a winning tile lie: in every turn of whole games, no true rack of another would
 * have won on what went by since she threw her last tile. And racks that would are seen.
 */
class LetWinLieTest {
  private static final int DEALS = 60;

  @ParameterizedTest
  @ValueSource(strings = {"watchful", "reckoner", "nearest", "newcomer"})
  void racksOfGames_neverLetAWinLie(String kind) {
    PlayerSpec spec = new PlayerSpec(Catalog.standard().type(kind).orElseThrow(), Map.of());
    List<Looks> four = new ArrayList<>();
    for (int seat = 0; seat < 4; seat++) {
      four.add(new Looks(spec.make()));
    }
    Game game =
        new Game(new TableSetup(TestTable.HANDS, TableRules.STANDARD), four, new GameListener() {});
    for (int deal = 0; deal < DEALS; deal++) {
      game.play(Deal.of(TestTable.SEED, deal, TableRules.STANDARD.tiles()));
    }
    assertThat(four.stream().mapToLong(seat -> seat.racks).sum()).isGreaterThan(60L * DEALS);
    assertThat(four.stream().mapToLong(seat -> seat.let).sum()).isZero();
    // A guess that does not look at what went by would often deal such racks.
    assertThat(four.stream().mapToLong(seat -> seat.proposed).sum()).isPositive();
  }

  /** Looks at the racks of the others in each of its turns. */
  private static final class Looks extends ForwardingPlayer implements SeesOpenTable {
    private final RackProposal proposal = new RackProposal();
    private final RackTraits traits = new RackTraits();
    private final Rack rack = new Rack();
    private OpenTable table;
    private long racks;
    private long let;
    private long proposed;

    Looks(Player player) {
      super(player);
    }

    @Override
    public void sitAt(OpenTable open) {
      table = open;
      show(open);
    }

    @Override
    public TurnChoice turn(SeatView view, RandomStream random) {
      for (int other = 0; other < 4; other++) {
        if (other != view.seat()) {
          look(view, other);
        }
      }
      return super.turn(view, random);
    }

    private void look(SeatView view, int other) {
      proposal.look(view, other, table.view(other).rackSize());
      traits.look(view, other, proposal);
      table.view(other).copyRack(rack);
      traits.of(rack);
      racks++;
      let += traits.letWinLie() ? 1 : 0;
      for (int at = view.discards() - 1; at >= 0 && view.discardSeat(at) != other; at--) {
        exchanged(view.discardTile(at));
      }
    }

    /** Whether the rack with one tile less would have waited for a tile that went by. */
    private void exchanged(int tile) {
      for (int kind : rack.tiles()) {
        Rack without = rack.copy();
        without.remove(kind);
        without.add(tile);
        traits.of(without);
        proposed += traits.letWinLie() ? 1 : 0;
      }
    }
  }
}
