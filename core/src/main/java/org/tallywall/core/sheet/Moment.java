package org.tallywall.core.sheet;

import org.tallywall.core.play.PassStep;

/** Which question a position puts. */
public sealed interface Moment {
  /**
   * Which tiles to pass.
   *
   * @param step the pass
   */
  record Pass(PassStep step) implements Moment {}

  /** Whether to stop the passes. */
  record Stop() implements Moment {}

  /** How many tiles to offer across. */
  record CourtesyAsk() implements Moment {}

  /**
   * Which tiles to give across.
   *
   * @param number how many, 1 to 3
   */
  record CourtesyGive(int number) implements Moment {}

  /**
   * What to do with 14 tiles.
   *
   * @param drawn the kind just drawn, or -1 where it is not known
   */
  record Turn(int drawn) implements Moment {}

  /**
   * What to do with a discard on offer.
   *
   * @param tile its kind
   * @param from who threw it
   */
  record Offer(int tile, int from) implements Moment {}

  /**
   * Whether play has begun.
   *
   * @return false during the passes
   */
  default boolean inPlay() {
    return this instanceof Turn || this instanceof Offer;
  }
}
