package org.tallywall.reports.tables;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.tallywall.reports.results.CsvFile;
import org.tallywall.reports.results.Ranged;
import org.tallywall.reports.results.Results;
import org.tallywall.reports.schema.DifferenceColumns;
import org.tallywall.reports.table.Cell;
import org.tallywall.reports.table.Column;
import org.tallywall.reports.table.Table;
import org.tallywall.reports.table.TableBuilder;
import org.tallywall.reports.words.Compared;
import org.tallywall.reports.words.FourAlike;
import org.tallywall.reports.words.MeasureWords;
import org.tallywall.reports.words.RangeWords;
import org.tallywall.reports.words.Stops;
import org.tallywall.reports.words.Wording;

/** Comparisons on the same deals, in words for readers. */
public final class DifferenceTables {
  private static final String BESIDES =
      "Per 100 games. Among this many numbers, some ranges leave out 0 by chance: declare whatever"
          + " looks interesting here, and play it again from another seed.";

  /** Levels, difference, and whether it is clear. */
  private static final List<Integer> FEW = List.of(0, 1, 2, 3);

  private static final List<Integer> EVERY = List.of(0, 1, 2, 3, 4, 5);

  private final Results results;
  private final List<Compared> all;

  /**
   * Tables of the comparisons in a results folder.
   *
   * @param results what a results folder holds
   */
  public DifferenceTables(Results results) {
    this.results = results;
    this.all = Compared.all(results);
  }

  /**
   * Whether ways of playing were compared.
   *
   * @return true if so
   */
  public boolean any() {
    return !all.isEmpty();
  }

  /**
   * The one table of the notes: all that was asked before the run, the question first.
   *
   * @return the table
   */
  public Table brief() {
    List<Compared> shown = asked();
    return table("differences", "Asked before the run, on the same deals", shown, FEW)
        .note(explained(shown))
        .build();
  }

  /** What was declared before the run: what answers the question, then measure by measure. */
  private List<Compared> asked() {
    List<Compared> asked = new ArrayList<>(all);
    asked.removeIf(one -> !one.isDeclared());
    asked.sort(Comparator.comparing(one -> !one.isPrimary()));
    List<String> measures = asked.stream().map(Compared::measure).distinct().toList();
    asked.sort(Comparator.comparingInt(one -> measures.indexOf(one.measure())));
    return asked;
  }

  /**
   * What was declared before the run, with all figures.
   *
   * @return a table; none where nothing was
   */
  public List<Table> declared() {
    List<Compared> shown = asked();
    String title = "Asked before the run, on the same deals";
    return shown.isEmpty()
        ? List.of()
        : List.of(table("declared", title, shown, every(shown)).note(explained(shown)).build());
  }

  /** What would have been noticed stands there only where the run tells it of anything declared. */
  private static List<Integer> every(List<Compared> shown) {
    boolean told =
        shown.stream()
            .filter(one -> !one.isBaseline())
            .anyMatch(one -> one.row().number(DifferenceColumns.DETECTABLE).isPresent());
    return told ? EVERY : EVERY.subList(0, EVERY.size() - 1);
  }

  /**
   * What was measured without being asked.
   *
   * @return a table; none where there is nothing
   */
  public List<Table> besides() {
    List<Compared> shown = all.stream().filter(one -> !one.isDeclared()).toList();
    String title = "Also measured, on the same deals";
    return shown.isEmpty()
        ? List.of()
        : List.of(table("besides", title, shown, List.of(0, 1, 2)).note(BESIDES).build());
  }

  private TableBuilder table(
      String stem, String title, List<Compared> shown, List<Integer> figures) {
    boolean one = shown.stream().map(Compared::baseline).distinct().count() == 1;
    String with = one ? ", compared with " + Wording.quoted(shown.get(0).baseline()) : "";
    TableBuilder table =
        Table.builder(stem, title + with)
            .columns(
                Column.text("measure", "What was measured."),
                Column.text("arm", "The way of playing.").headed("way of playing"));
    if (!one) {
      table.columns(Column.text("baseline", "The other.").headed("compared with"));
    }
    List<Column> columns = figures(one ? Wording.quoted(shown.get(0).baseline()) : "the other");
    figures.forEach(at -> table.columns(columns.get(at)));
    for (Compared difference : shown) {
      List<Cell> cells = new ArrayList<>();
      String heading = MeasureWords.heading(difference.measure());
      cells.add(Cell.text(difference.isPrimary() ? heading + " (the question)" : heading));
      cells.add(Cell.text(difference.arm()));
      if (!one) {
        cells.add(Cell.text(difference.baseline()));
      }
      List<Cell> own = figures(difference);
      figures.forEach(at -> cells.add(own.get(at)));
      table.row(cells);
    }
    return table;
  }

