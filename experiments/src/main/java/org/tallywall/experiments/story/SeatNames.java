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
}
