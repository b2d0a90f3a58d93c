package org.tallywall.experiments.design.branch;

import java.util.Arrays;
import java.util.List;

/** What a position is sorted by where a study branches. */
public enum Feature {
  /** Most exposures on one rack of the others. */
  EXPOSURES("exposures-on-one-rack", 0, 4),
  /** Tiles away of the own rack. */
  AWAY("away", 0, 14),
  /** Tiles left in the wall; each number stands for itself and those below, down to the next. */
  WALL("wall", 0, 99);

  private final String text;
  private final int least;
  private final int most;

  Feature(String text, int least, int most) {
    this.text = text;
    this.least = least;
    this.most = most;
  }

  /**
   * The name in studies.
   *
   * @return as in {@code away}
   */
  public String text() {
    return text;
  }

  /**
   * The smallest value.
   *
   * @return 0
   */
  public int least() {
    return least;
  }

  /**
   * The largest value.
   *
   * @return at most 99
   */
  public int most() {
    return most;
  }

  /**
   * All names.
   *
   * @return in the order of the constants
   */
  public static List<String> names() {
    return Arrays.stream(values()).map(Feature::text).toList();
  }
}
