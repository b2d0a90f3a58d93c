package org.tallywall.reports.schema;

import java.util.List;
import org.tallywall.reports.table.Column;

/** The columns of {@code endings.csv}. */
public final class EndingColumns {
  /** The file's name without its ending. */
  public static final String FILE = "endings";

  /** The column {@code arm}. */
  public static final Column ARM =
      Column.text("arm", "The way of playing; \"table\" for one fixed table.")
          .headed("way of playing")
          .filled();

  /** The column {@code wall}. */
  public static final Column WALL =
      Column.integer("wall", "tiles", "Tiles left in the wall at the end.")
          .headed("tiles left in the wall")
          .filled()
          .within(0, Limits.TILES);

  /** The column {@code games}. */
  public static final Column GAMES =
      Column.integer("games", "games", "Games that ended there.").headed("all ends");

  /** The column {@code won-by-draw}. */
  public static final Column WON_BY_DRAW =
      Column.integer("won-by-draw", "games", "Won on the tile drawn.")
          .headed("won on the tile drawn");

  /** The column {@code won-by-exchange}. */
  public static final Column WON_BY_EXCHANGE =
      Column.integer("won-by-exchange", "games", "Won by a joker exchange.")
          .headed("won by a joker exchange");

  /** The column {@code won-on-discard}. */
  public static final Column WON_ON_DISCARD =
      Column.integer("won-on-discard", "games", "Won on a discard.").headed("won on a discard");

  /** The column {@code won-before-play}. */
  public static final Column WON_BEFORE_PLAY =
      Column.integer("won-before-play", "games", "East was complete before play.")
          .headed("East complete before play");

  /** The column {@code wall-games}. */
  public static final Column WALL_GAMES =
      Column.integer("wall-games", "games", "Nobody won before the wall ran out.")
          .headed("wall game");

  /** The column {@code void-games}. */
  public static final Column VOID_GAMES =
      Column.integer("void-games", "games", "Three hands were dead.")
          .headed("void, three hands dead");

  private EndingColumns() {}

  /**
   * All columns of the file.
   *
   * @return from left to right
   */
  public static List<Column> all() {
    return List.of(
        ARM,
        WALL,
        GAMES,
        WON_BY_DRAW,
        WON_BY_EXCHANGE,
        WON_ON_DISCARD,
        WON_BEFORE_PLAY,
        WALL_GAMES,
        VOID_GAMES);
  }
}
