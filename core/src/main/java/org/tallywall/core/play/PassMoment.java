package org.tallywall.core.play;

/**
 * A moment before play at which a game can be taken up (section 2): before one of the passes,
 * before everybody is asked whether to stop, or before tiles are offered across.
 */
public sealed interface PassMoment {
  /**
   * Everybody is about to choose tiles for a pass.
   *
   * @param step the pass
   */
  record Step(PassStep step) implements PassMoment {}

  /** The first round is over, and everybody is about to be asked whether to stop. */
  record Stop() implements PassMoment {}

  /** Everybody is about to say how many tiles to give across. */
  record CourtesyNumber() implements PassMoment {}

  /**
   * A seat and the one across have agreed on a number; the other two are still to be asked.
   *
   * @param seat the seat, 0 to 3
   * @param number how many tiles, 1 to 3
   */
  record CourtesyAgreed(int seat, int number) implements PassMoment {}
}
