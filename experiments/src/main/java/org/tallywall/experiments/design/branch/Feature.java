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
  WALL("wall", 0, 99),
  /** Which pass, from the first right, 1, to the last right, 6. */
  PASS("pass", 1, 6),
  /** Kinds of which the own rack holds two tiles or more, jokers apart. */
  PAIRS("pairs", 0, 7),
  /** Jokers on the own rack. */
  JOKERS("jokers", 0, 8);

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
   * Whether positions at a kind of decision differ in it.
   *
   * @param moment the kind of decision
   * @return false where all have the same, or none
   */
  boolean isOf(BranchMoment moment) {
    return switch (this) {
      case EXPOSURES, WALL -> !moment.beforePlay();
      case PASS -> moment == BranchMoment.PASS;
      case AWAY, PAIRS, JOKERS -> true;
    };
  }

  /**
   * What positions at a kind of decision are sorted by.
   *
   * @param moment the kind of decision
   * @return the names, in the order of the constants
   */
  static List<String> names(BranchMoment moment) {
    return Arrays.stream(values())
        .filter(feature -> feature.isOf(moment))
        .map(Feature::text)
        .toList();
  }

  /**
   * The smallest value.
   *
   * @return 0 or 1
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
