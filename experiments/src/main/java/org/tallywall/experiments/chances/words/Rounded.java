package org.tallywall.experiments.chances.words;

import java.util.function.DoublePredicate;
import java.util.stream.IntStream;
import org.tallywall.reports.table.Cell;
import org.tallywall.reports.table.Table;
import org.tallywall.reports.table.TableBuilder;

/** Shares that rounding makes look certain or impossible, and are neither. */
final class Rounded {
  private static final double LOOKS_CERTAIN = 0.9995;
  private static final double LOOKS_IMPOSSIBLE = 0.0005;

  private Rounded() {}

  /** Says below a table what is only nearly so; shares are shown with one decimal place. */
  static void notes(TableBuilder builder) {
    Table table = builder.build();
    if (any(table, share -> share >= LOOKS_CERTAIN && share < 1)) {
      builder.note("100.0 % may stand for a little less than certain.");
    }
    if (any(table, share -> share > 0 && share < LOOKS_IMPOSSIBLE)) {
      builder.note("0.0 % may stand for a little more than impossible.");
    }
  }

  private static boolean any(Table table, DoublePredicate is) {
    return table.rows().stream()
        .flatMap(
            row ->
                IntStream.range(0, row.size())
                    .filter(at -> table.columns().get(at).type().isRate())
                    .mapToObj(row::get))
        .anyMatch(cell -> cell instanceof Cell.Decimal number && is.test(number.value()));
  }
}