  private static List<Column> figures(String other) {
    return List.of(
        number(DifferenceColumns.LEVEL, "this way of playing").headed("this way"),
        number(DifferenceColumns.BASELINE_LEVEL, "what it is compared with").headed(other),
        Column.decimalInterval(
                "difference", "in 100 games", "This way minus the other, with its range.")
            .headed("difference on the same deals")
            .shownTo(1),
        Column.text("told-apart", "Whether plus or minus is clear.").headed("clear?"),
        Column.integer("discordant", "deals", "Deals in which the two came out differently.")
            .headed("deals that came out differently"),
        Column.text(
                "detectable", "The smallest difference this run would catch nine times out of ten.")
            .headed("smallest difference this run would catch"));
  }

  private static Column number(Column column, String whose) {
    return Column.decimal(column.name(), "in 100 games", "The level of " + whose + ".").shownTo(1);
  }

  private List<Cell> figures(Compared one) {
    CsvFile.Row row = one.row();
    OptionalDouble detectable = row.number(DifferenceColumns.DETECTABLE);
    boolean itself = one.isBaseline();
    boolean counted = !row.text(DifferenceColumns.DISCORDANT).isEmpty();
    return List.of(
        hundred(row.number(DifferenceColumns.LEVEL)),
        hundred(row.number(DifferenceColumns.BASELINE_LEVEL)),
        one.inHundred().map(Ranged::cell).orElse(itself ? Cell.decimal(0) : Cell.empty()),
        Cell.text(clear(one)),
        counted ? Cell.whole(row.count(DifferenceColumns.DISCORDANT)) : Cell.empty(),
        Cell.text(
            detectable.isEmpty() || itself ? "" : Wording.upTo(100 * detectable.getAsDouble())));
  }

  private static Cell hundred(OptionalDouble number) {
    return number.isPresent() ? Cell.decimal(100 * number.getAsDouble()) : Cell.empty();
  }

  private String clear(Compared one) {
    if (one.isBaseline() || !one.isDeclared()) {
      return "";
    } else if (one.isSame()) {
      return "the same in every deal";
    } else if (!one.verdict().isEmpty()) {
      return Stops.of(results).orElseThrow().inShort(one);
    }
    return switch (one.clearSign(results.confidence())) {
      case 1 -> "yes, more";
      case -1 -> "yes, less";
      default ->
          "too close to call"
              + (one.isClearAlone(results.confidence())
                  ? ", allowing for %s comparisons".formatted(Compared.together(results))
                  : "");
    };
  }

  private String explained(List<Compared> shown) {
    Optional<Stops> stops = Stops.of(results);
    String clear =
        stops.isPresent()
            ? stops.get().clear(shown.size() > 1)
            : "A difference is clear where its range leaves out 0%s. %s"
                .formatted(together(), RangeWords.of(results));
    return "Per 100 games. "
        + clear
        + unknown(shown, stops.isEmpty())
        + FourAlike.note(results).map(note -> " " + note).orElse("");
  }

  /** Said where there are several and each has its p-value among all of them. */
  private String together() {
    return Compared.together(results) > 1
        ? " and stays clear when all declared comparisons are counted together (Holm)"
        : "";
  }

  private static String unknown(List<Compared> shown, boolean fixed) {
    boolean any =
        shown.stream()
            .anyMatch(one -> !one.isSame() && !one.isBaseline() && one.difference().isEmpty());
    String few = fixed ? "came out differently" : "were played";
    return any ? " Where too few deals " + few + " for a range, no difference is given." : "";
  }
}
