package org.tallywall.experiments.reading;

import java.util.List;
import org.tallywall.core.play.SeatView;

/**
 * What the others may hold in one position, and what each kind on the rack would risk.
 *
 * @param view what the seat knows that looks
 * @param draws how many guesses were made
 * @param opponents the others in turn order
 * @param tiles the kinds on the rack in order
 */
public record Reading(
    SeatView view, Draws draws, List<OpponentReading> opponents, List<TileReading> tiles) {
  /**
   * Copies the lists.
   *
   * @param view what the seat knows
   * @param draws how many guesses were made
   * @param opponents the others
   * @param tiles the kinds on the rack
   */
  public Reading {
    opponents = List.copyOf(opponents);
    tiles = List.copyOf(tiles);
  }
}
