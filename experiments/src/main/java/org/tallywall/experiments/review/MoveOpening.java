package org.tallywall.experiments.review;

import java.util.List;
import org.tallywall.core.play.ClaimChoice;
import org.tallywall.core.play.LegalMoves;
import org.tallywall.core.play.PassChoice;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.TurnChoice;
import org.tallywall.core.sheet.Moment;
import org.tallywall.core.sheet.Move;
import org.tallywall.core.tile.Exposure;
import org.tallywall.core.tile.Tile;
import org.tallywall.strategies.playout.FirstAnswer;
import org.tallywall.strategies.playout.Playout;

/** Has a player begin with the moves of a choice. */
final class MoveOpening implements Playout.Opening {
  private final SeatView view;
  private final Moment moment;
  private final List<Move> moves;

  MoveOpening(SeatView view, Moment moment, List<Move> moves) {
    this.view = view;
    this.moment = moment;
    this.moves = moves;
  }

  @Override
  public void set(FirstAnswer player) {
    for (int at = 0; at < moves.size(); at++) {
      set(player, moves.get(at), at);
    }
  }

  private void set(FirstAnswer player, Move move, int at) {
    if (move instanceof Move.Pass pass) {
      int[] own = pass.own().stream().mapToInt(kind -> kind).toArray();
      if (moment instanceof Moment.CourtesyGive) {
        player.courtesyTiles(own);
      } else {
        player.pass(new PassChoice(own, pass.blind()));
      }
    } else if (move instanceof Move.Stop stop) {
      player.stops(stop.yes());
    } else if (move instanceof Move.Courtesy courtesy) {
      player.courtesyNumber(courtesy.number());
    } else if (move instanceof Move.Nothing) {
      player.claim(ClaimChoice.nothing());
    } else if (move instanceof Move.Claim claim) {
      player.claim(claim(claim));
    } else if (move instanceof Move.Mahjong && at == 0 && moment instanceof Moment.Offer) {
      player.claim(ClaimChoice.mahjong());
    } else if (move instanceof Move.Mahjong) {
      player.turn(TurnChoice.mahjong());
    } else if (move instanceof Move.Discard discard) {
      player.turn(TurnChoice.discard(discard.tile()));
    } else if (move instanceof Move.Exchange exchange) {
      player.turn(TurnChoice.exchange(exchange.owner(), exposure(exchange, at)));
    }
  }

  /** Of a joker on offer, the first group that such a claim can be. */
  private ClaimChoice claim(Move.Claim claim) {
    if (view.offered() == Tile.JOKER) {
      for (ClaimChoice one : LegalMoves.exposures(view)) {
        if (one instanceof ClaimChoice.Expose laid
            && laid.size() == claim.size()
            && laid.jokers() == claim.jokers()) {
          return one;
        }
      }
    }
    return ClaimChoice.expose(claim.size(), claim.jokers());
  }

  /** Which exposure an exchange is with: the first that has a joker left by then. */
  private int exposure(Move.Exchange exchange, int at) {
    int before = 0;
    for (Move earlier : moves.subList(0, at)) {
      before += earlier.equals(exchange) ? 1 : 0;
    }
    List<Exposure> laid = view.exposures(exchange.owner());
    for (int index = 0; index < laid.size(); index++) {
      if (laid.get(index).kind() == exchange.tile()) {
        before -= laid.get(index).jokers();
        if (before < 0) {
          return index;
        }
      }
    }
    return laid.size();
  }
}
