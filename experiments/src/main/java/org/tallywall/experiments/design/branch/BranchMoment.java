package org.tallywall.experiments.design.branch;

import java.util.Arrays;
import java.util.List;

/** Which kind of decision a study branches at. */
public enum BranchMoment {
  /** A discard of one's own. */
  DISCARD("discard"),
  /** A discard of another player that may be claimed for an exposure, and does not win. */
  CLAIM("claim"),
  /** Which tiles to pass in one of the six passes. */
  PASS("pass"),
  /** Whether to stop the passes after the first three. */
  STOP("stop");

  private final String text;

  BranchMoment(String text) {
    this.text = text;
  }

  /**
   * Whether it comes before the first discard, so that there are no exposures and the wall is full.
   *
   * @return true while tiles are passed
   */
  boolean beforePlay() {
    return this == PASS || this == STOP;
  }

  /**
   * All names.
   *
   * @return in the order of the constants
   */
  static List<String> names() {
    return Arrays.stream(values()).map(BranchMoment::text).toList();
  }

  /**
   * The name in studies.
   *
   * @return as in {@code discard}
   */
  public String text() {
    return text;
  }
}
