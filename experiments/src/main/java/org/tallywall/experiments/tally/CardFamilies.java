package org.tallywall.experiments.tally;

import java.util.List;
import org.tallywall.core.card.Family;
import org.tallywall.core.hand.ConcreteHands;

/** Which line of a card belongs to which family, by their places on the card. */
public final class CardFamilies {
  private final List<String> names;
  private final int[] familyOf;

  CardFamilies(ConcreteHands hands) {
    names =
        hands.card().families().stream()
            .filter(family -> !family.lines().isEmpty())
            .map(Family::name)
            .toList();
    familyOf = new int[hands.lines()];
    for (int line = 0; line < familyOf.length; line++) {
      familyOf[line] = names.indexOf(hands.line(line).family());
    }
  }

  /**
   * How many families have lines.
   *
   * @return 1 or more
   */
  public int count() {
    return names.size();
  }

  /**
   * A family's name.
   *
   * @param family its place
   * @return its name
   */
  public String name(int family) {
    return names.get(family);
  }

  /**
   * The family of a line.
   *
   * @param line the line's place on the card
   * @return the family's place
   */
  public int of(int line) {
    return familyOf[line];
  }
}
