package org.tallywall.core.sheet;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.core.play.ClaimChoice;
import org.tallywall.core.play.IllegalMoveException;
import org.tallywall.core.play.LegalMoves;
import org.tallywall.core.play.PassChoice;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.TurnChoice;
import org.tallywall.core.random.Purpose;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.random.StreamKey;
import org.tallywall.core.tile.Tile;

/**
 * Puts the question of a sheet to a player. In a turn, and after a claim that is taken as granted,
 * it asks on until the player has thrown a tile or declared mahjong.
 */
public final class Asking {
  private final PositionSheet sheet;
  private final Player player;
  private final long seed;
  private final Listener listener;
  private final SheetView view;
  private final List<Move> moves = new ArrayList<>();

  private Asking(PositionSheet sheet, Player player, long seed, Listener listener) {
    this.sheet = sheet;
    this.player = player;
    this.seed = seed;
    this.listener = listener;
    this.view = sheet.view();
  }

  /** Hears each move before it changes what the seat sees. */
  @FunctionalInterface
  public interface Listener {
    /**
     * A move was chosen.
     *
     * @param view what the player knew when it chose
     * @param move what it chose
     */
    void chose(SheetView view, Move move);
  }

  /**
   * Asks a player.
   *
   * @param sheet the position
   * @param player who is asked
   * @param seed of the random numbers that come with the questions
   * @param listener hears each move
   * @return the player's answer, one move or several
   * @throws IllegalMoveException if the player answers with a move that is not legal
   */
  public static List<Move> put(PositionSheet sheet, Player player, long seed, Listener listener) {
    Asking asking = new Asking(sheet, player, seed, listener);
    asking.ask();
    return List.copyOf(asking.moves);
  }

  private void ask() {
    Moment moment = sheet.moment();
    if (moment instanceof Moment.Pass pass) {
      PassChoice choice = answer(player.pass(view, pass.step(), random()));
      int blind = choice.blind();
      require(
          blind >= 0
              && blind <= LegalMoves.blindMost(view.table().rules(), pass.step())
              && blind + choice.own().length == 3
              && passable(choice.own()),
          "a pass");
      chose(Move.of(choice));
    } else if (moment instanceof Moment.Stop) {
      chose(new Move.Stop(player.stops(view, random())));
    } else if (moment instanceof Moment.CourtesyAsk) {
      int number = player.courtesyNumber(view, random());
      require(number >= 0 && number <= 3, "an offer across");
      chose(new Move.Courtesy(number));
    } else if (moment instanceof Moment.CourtesyGive give) {
      int[] tiles = answer(player.courtesyTiles(view, give.number(), random()));
      require(tiles.length == give.number() && passable(tiles), "tiles given across");
      chose(Move.give(tiles));
    } else if (moment instanceof Moment.Offer) {
      offer();
    } else {
      turn();
    }
  }

  private boolean passable(int[] kinds) {
    int[] count = new int[Tile.KINDS];
    for (int kind : kinds) {
      if (!LegalMoves.passable(view, kind) || ++count[kind] > view.held(kind)) {
        return false;
      }
    }
    return true;
  }

  private void offer() {
    if (!view.complete() && LegalMoves.exposures(view).isEmpty()) {
      chose(new Move.Nothing());
      return;
    }
    ClaimChoice choice = answer(player.claim(view, random()));
    if (choice instanceof ClaimChoice.Mahjong) {
      require(view.complete(), "mahjong");
    } else if (choice instanceof ClaimChoice.Expose laid) {
      require(LegalMoves.mayExpose(view, kind(laid), laid.size(), laid.jokers()), "a claim");
    }
    chose(Move.of(choice));
    if (choice instanceof ClaimChoice.Expose laid) {
      view.claim(kind(laid), laid.size(), laid.jokers());
      turn();
    }
  }

  private int kind(ClaimChoice.Expose laid) {
    return laid.kind() == ClaimChoice.Expose.AS_OFFERED ? view.offered() : laid.kind();
  }

  private void turn() {
    TurnChoice choice;
    do {
      choice = answer(player.turn(view, random()));
      if (choice instanceof TurnChoice.Discard discard) {
        require(discard.tile() >= 0 && view.held(discard.tile()) > 0, "a discard");
      } else if (choice instanceof TurnChoice.Mahjong) {
        require(view.complete(), "mahjong");
      } else if (choice instanceof TurnChoice.Exchange exchange) {
        require(LegalMoves.mayExchange(view, exchange.owner(), exchange.exposure()), "an exchange");
      }
      chose(Move.of(view, choice));
      if (choice instanceof TurnChoice.Exchange exchange) {
        view.exchange(exchange.owner(), exchange.exposure());
      }
    } while (choice instanceof TurnChoice.Exchange);
  }

  private void chose(Move move) {
    moves.add(move);
    listener.chose(view, move);
  }

  private <T> T answer(T given) {
    if (given == null) {
      throw new IllegalMoveException(sheet.seat(), "no answer");
    }
    return given;
  }

  private void require(boolean legal, String what) {
    if (!legal) {
      throw new IllegalMoveException(sheet.seat(), what + " that is not legal");
    }
  }

  /** Numbers for the next question, of its own. */
  private RandomStream random() {
    return new RandomStream(
        new StreamKey(seed, 0, Purpose.DECISION, sheet.seat(), 0, moves.size()));
  }
}
