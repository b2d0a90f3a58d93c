package org.tallywall.experiments.story;

import org.tallywall.core.card.Card;
import org.tallywall.core.card.Line;

/** What the lines of a card are called in front of readers; their tiles are not told. */
public final class LineNames {
  private LineNames() {}

  /**
   * The name of a line.
   *
   * @param line the line
   * @return its family, its id and its nickname, as in {@code Ladders L6 “the staircase”}
   */
  public static String of(Line line) {
    String family = line.id().startsWith(line.family()) ? "" : line.family() + " ";
    String nickname = line.say().isEmpty() ? "" : " \u201c" + line.say() + "\u201d";
    return (family + line.id() + nickname).strip();
  }

  /**
   * The name of a line by its id.
   *
   * @param card the card
   * @param id the line's id
   * @return its name; the id itself where the card has no such line
   */
  public static String of(Card card, String id) {
    return card.line(id).map(LineNames::of).orElse(id);
  }
}
