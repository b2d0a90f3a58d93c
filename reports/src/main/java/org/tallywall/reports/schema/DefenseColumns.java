package org.tallywall.reports.schema;

import java.util.List;
import org.tallywall.reports.table.Column;

/** The columns of {@code defense.csv}. */
public final class DefenseColumns {
  /** The file's name without its ending. */
  public static final String FILE = "defense";

  /** The column {@code arm}. */
  public static final Column ARM =
      Column.text("arm", "The way of playing.").headed("way of playing").filled();

  /** The column {@code baseline}. */
  public static final Column BASELINE =
      Column.text("baseline", "The way that it is compared with.").headed("compared with");

  /** The column {@code step}. */
  public static final Column STEP =
      Column.text(
              "step",
              "\"played-differently\" for games that went another way than the same game of the way compared with; else the step of the defense in which the studied player chose a discard.")
          .filled();

  /** The column {@code seat-games}. */
  public static final Column SEAT_GAMES =
      Column.integer("seat-games", "games", "Games of the studied player, whatever happened.");

  /** The column {@code games}. */
  public static final Column GAMES =
      Column.integer("games", "games", "Games in which it came to this.")
          .headed("came up in 100 games");

  /** The column {@code mean-wall}. */
  public static final Column MEAN_WALL =
      Column.decimal("mean-wall", "tiles", "Mean number of tiles left in the wall then.")
          .headed("tiles left then")
          .shownTo(0)
          .within(0, Limits.TILES);

  /** The column {@code games-compared}. */
  public static final Column GAMES_COMPARED =
      Column.integer(
              "games-compared",
              "games",
              "Games over which the difference is taken. For a step: those in which it came to this before the two games differed, or at the discard at which they did; later it depends on the luck of the one game alone. For \"played-differently\": all.")
          .headed("came up before the games differed, in 100 games");

  /** The column {@code deals-compared}. */
  public static final Column DEALS_COMPARED =
      Column.integer("deals-compared", "deals", "Deals with such a game.")
          .headed("deals with such a game");

  /** The column {@code measure}. */
  public static final Column MEASURE = Column.text("measure", "What is measured.");

  /** The column {@code unit}. */
  public static final Column UNIT =
      Column.text("unit", "\"share of games\", or \"per game\".")
          .oneOf("share of games", "per game");

  /** The column {@code difference}. */
  public static final Column DIFFERENCE =
      Column.decimalInterval(
              "difference",
              "as in unit",
              "Mean difference from the same games of the way compared with, over the games compared only.")
          .headed("difference in 100 such games")
          .shownTo(1);

  /** The column {@code method}. */
  public static final Column METHOD =
      Column.text(
          "method",
          "How the interval was computed; \"too few\" where fewer than 30 deals have such a game, \"no spread\" where all came to the same.");

  private DefenseColumns() {}

  /**
   * All columns of the file.
   *
   * @return from left to right
   */
  public static List<Column> all() {
    return List.of(
        ARM,
        BASELINE,
        STEP,
        SEAT_GAMES,
        GAMES,
        MEAN_WALL,
        GAMES_COMPARED,
        DEALS_COMPARED,
        MEASURE,
        UNIT,
        DIFFERENCE,
        METHOD);
  }
}
