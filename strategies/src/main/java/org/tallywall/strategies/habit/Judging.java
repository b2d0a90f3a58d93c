package org.tallywall.strategies.habit;

import java.util.List;
import org.tallywall.core.play.PassStep;
import org.tallywall.core.play.SeatView;

/**
 * A player that can tell how it judges what it could do. It is asked only where somebody wants to
 * know, and what it answers changes nothing that it plays.
 */
public interface Judging {
  /** No line. */
  int NO_LINE = -1;

  /**
   * The hand that counts most for the player.
   *
   * @param view what the seat knows
   * @return the hand's place among all of the card, or -1 where there is none
   */
  int handInMind(SeatView view);

  /**
   * The best line in mind that loses something with a tile.
   *
   * @param view what the seat knows, with 14 tiles
   * @param tile a tile on the rack
   * @return the line's place on the card, or {@link #NO_LINE} where no hand in mind needs the tile
   */
  int lineThatNeeds(SeatView view, int tile);

  /**
   * What it could throw.
   *
   * @param view what the seat knows, with 14 tiles
   * @return every kind on the rack once, the one that it would throw by need and danger first
   */
  List<Weighed> discards(SeatView view);

  /**
   * How it could answer a discard that does not complete its hand.
   *
   * @param view what the seat knows
   * @return its answer first, then the rest, what is worth most first
   */
  List<Weighed> claims(SeatView view);

  /**
   * Which tiles it could pass.
   *
   * @param view what the seat knows
   * @param step the pass
   * @return some tiles one by one, those missed least first
   */
  List<Weighed> passes(SeatView view, PassStep step);
}
