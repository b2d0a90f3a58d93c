package org.tallywall.reports.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.tallywall.reports.results.CsvFile;
import org.tallywall.reports.results.Ranged;
import org.tallywall.reports.results.Results;
import org.tallywall.reports.schema.DifferenceColumns;

/**
 * One comparison on the same deals: a line of {@code differences.csv}.
 *
 * @param arm the way of playing
 * @param baseline what it is compared with
 * @param measure the measure as files name it
 * @param role primary, secondary or exploratory
 * @param difference its value and range in the unit of the file, if there is one
 * @param verdict what a sequential test says of it, as files name it; empty where there is none
 * @param row the whole line, for everything else
 */
public record Compared(
    String arm,
    String baseline,
    String measure,
    String role,
    Optional<Ranged> difference,
    String verdict,
    CsvFile.Row row) {

  /**
   * All comparisons of the folder, in the order of the file.
   *
   * @param results what a results folder holds
   * @return all of them, in their order
   */
  public static List<Compared> all(Results results) {
    List<Compared> all = new ArrayList<>();
    Map<List<String>, String> verdicts = Stops.of(results).map(Stops::verdicts).orElse(Map.of());
    for (CsvFile.Row row : results.rows(DifferenceColumns.FILE)) {
      String arm = Ways.name(results, row.text(DifferenceColumns.ARM));
      List<String> comparison =
          List.of(row.text(DifferenceColumns.ARM), row.text(DifferenceColumns.MEASURE));
      String verdict = verdicts.getOrDefault(comparison, "");
      all.add(of(row, arm, Ways.name(results, row.text(DifferenceColumns.BASELINE)), verdict));
    }
    return all.stream().filter(one -> !one.measure().isEmpty()).toList();
  }

  private static Compared of(CsvFile.Row row, String arm, String baseline, String verdict) {
    return new Compared(
        arm,
        baseline,
        row.text(DifferenceColumns.MEASURE),
        row.text(DifferenceColumns.ROLE),
        row.ranged(DifferenceColumns.DIFFERENCE),
        verdict,
        row);
  }

  /**
   * Whether all deals came out the same in every seat.
   *
   * @return true if so
   */
  public boolean isSame() {
    return !row.text(DifferenceColumns.DISCORDANT).isEmpty()
        && row.count(DifferenceColumns.DISCORDANT) == 0
        && row.count(DifferenceColumns.DEALS) > 0;
  }

  /**
   * Those that answer the question.
   *
   * @param results what a results folder holds
   * @return all of them, in their order
   */
  public static List<Compared> primary(Results results) {
    return all(results).stream().filter(Compared::isPrimary).toList();
  }

  /**
   * Whether it answers the question.
   *
   * @return true if so
   */
  public boolean isPrimary() {
    return role.equals("primary");
  }

  /**
   * Whether it was asked before the run.
   *
   * @return true if so
   */
  public boolean isDeclared() {
    return !role.equals("exploratory");
  }

  /**
   * The comparison in 100 games.
   *
   * @return what there is, if there is any
   */
  public Optional<Ranged> inHundred() {
    return difference.map(Ranged::inHundred);
  }

  /**
   * Whether it is the line of the baseline itself.
   *
   * @return true if so
   */
  public boolean isBaseline() {
    return arm.equals(baseline);
  }

  /**
   * Whether plus or minus is clear: a sequential test says so, or the range leaves out 0, and where
   * several were compared, the adjusted p says so too.
   *
   * @param confidence the level of the range
   * @return 1, −1, or 0 where it cannot be told
   */
  public int clearSign(double confidence) {
    if (!verdict.isEmpty()) {
      return verdict.equals("more") ? 1 : verdict.equals("fewer") ? -1 : 0;
    }
    int sign = difference.map(ranged -> ranged.estimate().clearSign()).orElse(0);
    OptionalDouble holm = row.number(DifferenceColumns.P_HOLM);
    return holm.isPresent() && holm.getAsDouble() > 1 - confidence ? 0 : sign;
  }

  /**
   * Whether its range leaves out 0 only as long as nothing else is counted with it.
   *
   * @param confidence the level of the range
   * @return true if so; false where a sequential test decides
   */
  public boolean isClearAlone(double confidence) {
    return verdict.isEmpty()
        && clearSign(confidence) == 0
        && difference.map(ranged -> ranged.estimate().clearSign()).orElse(0) != 0;
  }

  /**
   * How many comparisons a single one is counted together with, itself among them.
   *
   * @param results what a results folder holds
   * @return those that were declared and have an adjusted p
   */
  public static long together(Results results) {
    return all(results).stream()
        .filter(one -> one.row().number(DifferenceColumns.P_HOLM).isPresent())
        .count();
  }
}
