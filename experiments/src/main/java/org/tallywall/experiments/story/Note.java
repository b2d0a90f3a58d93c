package org.tallywall.experiments.story;

import java.util.List;
import org.tallywall.core.sheet.Move;
import org.tallywall.strategies.reason.Reason;

/**
 * A choice of a player with its reasons, to be told beside the course of a game.
 *
 * @param events how many events the game had had when it was made
 * @param seat who chose
 * @param move what was chosen
 * @param reasons why, what it heads for first
 */
public record Note(long events, int seat, Move move, List<Reason> reasons) {
  /**
   * Copies the reasons.
   *
   * @param events how many events the game had had
   * @param seat who chose
   * @param move what was chosen
   * @param reasons why
   */
  public Note {
    reasons = List.copyOf(reasons);
  }

  /**
   * Words to stand in front of the reasons.
   *
   * @return what was chosen, where no event tells it; else empty
   */
  public String choice() {
    return move instanceof Move.Nothing ? "lets it go" : "";
  }
}
