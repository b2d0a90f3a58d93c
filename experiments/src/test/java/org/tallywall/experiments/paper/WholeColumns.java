package org.tallywall.experiments.paper;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.tallywall.reports.schema.BranchColumns;
import org.tallywall.reports.schema.DefenseColumns;
import org.tallywall.reports.schema.DifferenceColumns;
import org.tallywall.reports.schema.EndingColumns;
import org.tallywall.reports.schema.FamilyColumns;
import org.tallywall.reports.schema.FaultColumns;
import org.tallywall.reports.schema.HandChoiceColumns;
import org.tallywall.reports.schema.SweepColumns;
import org.tallywall.reports.schema.WinRateColumns;
import org.tallywall.reports.table.Column;

/** Gives an invented file of results the columns that it was not given, empty. */
final class WholeColumns {
  private static final Map<String, List<Column>> FILES =
      Map.of(
          "win-rates.csv", WinRateColumns.all(),
          "differences.csv", DifferenceColumns.all(),
          "sweep.csv", SweepColumns.all(),
          "branch.csv", BranchColumns.all(),
          "defense.csv", DefenseColumns.all(),
          "families.csv", FamilyColumns.all(),
          "hand-choice.csv", HandChoiceColumns.all(),
          "endings.csv", EndingColumns.all(),
          "faults.csv", FaultColumns.all());

  private WholeColumns() {}

  static String of(String file, String text) {
    List<String> there = Arrays.asList(text.lines().findFirst().orElse("").split(","));
    List<String> missing =
        FILES.getOrDefault(file, List.of()).stream()
            .flatMap(column -> column.spread().stream())
            .map(Column::name)
            .filter(name -> !there.contains(name))
            .toList();
    if (missing.isEmpty()) {
      return text;
    }
    String cells = ",".repeat(missing.size());
    String header = there.stream().collect(Collectors.joining(","));
    return header
        + ","
        + String.join(",", missing)
        + "\n"
        + text.lines().skip(1).map(line -> line + cells + "\n").collect(Collectors.joining());
  }
}
