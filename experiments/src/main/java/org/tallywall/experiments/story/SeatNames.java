package org.tallywall.experiments.story;

import java.util.List;
import org.tallywall.reports.words.SeatWords;

/**
 * What the four seats are called.
 *
 * @param names four names, East's first
 */
public record SeatNames(List<String> names) {
  /** The seats as seen from East. */
  public static final SeatNames FROM_EAST = new SeatNames(SeatWords.FROM_EAST);

  /** The seats as position sheets number them. */
  public static final SeatNames BY_NUMBER =
      new SeatNames(List.of("seat 0", "seat 1", "seat 2", "seat 3"));

  /**
   * Copies the names.
   *
   * @param names four names, East's first
   * @throws IllegalArgumentException if there are not four
   */
  public SeatNames {
    names = List.copyOf(names);
    if (names.size() != 4) {
      throw new IllegalArgumentException("four seats have four names, not " + names.size());
    }
  }

  /**
   * A seat's name.
   *
   * @param seat 0 to 3
   * @return its name
   */
  public String of(int seat) {
    return names.get(seat);
  }

  /**
   * Something of a seat's.
   *
   * @param seat 0 to 3
   * @param thing what it is, as in {@code discard}
   * @return as in "Ann's discard"; "the discard of the player right of East" where the seat has no
   *     name but its place
   */
  public String whose(int seat, String thing) {
    return isPlace(seat) ? "the " + thing + " of the player " + of(seat) : of(seat) + "'s " + thing;
  }

  /**
   * A seat as one speaks of somebody.
   *
   * @param seat 0 to 3
   * @return as in "to Ann"; "the player right of East" where the seat has no name but its place
   */
  public String player(int seat) {
    return isPlace(seat) ? "the player " + of(seat) : of(seat);
  }

  private boolean isPlace(int seat) {
    return seat > 0 && of(seat).equals(SeatWords.FROM_EAST.get(seat));
  }
}
