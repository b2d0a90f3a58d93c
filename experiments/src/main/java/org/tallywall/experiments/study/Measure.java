package org.tallywall.experiments.study;

import java.util.Arrays;
import java.util.List;

/** What a study can ask about. */
public enum Measure {
  /** Points a game. */
  POINTS("points", "points a game"),
  /** Share of games won. */
  WIN_RATE("win-rate", "games won"),
  /** Share of games in which the winning tile was thrown. */
  THREW_THE_WINNING_TILE("threw-the-winning-tile", "threw the winning tile"),
  /** Share of games that nobody won. */
  WALL_GAMES("wall-games", "wall games"),
  /** Share of games won on the own draw. */
  WON_ON_OWN_DRAW("won-on-own-draw", "self-picked"),
  /** Share of games won on a discard. */
  WON_ON_DISCARD("won-on-discard", "won on a discard"),
  /** Share of games in which one away was reached. */
  ONE_AWAY_REACHED("one-away-reached", "one away reached"),
  /** Share of games that somebody else won on another's tile or draw, so that it only paid. */
  ONLY_PAID("only-paid", "just paid"),
  /** Share of games won after redeeming a joker. */
  WON_AFTER_REDEEMING("won-after-redeeming", "won after redeeming a joker"),
  /** Share of games won with a hand that was paid as jokerless. */
  WON_JOKERLESS("won-jokerless", "won jokerless"),
  /** Exposures made a game. */
  EXPOSURES("exposures", "exposures a game"),
  /** Jokers redeemed a game. */
  EXCHANGES("exchanges", "jokers redeemed a game");

  private final String text;
  private final String words;

  Measure(String text, String words) {
    this.text = text;
    this.words = words;
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
   * The name for readers.
   *
   * @return as in "games won"
   */
  public String words() {
    return words;
  }

  /**
   * Whether each game counts for one or nothing.
   *
   * @return false for points and for things that can happen several times a game
   */
  public boolean isRate() {
    return this != POINTS && this != EXPOSURES && this != EXCHANGES;
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
