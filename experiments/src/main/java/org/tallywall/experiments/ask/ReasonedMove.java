package org.tallywall.experiments.ask;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.tallywall.core.play.Player;
import org.tallywall.core.sheet.Asking;
import org.tallywall.core.sheet.Move;
import org.tallywall.core.sheet.PositionSheet;
import org.tallywall.strategies.reason.Explainer;
import org.tallywall.strategies.reason.Reason;

/**
 * A move of an answer and why it was made.
 *
 * @param move the move
 * @param reasons why, what it heads for first
 */
public record ReasonedMove(Move move, List<Reason> reasons) {
  /**
   * Copies the reasons.
   *
   * @param move the move
   * @param reasons why
   */
  public ReasonedMove {
    reasons = List.copyOf(reasons);
  }

  /**
   * Asks a player once and lets it give its reasons.
   *
   * @param sheet the position
   * @param player who is asked, and gives its reasons
   * @param watched puts somebody in front of it who watches it being asked
   * @param seed of the random numbers
   * @return the moves of its answer
   */
  public static List<ReasonedMove> of(
      PositionSheet sheet, Player player, UnaryOperator<Player> watched, long seed) {
    List<ReasonedMove> moves = new ArrayList<>();
    Explainer explainer = new Explainer();
    Asking.put(
        sheet,
        watched.apply(player),
        seed,
        (view, move) -> moves.add(new ReasonedMove(move, explainer.reasons(view, move, player))));
    return moves;
  }
}
