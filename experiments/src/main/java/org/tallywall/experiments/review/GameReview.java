package org.tallywall.experiments.review;

import java.util.List;
import org.tallywall.experiments.decisions.Decision;

/**
 * One player's decisions of a game, gone through.
 *
 * @param seat whose decisions, 0 to 3
 * @param looked how many decisions were looked at
 * @param leftOut how many could not be: claims of which the record does not tell the size, and
 *     moments that cannot be played on from
 * @param closely those looked at closely, the one that costs most first
 * @param stopped whether somebody stopped it before its end
 */
public record GameReview(int seat, int looked, int leftOut, List<Close> closely, boolean stopped) {
  /**
   * Copies the list.
   *
   * @param seat whose decisions
   * @param looked how many were looked at
   * @param leftOut how many could not be
   * @param closely those looked at closely
   * @param stopped whether somebody stopped it
   */
  public GameReview {
    closely = List.copyOf(closely);
  }

  /**
   * A decision that was looked at closely.
   *
   * @param decision the decision
   * @param review what its choices are worth, in games of their own
   * @param made what came of the choice made in the game
   */
  public record Close(Decision decision, Review review, ChoiceResult made) {
    /**
     * Whether the choice made is clearly behind the best.
     *
     * @return false where they cannot be told apart
     */
    public boolean costs() {
      return made.verdict() == Verdict.BEHIND;
    }
  }
}
