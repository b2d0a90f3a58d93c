package org.tallywall.experiments.design.branch;

/** Which kind of decision a study branches at. */
public enum BranchMoment {
  /** A discard of one's own. */
  DISCARD("discard"),
  /** A discard of another player that may be claimed for an exposure, and does not win. */
  CLAIM("claim");

  private final String text;

  BranchMoment(String text) {
    this.text = text;
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
