package org.tallywall.experiments.review;

import org.tallywall.core.play.TableSetup;
import org.tallywall.core.rules.Settlement;

/** How much can be won or lost in one game on a card, by the rules of a table. */
final class MostPoints {
  private MostPoints() {}

  /**
   * The most by which two games can differ for one seat.
   *
   * @param setup the card and the rules
   * @return points, above 0
   */
  static int apart(TableSetup setup) {
    Settlement settlement = new Settlement(setup.rules());
    int unit = 1;
    for (int line = 0; line < setup.hands().lines(); line++) {
      unit = Math.max(unit, settlement.unit(setup.hands().line(line), 0));
      unit = Math.max(unit, settlement.unit(setup.hands().line(line), 1));
    }
    int most = Math.max(0, setup.rules().score().wallGame());
    int least = Math.min(0, setup.rules().score().wallGame());
    for (Settlement.Way way : Settlement.Way.values()) {
      int[] points = settlement.win(0, 1, way, unit, true);
      for (int seat = 0; seat < points.length; seat++) {
        most = Math.max(most, points[seat]);
        least = Math.min(least, points[seat]);
      }
    }
    return most - least;
  }
}
