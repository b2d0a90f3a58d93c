package org.tallywall.core.play;

/** The six compulsory passes of the Charleston in their order (rule 2.1). */
public enum PassStep {
  /** First right. */
  RIGHT_1("right-1", 1),
  /** First across. */
  ACROSS_1("across-1", 2),
  /** First left; blind passing is allowed. */
  LEFT_1("left-1", 3),
  /** Second left. */
  LEFT_2("left-2", 3),
  /** Second across. */
  ACROSS_2("across-2", 2),
  /** Last right; blind passing is allowed. */
  RIGHT_2("right-2", 1);

  private final String text;
  private final int turns;

  PassStep(String text, int turns) {
    this.text = text;
    this.turns = turns;
  }

  /**
   * The name in records.
   *
   * @return as in right-1
   */
  public String text() {
    return text;
  }

  /**
   * The step's number, which stands in stream keys.
   *
   * @return 1 to 6
   */
  public int number() {
    return ordinal() + 1;
  }

  /**
   * The seat that receives.
   *
   * @param from the seat that passes
   * @return 0 to 3
   */
  public int to(int from) {
    return from + turns & 3;
  }

  /**
   * The seat that passes.
   *
   * @param to the seat that receives
   * @return 0 to 3
   */
  public int from(int to) {
    return to - turns & 3;
  }

  /**
   * Whether it is the last pass of its round, the usual place for blind passing (rule 2.3.1).
   *
   * @return true for first left and last right
   */
  public boolean endsRound() {
    return this == LEFT_1 || this == RIGHT_2;
  }
}
