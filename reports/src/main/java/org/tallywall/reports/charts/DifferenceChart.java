package org.tallywall.reports.charts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tallywall.reports.figure.Axis;
import org.tallywall.reports.figure.Caption;
import org.tallywall.reports.figure.IntervalPlot;
import org.tallywall.reports.figure.IntervalPlot.Panel;
import org.tallywall.reports.figure.IntervalPlot.Row;
import org.tallywall.reports.figure.IntervalPlot.Spot;
import org.tallywall.reports.figure.Sign;
import org.tallywall.reports.figure.Standing;
import org.tallywall.reports.results.Ranged;
import org.tallywall.reports.results.Results;
import org.tallywall.reports.words.Compared;
import org.tallywall.reports.words.MeasureWords;
import org.tallywall.reports.words.Wording;

/** The differences that answer the question, each with its range. */
final class DifferenceChart {
  private DifferenceChart() {}

  static Optional<IntervalPlot> of(Results results) {
    List<Compared> shown =
        Compared.primary(results).stream()
            .filter(one -> one.difference().isPresent() && !one.isBaseline())
            .toList();
    if (shown.isEmpty()) {
      return Optional.empty();
    }
    String measure = MeasureWords.heading(shown.get(0).measure());
    String unit = MeasureWords.of(shown.get(0).measure()).map(MeasureWords::unit).orElse("in 100");
    String baseline = shown.get(0).baseline();
    List<Row> rows = new ArrayList<>();
    List<String> sentences = new ArrayList<>();
    for (Compared one : Room.first(shown)) {
      Ranged hundred = one.inHundred().orElseThrow();
      rows.add(new Row(one.arm(), Standing.COMPARED, List.of(Spot.of(hundred.estimate()))));
      sentences.add(
          "%s: %s %s.".formatted(one.arm(), hundred.estimate().text(Sign.PLUS_AND_MINUS), unit));
    }
    Panel panel =
        Panel.differences(
            new Axis("difference on the same deals", unit), "the same as " + baseline);
    Caption caption =
        Captions.of(
            results,
            "differences",
            "More or less than " + Wording.quoted(baseline) + ": " + measure,
            "Compared with " + baseline + ". " + String.join(" ", sentences),
            Room.below(results, shown.size()));
    return Optional.of(new IntervalPlot(caption, "way of playing", List.of(panel), rows));
  }
}
