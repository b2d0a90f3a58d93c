package org.tallywall.core.card;

import java.util.List;

/**
 * The tiles of a line as the card prints them.
 *
 * @param tiles one hand, or several alternatives, each as words separated by single spaces
 * @param slide how the digits move
 * @param where what the letters n, m and k may be
 * @param suits how the suit letters may be read
 */
public record Printed(List<String> tiles, Slide slide, Where where, SuitChoice suits) {
  /**
   * The tiles of a line.
   *
   * @param tiles one hand or several
   * @param slide how the digits move
   * @param where what the letters n, m and k may be
   * @param suits how the suit letters may be read
   */
  public Printed {
    tiles = List.copyOf(tiles);
  }
}
