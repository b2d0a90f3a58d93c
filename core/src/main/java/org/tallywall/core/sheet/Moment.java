package org.tallywall.core.sheet;

import org.tallywall.core.play.PassStep;
import org.tallywall.core.tile.Tile;

/** Which question a position puts. */
public sealed interface Moment {
  /**
   * The question in the words of a position sheet.
   *
   * @return as in {@code offer 5c from 1}
   */
  String text();

  /**
   * Which tiles to pass.
   *
   * @param step the pass
   */
  record Pass(PassStep step) implements Moment {
    @Override
    public String text() {
      return "pass " + step.text();
    }
  }

  /** Whether to stop the passes. */
  record Stop() implements Moment {
    @Override
    public String text() {
      return "stop";
    }
  }

  /** How many tiles to offer across. */
  record CourtesyAsk() implements Moment {
    @Override
    public String text() {
      return "courtesy ask";
    }
  }

  /**
   * Which tiles to give across.
   *
   * @param number how many, 1 to 3
   */
  record CourtesyGive(int number) implements Moment {
    @Override
    public String text() {
      return "courtesy give " + number;
    }
  }

  /**
   * What to do with 14 tiles.
   *
   * @param drawn the kind just drawn, or -1 where it is not known
   * @param claimed whether the turn began with a claim, and so without a draw
   */
  record Turn(int drawn, boolean claimed) implements Moment {
    /**
     * A turn that did not begin with a claim.
     *
     * @param drawn the kind just drawn, or -1 where it is not known
     */
    public Turn(int drawn) {
      this(drawn, false);
    }

    @Override
    public String text() {
      if (claimed) {
        return "turn claimed";
      }
      return drawn < 0 ? "turn" : "turn drew " + Tile.symbol(drawn);
    }
  }

  /**
   * What to do with a discard on offer.
   *
   * @param tile its kind
   * @param from who threw it
   */
  record Offer(int tile, int from) implements Moment {
    @Override
    public String text() {
      return "offer " + Tile.symbol(tile) + " from " + from;
    }
  }

  /**
   * Whether play has begun.
   *
   * @return false during the passes
   */
  default boolean inPlay() {
    return this instanceof Turn || this instanceof Offer;
  }
}
