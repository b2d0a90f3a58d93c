package org.tallywall.reports.schema;

import java.util.List;
import org.tallywall.reports.table.Column;

/** The columns that {@code hand-choice.csv} and {@code families.csv} have in common. */
public final class AimColumns {
  /** The column {@code aimed-after-deal}. */
  public static final Column AIMED_AFTER_DEAL =
      Column.integer("aimed-after-deal", "players", "Players that aimed at it after the deal.");

  /** The column {@code aimed-after-deal-share}. */
  public static final Column AIMED_AFTER_DEAL_SHARE =
      Column.rate(
              "aimed-after-deal-share",
              "share of players",
              "Share of all players that aimed at it after the deal.")
          .headed("aimed at after the deal")
          .shownTo(1);

  /** The column {@code aimed-after-passes}. */
  public static final Column AIMED_AFTER_PASSES =
      Column.integer("aimed-after-passes", "players", "Players that aimed at it after the passes.");

  /** The column {@code aimed-share}. */
  public static final Column AIMED_SHARE =
      Column.rateInterval(
              "aimed-share",
              "share of players",
              "Share of all players that aimed at it after the passes.")
          .headed("aimed at after the passes");

  /** The column {@code aimed-share-method}. */
  public static final Column AIMED_SHARE_METHOD =
      Column.text("aimed-share-method", "How the interval of that share was computed.");

  /** The column {@code aimed-at-end}. */
  public static final Column AIMED_AT_END =
      Column.integer("aimed-at-end", "players", "Players that aimed at it when the game ended.");

  /** The column {@code wins}. */
  public static final Column WINS =
      Column.integer("wins", "games", "Games won with it, whatever was aimed at before.")
          .headed("games won");

  /** The column {@code share-of-wins}. */
  public static final Column SHARE_OF_WINS =
      Column.rateInterval(
              "share-of-wins",
              "share of games won",
              "Its share of all games won; with an interval where one game is played per deal.")
          .headed("share of all wins");

  /** The column {@code share-of-wins-method}. */
  public static final Column SHARE_OF_WINS_METHOD =
      Column.text("share-of-wins-method", "How the interval of that share was computed.");

  /** The column {@code aimed-and-won-with-it}. */
  public static final Column AIMED_AND_WON_WITH_IT =
      Column.integer(
          "aimed-and-won-with-it",
          "players",
          "Players that aimed at it after the passes and won with it.");

  /** The column {@code win-rate-with-it}. */
  public static final Column WIN_RATE_WITH_IT =
      Column.rateInterval(
              "win-rate-with-it",
              "share of players",
              "Of the players aiming at it after the passes, the share that won with it.")
          .headed("won with it, of 100 aiming at it");

  /** The column {@code win-rate-with-it-method}. */
  public static final Column WIN_RATE_WITH_IT_METHOD =
      Column.text("win-rate-with-it-method", "How the interval of that share was computed.");

  /** The column {@code win-rate-when-aimed}. */
  public static final Column WIN_RATE_WHEN_AIMED =
      Column.rateInterval(
              "win-rate-when-aimed",
              "share of players",
              "Of the players aiming at it after the passes, the share that won with any line.")
          .headed("won with any line, of 100 aiming at it");

  /** The column {@code win-rate-method}. */
  public static final Column WIN_RATE_METHOD =
      Column.text("win-rate-method", "How the interval of that share was computed.");

  /** The column {@code switched-to}. */
  public static final Column SWITCHED_TO =
      Column.integer("switched-to", "times", "Times that a player switched to it in play.")
          .headed("times switched to");

  /** The column {@code switched-from}. */
  public static final Column SWITCHED_FROM =
      Column.integer("switched-from", "times", "Times that a player gave it up in play.")
          .headed("times given up");

  /** The column {@code wall-at-win}. */
  public static final Column WALL_AT_WIN =
      Column.decimal("wall-at-win", "tiles", "Mean number of tiles left in the wall at the win.")
          .headed("tiles left at the win")
          .within(0, Limits.TILES);

  /** The column {@code jokers-at-win}. */
  public static final Column JOKERS_AT_WIN =
      Column.decimal("jokers-at-win", "tiles", "Mean number of jokers in the winning hand.")
          .headed("jokers in the winning hand")
          .within(0, Limits.TILES);

  /** The column {@code exposures-at-win}. */
  public static final Column EXPOSURES_AT_WIN =
      Column.decimal("exposures-at-win", "exposures", "Mean number of the winner's exposures.")
          .headed("winner's exposures")
          .within(0, Limits.TILES);

  /** The column {@code points-when-won}. */
  public static final Column POINTS_WHEN_WON =
      Column.decimal("points-when-won", "points per game", "What the winner received, on average.")
          .headed("points per win")
          .shownTo(0);

  private AimColumns() {}

  /**
   * These columns.
   *
   * @return from left to right
   */
  public static List<Column> all() {
    return List.of(
        AIMED_AFTER_DEAL,
        AIMED_AFTER_DEAL_SHARE,
        AIMED_AFTER_PASSES,
        AIMED_SHARE,
        AIMED_SHARE_METHOD,
        AIMED_AT_END,
        WINS,
        SHARE_OF_WINS,
        SHARE_OF_WINS_METHOD,
        AIMED_AND_WON_WITH_IT,
        WIN_RATE_WITH_IT,
        WIN_RATE_WITH_IT_METHOD,
        WIN_RATE_WHEN_AIMED,
        WIN_RATE_METHOD,
        SWITCHED_TO,
        SWITCHED_FROM,
        WALL_AT_WIN,
        JOKERS_AT_WIN,
        EXPOSURES_AT_WIN,
        POINTS_WHEN_WON);
  }
}
