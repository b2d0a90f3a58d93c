package org.tallywall.reports.schema;

import java.util.List;
import org.tallywall.reports.table.Column;

/** The columns of {@code passes.csv}. */
public final class PassColumns {
  /** The file's name without its ending. */
  public static final String FILE = "passes";

  /** The column {@code arm}. */
  public static final Column ARM =
      Column.text("arm", "The way of playing; \"table\" for one fixed table.")
          .headed("way of playing")
          .filled();

  /** The column {@code step}. */
  public static final Column STEP =
      Column.text("step", "The pass; \"stop\" for the question, \"courtesy\" for the last.")
          .headed("pass")
          .filled();

  /** The column {@code games}. */
  public static final Column GAMES =
      Column.integer("games", "games", "Games in which it was made, or asked.");

  /** The column {@code share-of-games}. */
  public static final Column SHARE_OF_GAMES =
      Column.rate("share-of-games", "share of games", "The same as a share.")
          .headed("came up in 100 games");

  /** The column {@code stopped}. */
  public static final Column STOPPED =
      Column.integer("stopped", "games", "Games in which the second round was stopped.")
          .headed("stopped, of 100 asked");

  /** The column {@code stoppers}. */
  public static final Column STOPPERS =
      Column.integer("stoppers", "players", "Players that said stop.");

  /** The column {@code void}. */
  public static final Column VOID =
      Column.integer("void", "games", "Games in which all four passed everything blind.");

  /** The column {@code blind-0}. */
  public static final Column BLIND_0 =
      Column.integer("blind-0", "players", "Players that passed 0 tiles blind.");

  /** The column {@code blind-1}. */
  public static final Column BLIND_1 =
      Column.integer("blind-1", "players", "Players that passed 1 tile blind.");

  /** The column {@code blind-2}. */
  public static final Column BLIND_2 =
      Column.integer("blind-2", "players", "Players that passed 2 tiles blind.");

  /** The column {@code blind-3}. */
  public static final Column BLIND_3 =
      Column.integer("blind-3", "players", "Players that passed 3 tiles blind.");

  /** The column {@code asked-0}. */
  public static final Column ASKED_0 =
      Column.integer("asked-0", "players", "Players that asked for 0 tiles in the courtesy pass.");

  /** The column {@code asked-1}. */
  public static final Column ASKED_1 =
      Column.integer("asked-1", "players", "Players that asked for 1 tile in the courtesy pass.");

  /** The column {@code asked-2}. */
  public static final Column ASKED_2 =
      Column.integer("asked-2", "players", "Players that asked for 2 tiles in the courtesy pass.");

  /** The column {@code asked-3}. */
  public static final Column ASKED_3 =
      Column.integer("asked-3", "players", "Players that asked for 3 tiles in the courtesy pass.");

  /** The column {@code gave-0}. */
  public static final Column GAVE_0 =
      Column.integer("gave-0", "players", "Players that gave 0 tiles in the courtesy pass.");

  /** The column {@code gave-1}. */
  public static final Column GAVE_1 =
      Column.integer("gave-1", "players", "Players that gave 1 tile in the courtesy pass.");

  /** The column {@code gave-2}. */
  public static final Column GAVE_2 =
      Column.integer("gave-2", "players", "Players that gave 2 tiles in the courtesy pass.");

  /** The column {@code gave-3}. */
  public static final Column GAVE_3 =
      Column.integer("gave-3", "players", "Players that gave 3 tiles in the courtesy pass.");

  /** The column {@code away-before}. */
  public static final Column AWAY_BEFORE =
      Column.decimal("away-before", "tiles", "Mean tiles away before the pass.")
          .headed("tiles away before")
          .within(0, Limits.TILES);

  /** The column {@code away-after}. */
  public static final Column AWAY_AFTER =
      Column.decimal("away-after", "tiles", "Mean tiles away after the pass.")
          .headed("tiles away after")
          .within(0, Limits.TILES);

  private PassColumns() {}

  /**
   * All columns of the file.
   *
   * @return from left to right
   */
  public static List<Column> all() {
    return List.of(
        ARM,
        STEP,
        GAMES,
        SHARE_OF_GAMES,
        STOPPED,
        STOPPERS,
        VOID,
        BLIND_0,
        BLIND_1,
        BLIND_2,
        BLIND_3,
        ASKED_0,
        ASKED_1,
        ASKED_2,
        ASKED_3,
        GAVE_0,
        GAVE_1,
        GAVE_2,
        GAVE_3,
        AWAY_BEFORE,
        AWAY_AFTER);
  }

  /**
   * Players that passed so many tiles blind.
   *
   * @return four columns, for none to three tiles
   */
  public static List<Column> blind() {
    return List.of(BLIND_0, BLIND_1, BLIND_2, BLIND_3);
  }

  /**
   * Players that asked for so many tiles in the courtesy pass.
   *
   * @return four columns, for none to three tiles
   */
  public static List<Column> asked() {
    return List.of(ASKED_0, ASKED_1, ASKED_2, ASKED_3);
  }

  /**
   * Players that gave so many tiles in the courtesy pass.
   *
   * @return four columns, for none to three tiles
   */
  public static List<Column> gave() {
    return List.of(GAVE_0, GAVE_1, GAVE_2, GAVE_3);
  }
}
