package org.tallywall.core.play;

import java.util.List;

/**
 * How a game ended.
 *
 * @param how mahjong, wall game or void
 * @param win the win, or null where nobody won
 * @param points what each seat gains or loses
 * @param wall tiles left in the wall
 */
public record Outcome(How how, Win win, List<Integer> points, int wall) {
  /** The ways in which a game ends. */
  public enum How {
    /** Somebody won. */
    MAHJONG("mahjong"),
    /** The wall ran out. */
    WALL_GAME("wall-game"),
    /** Three hands were dead. */
    VOID("void");

    private final String text;

    How(String text) {
      this.text = text;
    }

    /**
     * The word in records.
     *
     * @return as in wall-game
     */
    public String text() {
      return text;
    }
  }

  /**
   * A win.
   *
   * @param seat who won
   * @param by how the hand was completed
   * @param from who threw the winning tile, or -1
   * @param line the line's place on the card
   * @param hand index of the concrete hand among all of the card
   * @param jokers jokers among the 14 tiles
   * @param jokerless whether the hand was paid as jokerless
   */
  public record Win(
      int seat, WinBy by, int from, int line, int hand, int jokers, boolean jokerless) {}

  /**
   * An end.
   *
   * @param how mahjong, wall game or void
   * @param win the win, or null
   * @param points what each seat gains or loses
   * @param wall tiles left in the wall
   */
  public Outcome {
    points = List.copyOf(points);
  }
}
