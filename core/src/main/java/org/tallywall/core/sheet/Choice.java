package org.tallywall.core.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

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

  /**
   * The moves of a choice that leaves nothing open.
   *
   * @return the moves in their order; empty where more than one answer can be meant, as in {@code
   *     discard *}
   */
  public Optional<List<Move>> moves() {
    List<Move> only = new ArrayList<>();
    for (MovePattern move : moves) {
      if (move.only() == null) {
        return Optional.empty();
      }
      only.add(move.only());
    }
    return Optional.of(List.copyOf(only));
  }

  @Override
  public String toString() {
    return text;
  }
}
