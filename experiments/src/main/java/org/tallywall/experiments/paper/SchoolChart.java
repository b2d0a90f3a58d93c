package org.tallywall.experiments.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tallywall.experiments.school.KindResult;
import org.tallywall.experiments.school.SchoolResult;
import org.tallywall.experiments.school.SchoolWords;
import org.tallywall.experiments.stats.Interval;
import org.tallywall.reports.figure.Axis;
import org.tallywall.reports.figure.Caption;
import org.tallywall.reports.figure.IntervalPlot;
import org.tallywall.reports.figure.IntervalPlot.Panel;
import org.tallywall.reports.figure.IntervalPlot.Row;
import org.tallywall.reports.figure.IntervalPlot.Spot;
import org.tallywall.reports.figure.PlotValue;
import org.tallywall.reports.figure.Slide;
import org.tallywall.reports.figure.Standing;

/** Points lost in a game by kind of decision: the picture that a teacher shows. */
final class SchoolChart {
  private SchoolChart() {}

  static IntervalPlot of(SchoolResult result) {
    List<Row> rows = new ArrayList<>();
    for (KindResult one : result.kinds()) {
      rows.add(
          new Row(
              one.kind().words(),
              Standing.COMPARED,
              List.of(spot(one.lostPerGame(), one.lostPerGameRange()))));
    }
    rows.add(
        new Row(
            "all",
            Standing.COMPARED,
            List.of(spot(result.lostPerGame(), result.lostPerGameRange()))));
    Caption caption =
        new Caption(
            "points-lost",
            "Points lost in a game, by kind of decision",
            SchoolWords.described(result),
            List.of(SchoolWords.rangesHold()),
            new Slide("", SchoolWords.title(result.question()), SchoolWords.source(result)));
    Axis points = new Axis("points lost", "a game, by one player");
    return new IntervalPlot(
        caption, "decision", List.of(Panel.differences(points, "nothing lost")), rows);
  }

  private static Spot spot(double value, Optional<Interval> range) {
    return range
        .map(at -> Spot.of(new PlotValue(value, at.low(), at.high())))
        .orElseGet(() -> Spot.words("too few to say"));
  }
}
