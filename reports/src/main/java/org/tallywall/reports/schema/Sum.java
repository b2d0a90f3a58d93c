package org.tallywall.reports.schema;

import java.util.List;
import org.tallywall.reports.table.Column;

/**
 * Counts of a row that together are at most another count of it.
 *
 * @param whole the other count, as games played
 * @param parts the counts, as games won
 */
public record Sum(Column whole, List<Column> parts) {
  /**
   * Copies the parts.
   *
   * @param whole the other count
   * @param parts the counts
   */
  public Sum {
    parts = List.copyOf(parts);
  }

  static Sum of(Column whole, Column... parts) {
    return new Sum(whole, List.of(parts));
  }
}
