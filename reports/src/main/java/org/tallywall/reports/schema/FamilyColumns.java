package org.tallywall.reports.schema;

import java.util.List;
import java.util.stream.Stream;
import org.tallywall.reports.table.Column;

/** The columns of {@code families.csv} before those of {@link AimColumns}. */
public final class FamilyColumns {
  /** The file's name without its ending. */
  public static final String FILE = "families";

  /** The column {@code arm}. */
  public static final Column ARM =
      Column.text("arm", "The way of playing; \"table\" for one fixed table.")
          .headed("way of playing")
          .filled();

  /** The column {@code family}. */
  public static final Column FAMILY =
      Column.text("family", "The section of the card.").headed("section").filled();

  /** The column {@code lines}. */
  public static final Column LINES = Column.integer("lines", "lines", "Lines of the section.");

  /** The column {@code ways}. */
  public static final Column WAYS =
      Column.integer("ways", "hands", "Ways to make them.").headed("ways to make them");

  private FamilyColumns() {}

  /**
   * All columns of the file.
   *
   * @return from left to right
   */
  public static List<Column> all() {
    return Stream.concat(Stream.of(ARM, FAMILY, LINES, WAYS), AimColumns.all().stream()).toList();
  }
}
