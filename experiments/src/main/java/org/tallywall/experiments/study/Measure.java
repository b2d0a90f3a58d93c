package org.tallywall.experiments.study;

import java.util.Arrays;
import java.util.List;

/** What a study can ask about. */
public enum Measure {
  /** Points a game. */
  POINTS("points"),
  /** Share of games won. */
  WIN_RATE("win-rate"),
  /** Share of games in which the winning tile was thrown. */
  THREW_THE_WINNING_TILE("threw-the-winning-tile"),
  /** Share of games that nobody won. */
  WALL_GAMES("wall-games"),
  /** Share of games won on the own draw. */
  WON_ON_OWN_DRAW("won-on-own-draw"),
  /** Share of games won on a discard. */
  WON_ON_DISCARD("won-on-discard"),
  /** Share of games in which one away was reached. */
  ONE_AWAY_REACHED("one-away-reached");

  private final String text;

  Measure(String text) {
    this.text = text;
  }

  /**
   * The name in studies.
   *
   * @return as in {@code win-rate}
   */
  public String text() {
    return text;
  }

  /**
   * All names.
   *
   * @return in the order of the constants
   */
  public static List<String> names() {
    return Arrays.stream(values()).map(Measure::text).toList();
  }
}
