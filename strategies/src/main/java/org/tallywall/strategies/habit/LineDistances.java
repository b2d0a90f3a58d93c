package org.tallywall.strategies.habit;

import java.util.Arrays;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.hand.HandMeter;
import org.tallywall.core.hand.Reach;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.tile.Rack;
import org.tallywall.strategies.hand.Obtainable;

/** How far a rack is from the nearest living hand of every line. */
final class LineDistances {
  private final HandMeter meter = new HandMeter();
  private final Obtainable obtainable = new Obtainable();
  private int[] away = new int[0];
  private int lines;

  /**
   * Measures a rack, of any number of tiles.
   *
   * @param view what the seat knows
   * @param rack the concealed tiles
   * @param possible the hands that the exposures leave
   */
  void measure(SeatView view, Rack rack, Reach possible) {
    lines = possible.hands().lines();
    away = away.length < lines ? new int[lines] : away;
    Arrays.fill(away, HandMeter.NONE);
    obtainable.count(view);
    meter.obtainable(obtainable.counts());
    meter.hold(rack);
    for (int at = 0; at < possible.size(); at++) {
      int line = possible.line(at);
      int here = meter.away(possible, at);
      if (here < away[line] && !meter.dead(possible, at)) {
        away[line] = here;
      }
    }
  }

  /**
   * How many lines the card has.
   *
   * @return 1 or more
   */
  int lines() {
    return lines;
  }

  /**
   * The distance of a line.
   *
   * @param line its place on the card
   * @return 0 to 14, or {@link HandMeter#NONE} where it is dead or ruled out
   */
  int away(int line) {
    return away[line];
  }

  /**
   * The distance of the nearest line.
   *
   * @return 0 to 14, or {@link HandMeter#NONE} where all are dead
   */
  int least() {
    int least = HandMeter.NONE;
    for (int line = 0; line < lines; line++) {
      least = Math.min(least, away[line]);
    }
    return least;
  }

  /**
   * The nearest line, the one preferred if it is among the nearest, else the first on the card.
   *
   * @param preferred a line, or -1 for none
   * @return its place on the card, or -1 where all are dead
   */
  int nearest(int preferred) {
    int least = least();
    if (preferred >= 0 && away[preferred] == least) {
      return preferred;
    }
    for (int line = 0; line < lines && least < HandMeter.NONE; line++) {
      if (away[line] == least) {
        return line;
      }
    }
    return -1;
  }

  /**
   * Of how many families a line is among the nearest.
   *
   * @param hands the card
   * @return 0 where all lines are dead
   */
  int nearestFamilies(ConcreteHands hands) {
    int least = least();
    int families = 0;
    String last = null;
    for (int line = 0; line < lines && least < HandMeter.NONE; line++) {
      String family = hands.line(line).family();
      if (away[line] == least && !family.equals(last)) {
        families++;
        last = family;
      }
    }
    return families;
  }

  /**
   * How many lines are not dead.
   *
   * @return 0 or more
   */
  int living() {
    int living = 0;
    for (int line = 0; line < lines; line++) {
      living += away[line] < HandMeter.NONE ? 1 : 0;
    }
    return living;
  }
}
