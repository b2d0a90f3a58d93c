package org.tallywall.reports.schema;

import java.util.List;
import java.util.stream.Stream;
import org.tallywall.reports.table.Column;

/** The columns of {@code hand-choice.csv} before those of {@link AimColumns}. */
public final class HandChoiceColumns {
  /** The file's name without its ending. */
  public static final String FILE = "hand-choice";

  /** The column {@code arm}. */
  public static final Column ARM =
      Column.text("arm", "The way of playing; \"table\" for one fixed table.")
          .headed("way of playing")
          .filled();

  /** The column {@code line}. */
  public static final Column LINE = Column.text("line", "The line's id.").filled();

  /** The column {@code family}. */
  public static final Column FAMILY =
      Column.text("family", "The section of the card.").headed("section");

  /** The column {@code nickname}. */
  public static final Column NICKNAME = Column.text("nickname", "What the card calls the line.");

  /** The column {@code value}. */
  public static final Column VALUE = Column.integer("value", "points", "What the line pays.");

  /** The column {@code concealed}. */
  public static final Column CONCEALED =
      Column.text("concealed", "\"yes\" where nothing may be exposed, else \"no\".")
          .oneOf("yes", "no");

  /** The column {@code ways}. */
  public static final Column WAYS =
      Column.integer("ways", "hands", "Ways to make it.").headed("ways to make it");

  private HandChoiceColumns() {}

  /**
   * All columns of the file.
   *
   * @return from left to right
   */
  public static List<Column> all() {
    return Stream.concat(
            Stream.of(ARM, LINE, FAMILY, NICKNAME, VALUE, CONCEALED, WAYS),
            AimColumns.all().stream())
        .toList();
  }
}
