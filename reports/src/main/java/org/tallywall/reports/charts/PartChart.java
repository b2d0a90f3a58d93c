package org.tallywall.reports.charts;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tallywall.reports.figure.Axis;
import org.tallywall.reports.figure.Caption;
import org.tallywall.reports.figure.PartBars;
import org.tallywall.reports.figure.Standing;
import org.tallywall.reports.results.CsvFile;
import org.tallywall.reports.results.Results;
import org.tallywall.reports.schema.WinRateColumns;
import org.tallywall.reports.table.CellText;
import org.tallywall.reports.table.Column;
import org.tallywall.reports.table.Rounding;
import org.tallywall.reports.words.Compared;
import org.tallywall.reports.words.Ways;
import org.tallywall.reports.words.Wording;

/** Where 100 games go: a bar for every way of playing, or for every seat of one fixed table. */
final class PartChart {
  /** Stem of the chart. */
  static final String STEM = "where-games-go";

  private static final List<Column> COUNTS =
      List.of(
          WinRateColumns.WON_ON_OWN_DRAW,
          WinRateColumns.WON_ON_DISCARD,
          WinRateColumns.THREW_THE_WINNING_TILE,
          WinRateColumns.ONLY_PAID);

  /** The measures whose differences belong to the parts. */
  private static final List<String> MEASURES =
      List.of(
          "won-on-own-draw", "won-on-discard", "threw-the-winning-tile", "only-paid", "wall-games");

  private static final int CHANGES_SHOWN = 2;

  private final Results results;
  private final List<CsvFile.Row> rows;
  private final String baseline;

  private PartChart(Results results) {
    this.results = results;
    this.rows =
        Ways.rows(results).stream().filter(row -> row.count(WinRateColumns.GAMES) > 0).toList();
    this.baseline = Ways.baseline(results);
  }

  static Optional<PartBars> of(Results results) {
    boolean there =
        results
            .sheet(WinRateColumns.FILE)
            .filter(sheet -> COUNTS.stream().allMatch(sheet::has))
            .isPresent();
    PartChart chart = there ? new PartChart(results) : null;
    return chart == null || chart.rows.isEmpty() ? Optional.empty() : Optional.of(chart.figure());
  }

  private PartBars figure() {
    boolean voids = rows.stream().anyMatch(row -> row.count(WinRateColumns.VOID) > 0);
    List<String> parts =
        Stream.concat(
                COUNTS.stream().map(Column::heading),
                Stream.of(voids ? "nobody won" : WinRateColumns.WALL_GAME.heading()))
            .toList();
    List<PartBars.Bar> bars = new ArrayList<>();
    List<PartBars.Change> changes = new ArrayList<>();
    for (CsvFile.Row row : Room.first(rows)) {
      String name = Ways.label(results, row);
      changes.addAll(changes(name, bars.size()));
      Standing standing = name.equals(baseline) ? Standing.BASELINE : Standing.COMPARED;
      bars.add(new PartBars.Bar(name, standing, values(row)));
    }
    Caption caption =
        Captions.of(results, STEM, "Where 100 games go", described(parts, bars), notes(changes));
    return new PartBars(caption, new Axis("of 100 games", ""), parts, bars, changes);
  }

  private List<String> notes(List<PartBars.Change> changes) {
    List<String> notes = new ArrayList<>();
    if (!changes.isEmpty()) {
      notes.add(
          "Below the bars: compared with %s on the same deals, as asked before the run."
              .formatted(Wording.quoted(baseline)));
    }
    notes.addAll(Room.below(results, rows.size()));
    return notes;
  }

  private static List<Double> values(CsvFile.Row row) {
    double games = row.count(WinRateColumns.GAMES);
    List<Double> values = new ArrayList<>();
    double rest = 100;
    for (Column count : COUNTS) {
      double value = 100 * row.count(count) / games;
      values.add(value);
      rest -= value;
    }
    values.add(Math.max(0, rest));
    return values;
  }

  /**
   * The clear differences of a way of playing, the two largest of those that were asked before the
   * run: a number on a chart is taken for a finding.
   */
  private List<PartBars.Change> changes(String arm, int bar) {
    if (arm.equals(baseline)) {
      return List.of();
    }
    List<PartBars.Change> changes = new ArrayList<>();
    for (Compared difference : Compared.all(results)) {
      int part = MEASURES.indexOf(difference.measure());
      boolean clear = difference.clearSign(results.confidence()) != 0;
      if (part >= 0 && difference.isDeclared() && clear && difference.arm().equals(arm)) {
        difference
            .inHundred()
            .ifPresent(hundred -> changes.add(new PartBars.Change(bar, part, hundred.estimate())));
      }
    }
    return changes.stream()
        .sorted(Comparator.comparingDouble(change -> -Math.abs(change.difference().value())))
        .limit(CHANGES_SHOWN)
        .toList();
  }

  private static String described(List<String> parts, List<PartBars.Bar> bars) {
    List<String> sentences = new ArrayList<>();
    for (PartBars.Bar bar : bars) {
      List<String> shares = new ArrayList<>();
      for (int at = 0; at < parts.size(); at++) {
        String share = Rounding.nearest(bar.values().get(at), 1).toPlainString();
        shares.add(parts.get(at) + " " + CellText.grouped(share));
      }
      sentences.add("Of 100 games of " + bar.label() + ": " + String.join(", ", shares) + ".");
    }
    return String.join(" ", sentences);
  }
}
