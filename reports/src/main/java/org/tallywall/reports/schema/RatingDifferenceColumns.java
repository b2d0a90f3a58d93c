package org.tallywall.reports.schema;

import java.util.List;
import org.tallywall.reports.table.Column;

/** The columns of {@code rating-differences.csv}. */
public final class RatingDifferenceColumns {
  /** The file's name without its ending. */
  public static final String FILE = "rating-differences";

  /** The column {@code arm}. */
  public static final Column ARM = Column.text("arm", "The stronger of two players.").filled();

  /** The column {@code other}. */
  public static final Column OTHER = Column.text("other", "The other.").filled();

  /** The column {@code difference}. */
  public static final Column DIFFERENCE =
      Column.decimalInterval(
              "difference",
              "natural logarithm",
              "By how much its rating is above the other's; not adjusted for the number of pairs. Pairs with a player that never won, or that won in fewer than 20 of its deals and in less than a quarter of them, are left out.")
          .within(-Limits.STRENGTH, Limits.STRENGTH);

  /** The column {@code standard-error}. */
  public static final Column STANDARD_ERROR =
      Column.decimal(
              "standard-error",
              "natural logarithm",
              "The standard error of the difference, from the spread of deals within tables.")
          .within(0, Limits.STRENGTH);

  private RatingDifferenceColumns() {}

  /**
   * All columns of the file.
   *
   * @return from left to right
   */
  public static List<Column> all() {
    return List.of(ARM, OTHER, DIFFERENCE, STANDARD_ERROR);
  }
}
