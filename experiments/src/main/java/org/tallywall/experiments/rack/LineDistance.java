package org.tallywall.experiments.rack;

import java.util.Optional;
import org.tallywall.core.card.ConcreteHand;
import org.tallywall.core.card.Line;
import org.tallywall.core.tile.Rack;

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
   * @param natural tiles that this hand still wants and that must be natural
   * @param open tiles that it still wants and that may be jokers; with {@code natural} they are
   *     {@code away} tiles
   */
  public record Nearest(int away, int ways, ConcreteHand example, Rack natural, Rack open) {
    /**
     * Copies the tiles.
     *
     * @param away tiles to be got
     * @param ways how many hands are that near
     * @param example the first of them
     * @param natural tiles wanted that must be natural
     * @param open tiles wanted that may be jokers
     */
    public Nearest {
      natural = natural.copy();
      open = open.copy();
    }

    /**
     * How many tiles of the example are there already.
     *
     * @return 14 less the distance
     */
    public int held() {
      return 14 - away;
    }

    /**
     * All that the example still wants.
     *
     * @return the natural and the open tiles together
     */
    public Rack wants() {
      Rack all = natural.copy();
      for (int kind : open.tiles()) {
        all.add(kind);
      }
      return all;
    }
  }
}
