package org.tallywall.core.hand;

import org.tallywall.core.tile.Tile;

/**
 * What a rack lacks of one hand, kind by kind. It is filled anew by {@link HandMeter#lack}. Not
 * safe for use by several threads.
 */
public final class Lack {
  private final int[] kind = new int[Tile.NATURALS];
  private final int[] natural = new int[Tile.NATURALS];
  private final int[] open = new int[Tile.NATURALS];
  private int kinds;
  private int naturals;
  private int opens;

  /** Nothing lacking. */
  public Lack() {}

  void clear() {
    kinds = 0;
    naturals = 0;
    opens = 0;
  }

  void add(int lacking, boolean mustBeNatural) {
    if (kinds == 0 || kind[kinds - 1] != lacking) {
      kind[kinds] = lacking;
      natural[kinds] = 0;
      open[kinds++] = 0;
    }
    if (mustBeNatural) {
      natural[kinds - 1]++;
      naturals++;
    } else {
      open[kinds - 1]++;
      opens++;
    }
  }

  void addOver(int over) {
    opens += over;
  }

  /**
   * How many kinds are lacking.
   *
   * @return 0 or more
   */
  public int kinds() {
    return kinds;
  }

  /**
   * One of the kinds.
   *
   * @param at from 0
   * @return a natural kind; kinds do not repeat
   */
  public int kind(int at) {
    return kind[at];
  }

  /**
   * How many of a kind must be natural, since they are singles or pairs.
   *
   * @param at from 0
   * @return 0 or more
   */
  public int natural(int at) {
    return natural[at];
  }

  /**
   * How many of a kind a joker may stand for.
   *
   * @param at from 0
   * @return 0 or more
   */
  public int open(int at) {
    return open[at];
  }

  /**
   * How many tiles must be natural in all.
   *
   * @return 0 or more
   */
  public int naturals() {
    return naturals;
  }

  /**
   * For how many tiles a joker may stand in all, those among them for which no natural is left.
   *
   * @return 0 or more; jokers held are not taken off
   */
  public int opens() {
    return opens;
  }
}
