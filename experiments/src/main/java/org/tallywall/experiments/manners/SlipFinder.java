package org.tallywall.experiments.manners;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.record.GameEvent;
import org.tallywall.core.record.GameRecord;
import org.tallywall.core.sheet.Move;
import org.tallywall.experiments.decisions.Decisions;

/** Finds the slips in a recorded game. */
public final class SlipFinder {
  private final PassRule passes = new PassRule();
  private final CallRule calls = new CallRule();
  private final DiscardRule discards = new DiscardRule();

  /** A finder. */
  public SlipFinder() {}

  /**
   * The slips of all four players.
   *
   * @param game the record of a game that was played by the rules from the wall of its seed
   * @param hands the card on which it was played
   * @return in the order in which they were made; none where the game would take another course, as
   *     when tiles passed on unseen were drawn by another luck
   */
  public Optional<List<FoundSlip>> find(GameRecord game, ConcreteHands hands) {
    List<FoundSlip> found = new ArrayList<>();
    boolean same =
        Decisions.visit(
            game,
            hands,
            0,
            (view, moment, move) -> {
              if (!(move instanceof Move.Claim) || succeeds(game, view)) {
                int events = (int) view.events();
                for (Slip slip : slips(view, move)) {
                  found.add(new FoundSlip(slip, events, view.seat(), move.text()));
                }
              }
            });
    return same ? Optional.of(found) : Optional.empty();
  }

  /** Of a call that lost to another, the record does not say what it would have laid open. */
  private static boolean succeeds(GameRecord game, SeatView view) {
    int at = (int) view.events();
    return at < game.events().size()
        && game.events().get(at) instanceof GameEvent.Claim claim
        && claim.seat() == view.seat();
  }

  /**
   * The slips of one decision.
   *
   * @param view what the player knew
   * @param move what it did; a call is one that succeeds
   * @return none for most
   */
  List<Slip> slips(SeatView view, Move move) {
    if (move instanceof Move.Pass pass) {
      return passes.of(view, pass);
    } else if (move instanceof Move.Claim claim) {
      return calls.of(view, claim);
    }
    return move instanceof Move.Discard discard ? discards.of(view, discard) : List.of();
  }
}
