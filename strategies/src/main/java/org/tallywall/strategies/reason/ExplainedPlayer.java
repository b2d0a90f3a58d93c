package org.tallywall.strategies.reason;

import java.util.List;
import org.tallywall.core.play.ClaimChoice;
import org.tallywall.core.play.ForwardingPlayer;
import org.tallywall.core.play.LegalMoves;
import org.tallywall.core.play.OpenTable;
import org.tallywall.core.play.PassChoice;
import org.tallywall.core.play.PassStep;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.SeesOpenTable;
import org.tallywall.core.play.TurnChoice;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.sheet.Move;
import org.tallywall.core.tile.Tile;

/** A player whose every choice is told with its reasons; it chooses as it does without. */
public final class ExplainedPlayer extends ForwardingPlayer implements SeesOpenTable {
  private final Listener listener;
  private final Explainer explainer = new Explainer();

  /** Hears the choices. */
  @FunctionalInterface
  public interface Listener {
    /**
     * A choice was made.
     *
     * @param view what the player knows, before anything moves
     * @param move what it chose
     * @param reasons why
     */
    void chose(SeatView view, Move move, List<Reason> reasons);
  }

  /**
   * A player that is listened to.
   *
   * @param player who chooses
   * @param listener hears its choices
   */
  public ExplainedPlayer(Player player, Listener listener) {
    super(player);
    this.listener = listener;
  }

  /** Hands the table on, where the player is one that sees it. */
  @Override
  public void sitAt(OpenTable table) {
    show(table);
  }

  private void tell(SeatView view, Move move) {
    if (!canBeMade(view, move)) {
      return;
    }
    listener.chose(view, move, explainer.reasons(view, move, behind()));
  }

  /**
   * Whether the tiles for a move are there; a move that is not legal is told by the game itself.
   */
  private static boolean canBeMade(SeatView view, Move move) {
    if (move instanceof Move.Discard discard) {
      return discard.tile() >= 0 && discard.tile() < Tile.KINDS && view.held(discard.tile()) > 0;
    } else if (move instanceof Move.Claim claim) {
      return LegalMoves.mayExpose(view, view.offered(), claim.size(), claim.jokers())
          || view.offered() == Tile.JOKER;
    } else if (move instanceof Move.Pass pass) {
      return pass.own().stream()
          .allMatch(
              kind ->
                  kind >= 0
                      && kind < Tile.KINDS
                      && pass.own().stream().filter(kind::equals).count() <= view.held(kind));
    }
    return true;
  }

  @Override
  public boolean declares(SeatView view, RandomStream random) {
    boolean declares = super.declares(view, random);
    if (declares) {
      tell(view, new Move.Mahjong());
    }
    return declares;
  }

  @Override
  public PassChoice pass(SeatView view, PassStep step, RandomStream random) {
    PassChoice choice = super.pass(view, step, random);
    if (choice != null) {
      tell(view, Move.of(choice));
    }
    return choice;
  }

  @Override
  public boolean stops(SeatView view, RandomStream random) {
    boolean stops = super.stops(view, random);
    tell(view, new Move.Stop(stops));
    return stops;
  }

  @Override
  public int courtesyNumber(SeatView view, RandomStream random) {
    int number = super.courtesyNumber(view, random);
    tell(view, new Move.Courtesy(number));
    return number;
  }

  @Override
  public int[] courtesyTiles(SeatView view, int number, RandomStream random) {
    int[] tiles = super.courtesyTiles(view, number, random);
    if (tiles != null) {
      tell(view, Move.give(tiles));
    }
    return tiles;
  }

  @Override
  public ClaimChoice claim(SeatView view, RandomStream random) {
    ClaimChoice choice = super.claim(view, random);
    if (choice != null) {
      tell(view, Move.of(choice));
    }
    return choice;
  }

  @Override
  public TurnChoice turn(SeatView view, RandomStream random) {
    TurnChoice choice = super.turn(view, random);
    boolean illegal =
        choice == null
            || (choice instanceof TurnChoice.Exchange exchange
                && !LegalMoves.mayExchange(view, exchange.owner(), exchange.exposure()));
    if (!illegal) {
      tell(view, Move.of(view, choice));
    }
    return choice;
  }
}
