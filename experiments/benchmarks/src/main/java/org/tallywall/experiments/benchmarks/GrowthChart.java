package org.tallywall.experiments.benchmarks;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.tallywall.reports.figure.Axis;
import org.tallywall.reports.figure.BandCurve;
import org.tallywall.reports.figure.Caption;
import org.tallywall.reports.figure.PlotValue;
import org.tallywall.reports.figure.Scale;
import org.tallywall.reports.figure.Standing;
import org.tallywall.reports.svg.SvgWriter;

/** Draws how the time of a game grows with the number of concrete hands. */
final class GrowthChart {
  private GrowthChart() {}

  static String svg(List<Growth.Measured> measured) {
    List<BandCurve.Point> points = new ArrayList<>();
    for (Growth.Measured one : measured) {
      points.add(
          new BandCurve.Point(
              one.at(),
              String.format(Locale.ROOT, "%,d", one.at()),
              Standing.COMPARED,
              new PlotValue(one.value(), one.value() - one.error(), one.value() + one.error())));
    }
    Caption caption =
        new Caption(
            "growth",
            "Time of a game with the size of the card",
            "Microseconds a game of four nearest, for cards of 200 to 20,000 concrete hands.",
            List.of("Measured with JMH on one core; the range is the harness's own (99.9 %)."));
    return SvgWriter.text(
        new BandCurve(
            caption,
            new Axis("concrete hands", ""),
            new Axis("a game of four nearest", "microseconds"),
            Scale.LEVEL,
            "",
            points));
  }
}
