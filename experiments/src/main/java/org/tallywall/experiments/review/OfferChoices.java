package org.tallywall.experiments.review;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.core.play.ClaimChoice;
import org.tallywall.core.play.LegalMoves;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.sheet.Move;

/**
 * What a sound person might answer to a discard: nothing, mahjong, and exposures of each size that
 * is allowed, those with fewer jokers first. What is thrown after a claim is left to the player.
 */
final class OfferChoices {
  private static final int SIZES = 7;

  private OfferChoices() {}

  static List<List<Move>> list(SeatView view) {
    List<List<Move>> all = new ArrayList<>();
    all.add(List.of(new Move.Nothing()));
    if (view.complete()) {
      all.add(List.of(new Move.Mahjong()));
    }
    for (int jokers = 0; jokers < SIZES; jokers++) {
      for (ClaimChoice choice : LegalMoves.exposures(view)) {
        if (choice instanceof ClaimChoice.Expose laid && laid.jokers() == jokers) {
          all.add(List.of(Move.of(choice)));
        }
      }
    }
    return all;
  }
}
