package org.tallywall.experiments.design.branch;

import org.tallywall.core.hand.RackMeter;
import org.tallywall.core.play.ClaimChoice;
import org.tallywall.core.play.LegalMoves;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.tile.Exposure;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;

/**
 * Finds the claim that helps a hand most: of all legal ones that which leaves it the fewest tiles
 * away, with as few jokers as can be. A claim that brings the hand no nearer is none, for a player
 * who knows the game would not think of it.
 */
final class NearestClaim {
  private final RackMeter now = new RackMeter();
  private final RackMeter after = new RackMeter();
  private final Rack rack = new Rack();

  /**
   * The claim.
   *
   * @param view what the seat knows, a tile being on offer
   * @return a legal claim for an exposure, or nothing where none brings the hand nearer
   */
  ClaimChoice find(SeatView view) {
    ClaimChoice best = ClaimChoice.nothing();
    int least = -1;
    int fewest = 0;
    for (ClaimChoice choice : LegalMoves.exposures(view)) {
      ClaimChoice.Expose claim = (ClaimChoice.Expose) choice;
      if (least < 0) {
        least = away(view);
      }
      int then = awayAfter(view, claim);
      boolean sooner = then < least;
      boolean cheaper = best != ClaimChoice.nothing() && then == least && claim.jokers() < fewest;
      if (sooner || cheaper) {
        best = choice;
        least = then;
        fewest = claim.jokers();
      }
    }
    return best;
  }

  private int away(SeatView view) {
    view.copyRack(rack);
    now.hold(rack, view.reach(view.seat()));
    return now.least();
  }

  private int awayAfter(SeatView view, ClaimChoice.Expose claim) {
    boolean joker = view.offered() == Tile.JOKER;
    int kind = joker ? claim.kind() : view.offered();
    view.copyRack(rack);
    rack.remove(kind, claim.size() - 1 - claim.jokers());
    rack.remove(Tile.JOKER, claim.jokers());
    int jokers = claim.jokers() + (joker ? 1 : 0);
    after.hold(rack, view.reachWith(Exposure.of(kind, claim.size(), jokers)));
    return after.least();
  }
}
