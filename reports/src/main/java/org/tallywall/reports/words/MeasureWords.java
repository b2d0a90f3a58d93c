package org.tallywall.reports.words;

import java.util.Arrays;
import java.util.Optional;

/**
 * How a measure is spoken of. All are counted in 100 games, because a difference of a few games in
 * 100 is what a table can feel.
 */
public enum MeasureWords {
  /** Points. */
  POINTS("points", "points", "scored", "scoring", "points per 100 games", "per 100 games"),
  /** Games won. */
  WIN_RATE("win-rate", "games won", "won", "winning", "games in 100", "in 100"),
  /** Games in which it threw the winning tile. */
  THREW_THE_WINNING_TILE(
      "threw-the-winning-tile",
      "threw the winning tile",
      "threw the winning tile in",
      "throwing the winning tile in",
      "games in 100",
      "in 100 games"),
  /** Wall games. */
  WALL_GAMES(
      "wall-games",
      "wall games",
      "saw the wall run out in",
      "seeing the wall run out in",
      "games in 100",
      "in 100 games"),
  /** Games won on a tile of its own draw. */
  WON_ON_OWN_DRAW(
      "won-on-own-draw",
      "self-picked",
      "self-picked",
      "self-picking",
      "games in 100",
      "in 100 games"),
  /** Games won on a discard. */
  WON_ON_DISCARD(
      "won-on-discard",
      "won on a discard",
      "won on a discard in",
      "winning on a discard in",
      "games in 100",
      "in 100 games"),
  /** Games that another player won, and it just paid. */
  ONLY_PAID(
      "only-paid", "just paid", "just paid in", "just paying in", "games in 100", "in 100 games"),
  /** Games won after redeeming a joker. */
  WON_AFTER_REDEEMING(
      "won-after-redeeming",
      "won after redeeming a joker",
      "won after redeeming a joker in",
      "winning after redeeming a joker in",
      "games in 100",
      "in 100 games"),
  /** Games won with a hand that was paid as jokerless. */
  WON_JOKERLESS(
      "won-jokerless",
      "won a hand paid as jokerless",
      "won a hand paid as jokerless in",
      "winning a hand paid as jokerless in",
      "games in 100",
      "in 100 games"),
  /** Exposures made. */
  EXPOSURES("exposures", "exposures", "made", "making", "exposures per 100 games", "per 100 games"),
  /** Jokers redeemed. */
  EXCHANGES(
      "exchanges",
      "jokers redeemed",
      "redeemed",
      "redeeming",
      "jokers per 100 games",
      "per 100 games"),
  /** Games in which it came to one away. */
  ONE_AWAY_REACHED(
      "one-away-reached",
      "got to one away",
      "got to one away in",
      "getting to one away in",
      "games in 100",
      "in 100 games");

  private final String id;
  private final String heading;
  private final String past;
  private final String gerund;
  private final String unit;
  private final String per;

  MeasureWords(String id, String heading, String past, String gerund, String unit, String per) {
    this.id = id;
    this.heading = heading;
    this.past = past;
    this.gerund = gerund;
    this.unit = unit;
    this.per = per;
  }

  /**
   * The words for a measure as files name it, if it is one of these.
   *
   * @param id the name in files
   * @return what there is, if there is any
   */
  public static Optional<MeasureWords> of(String id) {
    return Arrays.stream(values()).filter(words -> words.id.equals(id)).findFirst();
  }

  /**
   * A heading for a measure, known or not.
   *
   * @param id the name in files
   * @return the words
   */
  public static String heading(String id) {
    return of(id).map(words -> words.heading + " " + words.per).orElse(id);
  }

  /**
   * What happened, before "about 1.2 more games in 100".
   *
   * @return the words
   */
  public String past() {
    return past;
  }

  /** The same after "anything from A". */
  String gerund() {
    return gerund;
  }

  /**
   * What is counted, and in how many games.
   *
   * @return the words
   */
  public String unit() {
    return unit;
  }

  /**
   * What is counted, without a number of games.
   *
   * @return such as "points"
   */
  public String noun() {
    return unit.substring(0, unit.indexOf(' '));
  }

  /**
   * What a comparison is about.
   *
   * @return words that follow "on"
   */
  public String matter() {
    String in = " in";
    return gerund.endsWith(in) ? gerund.substring(0, gerund.length() - in.length()) : heading;
  }

  /**
   * The name without a number of games.
   *
   * @return the words
   */
  public String heading() {
    return heading;
  }
}
