package org.tallywall.experiments.run;

/**
 * The course of a game: a number for all that happened up to each event, and the tiles then left in
 * the wall.
 *
 * @param prints one number an event
 * @param walls tiles left after each event
 */
record Course(long[] prints, int[] walls) {
  /** No such event. */
  static final int NONE = -1;

  /** The first event at which this game went another way than the other one, or {@link #NONE}. */
  int parts(Course other) {
    int both = Math.min(prints.length, other.prints.length);
    for (int event = 0; event < both; event++) {
      if (prints[event] != other.prints[event]) {
        return event;
      }
    }
    return prints.length == other.prints.length ? NONE : both;
  }

  /** Tiles left in the wall after an event, or at the end. */
  int wallAfter(int event) {
    return walls[Math.min(event, walls.length - 1)];
  }
}
