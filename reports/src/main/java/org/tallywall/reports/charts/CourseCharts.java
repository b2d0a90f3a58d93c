package org.tallywall.reports.charts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.tallywall.reports.figure.Axis;
import org.tallywall.reports.figure.Caption;
import org.tallywall.reports.figure.Figure;
import org.tallywall.reports.figure.IntervalPlot;
import org.tallywall.reports.figure.PairedDots;
import org.tallywall.reports.figure.Standing;
import org.tallywall.reports.results.CsvFile;
import org.tallywall.reports.results.Results;
import org.tallywall.reports.schema.OverallColumns;
import org.tallywall.reports.schema.PassColumns;
import org.tallywall.reports.table.Rounding;
import org.tallywall.reports.words.PassWords;
import org.tallywall.reports.words.TableHeadline;
import org.tallywall.reports.words.Ways;

/** The course of the games at one fixed table: when they end, and what the passes bring. */
final class CourseCharts {
  /** Stem of the chart of when games end. */
  static final String ENDINGS = "when-games-end";

  /** Stem of the chart of the passes. */
  static final String PASSES = "what-the-passes-bring";

  private final Results results;

  private CourseCharts(Results results) {
    this.results = results;
  }

  /** Both charts, where the files have the figures. */
  static List<Figure> of(Results results) {
    CourseCharts charts = new CourseCharts(results);
    List<Figure> figures = new ArrayList<>();
    charts.endings().ifPresent(figures::add);
    charts.passes().ifPresent(figures::add);
    return figures;
  }

  private Optional<IntervalPlot> endings() {
    List<IntervalPlot.Row> rows = new ArrayList<>();
    List<String> sentences = new ArrayList<>();
    for (CsvFile.Row row : results.rows(OverallColumns.FILE)) {
      if (row.text(OverallColumns.FIGURE).equals("ended")) {
        String part = part(row.words(OverallColumns.PART));
        row.ranged(OverallColumns.VALUE)
            .ifPresent(
                share -> {
                  rows.add(
                      new IntervalPlot.Row(
                          part,
                          Standing.COMPARED,
                          List.of(IntervalPlot.Spot.of(share.inHundred().estimate()))));
                  sentences.add(part + ": " + TableHeadline.inHundred(share) + ".");
                });
      }
    }
    if (rows.isEmpty()) {
      return Optional.empty();
    }
    Caption caption =
        Captions.of(
            results,
            ENDINGS,
            "When 100 games end",
            "Games in 100 by tiles left. " + String.join(" ", Room.first(sentences)),
            Room.below(results, rows.size()));
    return Optional.of(
        new IntervalPlot(
            caption,
            "tiles left in the wall",
            List.of(IntervalPlot.Panel.levels(new Axis("games that ended there", "in 100"))),
            Room.first(rows)));
  }

  private static String part(String part) {
    return part.equals("0") ? "none" : part.replace("-", " to ");
  }

  private Optional<PairedDots> passes() {
    List<PairedDots.Row> rows = new ArrayList<>();
    List<String> sentences = new ArrayList<>();
    for (CsvFile.Row row : results.rows(PassColumns.FILE)) {
      OptionalDouble before = row.number(PassColumns.AWAY_BEFORE);
      OptionalDouble after = row.number(PassColumns.AWAY_AFTER);
      if (Ways.oneTable(results) && before.isPresent() && after.isPresent()) {
        String pass = PassWords.of(row.text(PassColumns.STEP));
        String from = two(before.getAsDouble());
        String to = two(after.getAsDouble());
        rows.add(new PairedDots.Row(pass, before, after, List.of(from, to)));
        sentences.add(pass + ": from " + from + " to " + to + " tiles away.");
      }
    }
    if (rows.isEmpty()) {
      return Optional.empty();
    }
    Caption caption =
        Captions.of(
            results,
            PASSES,
            "What each pass brings",
            String.join(" ", Room.first(sentences)),
            Room.below(results, rows.size()));
    return Optional.of(
        new PairedDots(
            caption,
            new Axis("tiles away, mean of the four racks", ""),
            "pass",
            "before the pass",
            "after the pass",
            List.of("before", "after"),
            Room.first(rows)));
  }

  private static String two(double number) {
    return Rounding.nearest(number, 2).toPlainString();
  }
}
