package org.tallywall.strategies.hand;

/**
 * What a {@link RackJudge} goes by.
 *
 * @param targets number of lines that are kept in view, 1 to 4
 * @param valueWeight how much the value of a line counts beside its chance: 0 not at all, 1 in full
 * @param horizon which share of the wall a game is expected to last, 0 to 1
 * @param thrown how many tiles of the others come to a draw of one's own and can be had, 0 to 3
 * @param haste which share of the chance is left for each tile that lacks, since somebody else may
 *     be first, 0 to 1
 */
public record JudgeSettings(
    int targets, double valueWeight, double horizon, double thrown, double haste) {
  private static final double USUAL_VALUE = 25;

  /**
   * What a line's value counts.
   *
   * @param value points of the line
   * @return 1 for a line of 25 points
   */
  double weigh(int value) {
    return 1 + valueWeight * (value / USUAL_VALUE - 1);
  }
}
