package org.tallywall.core.play;

import java.util.Arrays;

/**
 * Which tile of the wall is drawn next: the next of all, as at the table; or, where games are
 * compared that are played on from guesses, the next of a row that each seat has for itself. With
 * rows of their own a claim that skips somebody's turn does not change what everybody draws from
 * then on. Since guessed tiles may lie in any order, a row is as good a wall as another.
 */
final class WallOrder {
  private boolean[] drawn = {};
  private final int[] next = new int[Seats.COUNT];
  private boolean rows;
  private int first;
  private int size;
  private int taken;

  /**
   * Begins anew.
   *
   * @param from how many tiles are gone
   * @param tiles how many tiles the wall had before the deal
   * @param ownRows whether each seat draws from a row of its own
   */
  void begin(int from, int tiles, boolean ownRows) {
    taken = from;
    first = from;
    size = tiles;
    rows = ownRows;
    if (rows) {
      if (drawn.length < tiles) {
        drawn = new boolean[tiles];
      }
      Arrays.fill(drawn, false);
      Arrays.setAll(next, seat -> from + seat);
    }
  }

  /**
   * How many tiles are gone.
   *
   * @return those dealt and drawn
   */
  int taken() {
    return taken;
  }

  /**
   * Draws a tile.
   *
   * @param seat who draws
   * @return its place in the wall
   */
  int draw(int seat) {
    int place = rows ? fromRow(seat) : taken;
    taken++;
    return place;
  }

  /** The next of the own row; where that is used up, the first that is left of all. */
  private int fromRow(int seat) {
    int place = next[seat];
    while (place < size && drawn[place]) {
      place += Seats.COUNT;
    }
    next[seat] = place;
    if (place >= size) {
      place = first;
      while (drawn[place]) {
        place++;
      }
    }
    drawn[place] = true;
    return place;
  }
}
