package org.tallywall.reports.schema;

import java.util.List;
import org.tallywall.reports.table.Column;

/**
 * The columns of {@code ways.csv}: a row for every setting in which a way of playing differs from
 * the one that it is compared with, and one more where they are players of two kinds.
 */
public final class WayColumns {
  /** The file's name without its ending. */
  public static final String FILE = "ways";

  /** The column {@code arm}. */
  public static final Column ARM =
      Column.text("arm", "The way of playing.").headed("way of playing").filled();

  /** The column {@code player}. */
  public static final Column PLAYER = Column.text("player", "Which player it is.").filled();

  /** The column {@code setting}. */
  public static final Column SETTING =
      Column.text("setting", "The setting; empty in the row that says which player it is.");

  /** The column {@code value}. */
  public static final Column VALUE = Column.text("value", "Its value; or the player.");

  /** The column {@code baseline}. */
  public static final Column BASELINE =
      Column.text("baseline", "The way of playing that it is compared with.")
          .headed("compared with")
          .filled();

  /** The column {@code baseline-value}. */
  public static final Column BASELINE_VALUE =
      Column.text("baseline-value", "The value there; or the player.").headed("value there");

  /** The column {@code words}. */
  public static final Column WORDS =
      Column.text(
              "words",
              "What the value makes a player do; empty where the habit that the setting belongs to is off.")
          .headed("what it does");

  /** The column {@code baseline-words}. */
  public static final Column BASELINE_WORDS =
      Column.text("baseline-words", "The same for the value there.").headed("what the other does");

  /** The column {@code saying}. */
  public static final Column SAYING =
      Column.text("saying", "What the setting does, whatever its value.");

  /** The column {@code heading}. */
  public static final Column HEADING = Column.text("heading", "The same in short.");

  /** The column {@code label}. */
  public static final Column LABEL = Column.text("label", "The value's words in short.");

  /** The column {@code baseline-label}. */
  public static final Column BASELINE_LABEL =
      Column.text("baseline-label", "The same for the value there.");

  /** The column {@code settings}. */
  public static final Column SETTINGS =
      Column.integer("settings", "settings", "In how many settings the two differ.");

  private WayColumns() {}

  /**
   * All columns of the file.
   *
   * @return from left to right
   */
  public static List<Column> all() {
    return List.of(
        ARM,
        PLAYER,
        SETTING,
        VALUE,
        BASELINE,
        BASELINE_VALUE,
        WORDS,
        BASELINE_WORDS,
        SAYING,
        HEADING,
        LABEL,
        BASELINE_LABEL,
        SETTINGS);
  }
}
