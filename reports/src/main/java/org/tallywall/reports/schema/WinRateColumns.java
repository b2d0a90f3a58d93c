package org.tallywall.reports.schema;

import java.util.List;
import org.tallywall.reports.table.Column;

/** The columns of {@code win-rates.csv}. */
public final class WinRateColumns {
  /** The file's name without its ending. */
  public static final String FILE = "win-rates";

  /** The column {@code arm}. */
  public static final Column ARM =
      Column.text("arm", "The way of playing; \"table\" where one fixed table is played.")
          .headed("way of playing")
          .filled();

  /** The column {@code seat}. */
  public static final Column SEAT =
      Column.text("seat", "The seat, 0 is East and turns go to the right; \"all\" for all counted.")
          .filled();

  /** The column {@code player}. */
  public static final Column PLAYER =
      Column.text("player", "Who sits there; \"all\" where they differ.").filled();

  /** The column {@code deals}. */
  public static final Column DEALS = Column.integer("deals", "deals", "Deals played.");

  /** The column {@code games}. */
  public static final Column GAMES =
      Column.integer("games", "games", "Games of the seat: one a deal for each seat.");

  /** The column {@code wins}. */
  public static final Column WINS = Column.integer("wins", "games", "Games won.");

  /** The column {@code win-rate}. */
  public static final Column WIN_RATE =
      Column.rateInterval(
              "win-rate",
              "share of games",
              "Share of its games that the seat won. Where \"all\" are the four seats of one and the same game there is no interval here or at the points: together they win every game that anybody wins, and their points are 0.")
          .headed("games won in 100");

  /** The column {@code win-rate-method}. */
  public static final Column WIN_RATE_METHOD =
      Column.text("win-rate-method", "How the interval of the win rate was computed.");

  /** The column {@code points}. */
  public static final Column POINTS =
      Column.decimalInterval("points", "points per game", "Points gained or lost per game.")
          .headed("points per 100 games");

  /** The column {@code points-method}. */
  public static final Column POINTS_METHOD =
      Column.text("points-method", "How the interval of the points was computed.");

  /** The column {@code won-on-own-draw}. */
  public static final Column WON_ON_OWN_DRAW =
      Column.integer(
              "won-on-own-draw",
              "games",
              "Won on the tile drawn, by a joker exchange, or complete before play.")
          .headed("self-picked");

  /** The column {@code won-on-discard}. */
  public static final Column WON_ON_DISCARD =
      Column.integer("won-on-discard", "games", "Won on another player's discard.")
          .headed("won on a discard");

  /** The column {@code threw-the-winning-tile}. */
  public static final Column THREW_THE_WINNING_TILE =
      Column.integer("threw-the-winning-tile", "games", "Threw the tile on which another won.")
          .headed("threw the winning tile");

  /** The column {@code only-paid}. */
  public static final Column ONLY_PAID =
      Column.integer(
              "only-paid",
              "games",
              "Another player won by self-pick or on a third player's discard.")
          .headed("another player won; just paid");

  /** The column {@code wall-game}. */
  public static final Column WALL_GAME =
      Column.integer("wall-game", "games", "Nobody won before the wall ran out.")
          .headed("wall game");

  /** The column {@code void}. */
  public static final Column VOID =
      Column.integer(
              "void", "games", "Three hands were dead. These six columns add up to all games.")
          .headed("void, three hands dead");

  /** The column {@code won-after-redeeming}. */
  public static final Column WON_AFTER_REDEEMING =
      Column.integer(
              "won-after-redeeming", "games", "Won in a game in which it had redeemed a joker.")
          .headed("won after redeeming a joker in 100 games");

  /** The column {@code won-jokerless}. */
  public static final Column WON_JOKERLESS =
      Column.integer(
              "won-jokerless",
              "games",
              "Won with a hand that was paid as jokerless: a hand without jokers does not count where the rules pay nothing for that, as on a line that cannot hold jokers.")
          .headed("won a hand paid as jokerless in 100 games");

  /** The column {@code one-away-reached}. */
  public static final Column ONE_AWAY_REACHED =
      Column.rate(
              "one-away-reached",
              "share of games",
              "Was one away from a line at some time between two turns, or won.")
          .headed("got to one away in 100 games");

  /** The column {@code wall-at-win}. */
  public static final Column WALL_AT_WIN =
      Column.decimal("wall-at-win", "tiles", "Mean number of tiles left in the wall at a win.")
          .headed("tiles left at a win")
          .within(0, Limits.TILES);

  /** The column {@code jokers-at-win}. */
  public static final Column JOKERS_AT_WIN =
      Column.decimal("jokers-at-win", "tiles", "Mean number of jokers in the winning hand.")
          .headed("jokers in the winning hand")
          .within(0, Limits.TILES);

  /** The column {@code exposures}. */
  public static final Column EXPOSURES =
      Column.decimal("exposures", "per game", "Mean number of exposures made a game.")
          .headed("exposures per game")
          .within(0, Limits.TILES);

  /** The column {@code exchanges}. */
  public static final Column EXCHANGES =
      Column.decimal("exchanges", "per game", "Mean number of jokers redeemed a game.")
          .headed("jokers redeemed per game")
          .within(0, Limits.TILES);

  private WinRateColumns() {}

  /**
   * All columns of the file.
   *
   * @return from left to right
   */
  public static List<Column> all() {
    return List.of(
        ARM,
        SEAT,
        PLAYER,
        DEALS,
        GAMES,
        WINS,
        WIN_RATE,
        WIN_RATE_METHOD,
        POINTS,
        POINTS_METHOD,
        WON_ON_OWN_DRAW,
        WON_ON_DISCARD,
        THREW_THE_WINNING_TILE,
        ONLY_PAID,
        WALL_GAME,
        VOID,
        WON_AFTER_REDEEMING,
        WON_JOKERLESS,
        ONE_AWAY_REACHED,
        WALL_AT_WIN,
        JOKERS_AT_WIN,
        EXPOSURES,
        EXCHANGES);
  }
}
