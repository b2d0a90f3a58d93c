package org.tallywall.reports.tables;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tallywall.reports.results.CsvFile;
import org.tallywall.reports.results.Ranged;
import org.tallywall.reports.results.Results;
import org.tallywall.reports.schema.BranchColumns;
import org.tallywall.reports.schema.DefenseColumns;
import org.tallywall.reports.table.Table;

/** What a habit or a choice is worth in the games in which it came into play. */
public final class EffectTables {
  private EffectTables() {}

  /**
   * The tables that the folder has the figures for.
   *
   * @param results what a results folder holds
   * @return the tables in their order
   */
  public static List<Table> of(Results results) {
    List<Table> tables = new ArrayList<>();
    if (!results.rows(DefenseColumns.FILE).isEmpty()) {
      tables.add(StepTable.of(results));
    }
    if (!results.rows(BranchColumns.FILE).isEmpty()) {
      tables.add(SquareTable.of(results));
    }
    return tables;
  }

  /**
   * Whether plus or minus is clear for a row by itself.
   *
   * @param row a row of the file
   * @return the words
   */
  public static String clear(CsvFile.Row row) {
    Optional<Ranged> difference = row.ranged(DefenseColumns.DIFFERENCE);
    if (difference.isEmpty()) {
      return "too few to say";
    }
    return switch (difference.get().estimate().clearSign()) {
      case 1 -> "yes, more";
      case -1 -> "yes, less";
      default -> "too close to call";
    };
  }
}
