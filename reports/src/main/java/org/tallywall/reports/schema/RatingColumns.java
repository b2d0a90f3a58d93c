package org.tallywall.reports.schema;

import java.util.List;
import org.tallywall.reports.table.Column;

/** The columns of {@code ratings.csv}. */
public final class RatingColumns {
  /** The file's name without its ending. */
  public static final String FILE = "ratings";

  /** The column {@code arm}. */
  public static final Column ARM =
      Column.text("arm", "What the study calls the player, strongest first.")
          .headed("way of playing")
          .filled();

  /** The column {@code player}. */
  public static final Column PLAYER = Column.text("player", "The player and its settings.");

  /** The column {@code deals}. */
  public static final Column DEALS = Column.integer("deals", "deals", "Deals played.");

  /** The column {@code games}. */
  public static final Column GAMES = Column.integer("games", "games", "Games played, four a deal.");

  /** The column {@code wins}. */
  public static final Column WINS = Column.integer("wins", "games", "Games won.");

  /** The column {@code win-rate}. */
  public static final Column WIN_RATE =
      Column.rate("win-rate", "share of games", "Games won, against whoever sat there.")
          .headed("games won in 100");

  /** The column {@code points}. */
  public static final Column POINTS =
      Column.decimal("points", "points per game", "Points a game, against whoever sat there.")
          .headed("points per 100 games");

  /** The column {@code rating}. */
  public static final Column RATING =
      Column.decimalInterval(
              "rating",
              "natural logarithm",
              "Strength beside the average of the players that won, those left out that won in fewer than 20 of their deals and in less than a quarter of them; from who won each game (Plackett-Luce, first places only, the wall as a further contestant; highest likelihood with Firth's penalty, which comes to about half a win for each contestant in all); empty for a player that never won.")
          .headed("strength against the average")
          .within(-Limits.STRENGTH, Limits.STRENGTH);

  /** The column {@code rating-below}. */
  public static final Column RATING_BELOW =
      Column.decimal(
              "rating-below",
              "natural logarithm",
              "For a player that never won: a limit of its strength. One this strong would win as large a share of its games as the exact interval (Clopper-Pearson) of none of its deals allows at most; empty for all others.")
          .headed("strength below")
          .within(-Limits.STRENGTH, Limits.STRENGTH);

  /** The column {@code times-average}. */
  public static final Column TIMES_AVERAGE =
      Column.decimal(
              "times-average", "times", "How often it wins for one win of a player of strength 0.")
          .headed("wins for one win of an average player")
          .within(0, Limits.BEYOND);

  /** The column {@code rating-method}. */
  public static final Column RATING_METHOD =
      Column.text("rating-method", "How the interval or the limit was computed.");

  private RatingColumns() {}

  /**
   * All columns of the file.
   *
   * @return from left to right
   */
  public static List<Column> all() {
    return List.of(
        ARM,
        PLAYER,
        DEALS,
        GAMES,
        WINS,
        WIN_RATE,
        POINTS,
        RATING,
        RATING_BELOW,
        TIMES_AVERAGE,
        RATING_METHOD);
  }
}
