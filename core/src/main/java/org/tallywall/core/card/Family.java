package org.tallywall.core.card;

import java.util.List;

/**
 * A section of the card.
 *
 * @param name what it is called
 * @param lines its lines in the order printed
 */
public record Family(String name, List<Line> lines) {
  /**
   * A section.
   *
   * @param name what it is called
   * @param lines its lines
   */
  public Family {
    lines = List.copyOf(lines);
  }
}
