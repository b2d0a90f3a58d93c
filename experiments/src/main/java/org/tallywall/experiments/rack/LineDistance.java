package org.tallywall.experiments.rack;

import java.util.Optional;
import org.tallywall.core.card.ConcreteHand;
import org.tallywall.core.card.Line;
import org.tallywall.strategies.reason.Missing;

/**
 * How far a rack is from one line of the card.
 *
 * @param line the line
 * @param nearest the distance and what goes with it; empty where the exposures rule the line out
 */
public record LineDistance(Line line, Optional<Nearest> nearest) {
  /**
   * The nearest way to make the line.
   *
   * @param away tiles to be got or replaced, 0 to 14
   * @param ways how many hands of the line are that near, 1 or more
   * @param example the first of them
   * @param missing the tiles that bring the rack closer to it
   */
  public record Nearest(int away, int ways, ConcreteHand example, Missing missing) {
    /**
     * How many tiles of the example are there already.
     *
     * @return 14 less the distance
     */
    public int held() {
      return 14 - away;
    }
  }
}
