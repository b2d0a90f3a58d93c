package org.tallywall.core.sheet;

import java.util.List;

/** A choice that a sheet expects or rules out: one move, or several one after the other. */
public final class Choice {
  private final String text;
  private final List<MovePattern> moves;

  Choice(String text, List<MovePattern> moves) {
    this.text = text;
    this.moves = List.copyOf(moves);
  }

  /**
   * The choice as written.
   *
   * @return its words with single spaces
   */
  public String text() {
    return text;
  }

  /**
   * Whether a player's answer is this choice. It is compared as far as the choice is written.
   *
   * @param answer the moves of the answer in their order
   * @return true if it begins as the choice says
   */
  public boolean matches(List<Move> answer) {
    if (answer.size() < moves.size()) {
      return false;
    }
    for (int at = 0; at < moves.size(); at++) {
      if (!moves.get(at).matches(answer.get(at))) {
        return false;
      }
    }
    return true;
  }

  @Override
  public String toString() {
    return text;
  }
}
