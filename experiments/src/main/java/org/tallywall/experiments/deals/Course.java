package org.tallywall.experiments.deals;

/**
 * The course of a game: a number for all that happened up to each event, and the tiles then left in
 * the wall.
 *
 * @param prints one number an event
 * @param walls tiles left after each event
 */
public record Course(long[] prints, int[] walls) {
  /** No such event. */
  public static final int NONE = -1;

  /**
   * Where this game went another way than another one.
   *
   * @param other the other one
   * @return the first event that differs, or {@link #NONE}
   */
  public int parts(Course other) {
    int both = Math.min(prints.length, other.prints.length);
    for (int event = 0; event < both; event++) {
      if (prints[event] != other.prints[event]) {
        return event;
      }
    }
    return prints.length == other.prints.length ? NONE : both;
  }

  /**
   * Tiles left in the wall after an event, or at the end.
   *
   * @param event the event
   * @return 0 or more
   */
  public int wallAfter(int event) {
    return walls[Math.min(event, walls.length - 1)];
  }
}
