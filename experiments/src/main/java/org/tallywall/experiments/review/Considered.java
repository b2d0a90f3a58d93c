package org.tallywall.experiments.review;

import java.util.List;
import org.tallywall.core.sheet.Move;
import org.tallywall.experiments.ask.SceneAnswers;

/**
 * A choice that is looked at.
 *
 * @param moves its moves in their order, one at least; what comes after them is left to the player
 * @param namedBy who named it: kinds of players, {@link #YOU}, or {@link #SHEET}
 */
public record Considered(List<Move> moves, List<String> namedBy) {
  /** Named on the command line. */
  public static final String YOU = "you";

  /** Named by an {@code expect} or {@code never} line. */
  public static final String SHEET = "the sheet";

  /**
   * Copies the lists.
   *
   * @param moves its moves
   * @param namedBy who named it
   */
  public Considered {
    moves = List.copyOf(moves);
    namedBy = List.copyOf(namedBy);
  }

  /**
   * The choice in the words of a sheet.
   *
   * @return as in {@code exchange 8c seat 2 then discard E}
   */
  public String text() {
    return SceneAnswers.text(moves);
  }
}
