package org.tallywall.experiments.deals;

/**
 * The course of a game: a number for all that happened up to each event, and the tiles then left in
 * the wall, and whether it was a discard.
 *
 * @param prints one number an event
 * @param walls tiles left after each event
 * @param discards whether each event was a discard
 */
public record Course(long[] prints, int[] walls, boolean[] discards) {
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
   * Whether both games were still one when a tile was about to be discarded, and a tile was
   * discarded in both, the same or not. What happened up to there, and so the step in which a
   * player chooses that tile, is common to both. Where one game goes on with a discard and the
   * other with something else, luck may have had a hand in which of the two comes to its discard at
   * all, so that does not count.
   *
   * @param other the other game
   * @param event an event of this one, from 0
   * @return true if both were one up to there
   */
  public boolean discardsAlike(Course other, int event) {
    int parting = parts(other);
    return parting == NONE
        || event < parting
        || (event == parting && discards[event] && other.discardsAt(event));
  }

  private boolean discardsAt(int event) {
    return event < discards.length && discards[event];
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
