package org.tallywall.reports;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.tallywall.reports.figure.Axis;
import org.tallywall.reports.figure.BandCurve;
import org.tallywall.reports.figure.CalibrationPlot;
import org.tallywall.reports.figure.Caption;
import org.tallywall.reports.figure.ExactLines;
import org.tallywall.reports.figure.Figure;
import org.tallywall.reports.figure.IntervalPlot;
import org.tallywall.reports.figure.IntervalPlot.Panel;
import org.tallywall.reports.figure.IntervalPlot.Spot;
import org.tallywall.reports.figure.PairedDots;
import org.tallywall.reports.figure.PartBars;
import org.tallywall.reports.figure.PlotValue;
import org.tallywall.reports.figure.Scale;
import org.tallywall.reports.figure.Slide;
import org.tallywall.reports.figure.SquareMap;
import org.tallywall.reports.figure.SquareMap.Square;
import org.tallywall.reports.figure.Standing;

/** Invented figures for the golden files and the tests; the numbers mean nothing. */
public final class SampleFigures {
  private static final String LONG =
      "the one that holds back as soon as anybody shows two exposures, and plays on when one away";

  private SampleFigures() {}

  /** One of every kind, in the order of their names. */
  public static List<Figure> all() {
    return List.of(
        levels(),
        both(),
        parts(),
        curve(),
        levelCurve(),
        map(),
        pairs(),
        calibration(),
        exact(),
        manyExact(),
        awkward());
  }

  public static IntervalPlot levels() {
    return new IntervalPlot(
        caption("levels", "How often four ways of playing win"),
        "way of playing",
        List.of(Panel.levels(new Axis("wins", "in 100 games"))),
        List.of(
            row("nearest", Standing.BASELINE, estimate(22.37, 21.56351, 23.1973)),
            row("reckoner", Standing.COMPARED, estimate(24.9, 24.1, 25.71)),
            row(LONG, Standing.COMPARED, estimate(23.4, 22.6, 24.2)),
            row("random-legal", Standing.COMPARED, estimate(0.31, 0.21, 0.46))));
  }

  /** Levels beside differences, the baseline without a difference. */
  public static IntervalPlot both() {
    List<IntervalPlot.Row> rows = new ArrayList<>();
    rows.add(
        new IntervalPlot.Row(
            "nearest",
            Standing.BASELINE,
            List.of(Spot.of(estimate(-0.73, -1.02, -0.44)), Spot.words("compared with"))));
    rows.add(
        new IntervalPlot.Row(
            "reckoner",
            Standing.COMPARED,
            List.of(Spot.of(estimate(-0.41, -0.7, -0.12)), Spot.of(estimate(0.32, 0.114, 0.526)))));
    rows.add(
        new IntervalPlot.Row(
            "hold-back at two exposures",
            Standing.COMPARED,
            List.of(Spot.of(estimate(-0.78, -1.1, -0.46)), Spot.of(estimate(-0.05, -0.21, 0.11)))));
    return new IntervalPlot(
        caption("levels-and-differences", "Points per game, and the difference on the same deals"),
        "way of playing",
        List.of(
            Panel.levels(new Axis("points", "per game")),
            Panel.differences(
                new Axis("difference on the same deals", "points per game"),
                "as many points as nearest")),
        rows);
  }

  public static PartBars parts() {
    return new PartBars(
        caption("parts", "Where 100 games go"),
        new Axis("of 100 games", ""),
        List.of(
            "won on the own draw",
            "won on a discard",
            "threw the winning tile",
            "somebody else won and it only paid",
            "wall game"),
        List.of(
            new PartBars.Bar(
                "nearest", Standing.BASELINE, List.of(8.14, 14.23, 15.6, 51.75, 10.28)),
            new PartBars.Bar(
                "hold-back at two exposures",
                Standing.COMPARED,
                List.of(7.9, 13.5, 9.1, 54.2, 15.3)),
            new PartBars.Bar("only passes", Standing.COMPARED, List.of(0.0, 0.4, 1.1, 97.9, 0.6)),
            new PartBars.Bar(LONG, Standing.COMPARED, List.of(2.1, 3.0, 88.0, 4.4, 2.5))),
        List.of(
            new PartBars.Change(1, 4, estimate(5.02, 4.31, 5.73)),
            new PartBars.Change(1, 2, estimate(-6.5, -7.2, -5.8)),
            new PartBars.Change(3, 0, estimate(-6.04, -6.6, -5.48)),
            new PartBars.Change(3, 1, estimate(-11.23, -12.1, -10.36))));
  }

  public static BandCurve curve() {
    List<BandCurve.Point> points = new ArrayList<>();
    double[] values = {-1.9, -0.4, 0, -0.12, -0.7, -1.3};
    for (int i = 0; i < values.length; i++) {
      double half = i == 2 ? 0 : 0.4 + 0.05 * i;
      points.add(
          new BandCurve.Point(
              i + 1,
              Integer.toString(i + 1),
              i == 2 ? Standing.BASELINE : Standing.COMPARED,
              estimate(values[i], values[i] - half, values[i] + half)));
    }
    return new BandCurve(
        caption("curve", "At how many tiles away is it time to hold back?"),
        new Axis("hold back when at least this far", "tiles away"),
        new Axis("difference on the same deals", "points per 100 games"),
        Scale.DIFFERENCE,
        "as many points as at 3",
        points);
  }

  /** Settings in words, many of them, and a level. */
  public static BandCurve levelCurve() {
    List<BandCurve.Point> points = new ArrayList<>();
    for (int i = 0; i < 14; i++) {
      double value = 20 + 3 * StrictMath.sin(i / 3.0);
      points.add(
          new BandCurve.Point(
              i,
              i == 0 ? "never at all" : "below " + (10 * i) + " tiles",
              Standing.COMPARED,
              estimate(value, value - 0.8, value + 0.8)));
    }
    return new BandCurve(
        caption("curve-of-levels", "Wins by the time of the change"),
        new Axis("change the line", "tiles left in the wall"),
        new Axis("wins", "in 100 games"),
        Scale.LEVEL,
        "",
        points);
  }

  /** One line over a few numbers, which stand at its points. */
  public static ExactLines exact() {
    double[] values = {0, 12.5, 23.4, 33, 41.44, 48.76, 55.2};
    List<ExactLines.Point> points = new ArrayList<>();
    for (int i = 0; i < values.length; i++) {
      points.add(new ExactLines.Point(2 * i, values[i]));
    }
    return new ExactLines(
        caption("exact", "Will a wanted tile come?"),
        new Axis("draws", ""),
        new Axis("chance that one comes", "in 100"),
        List.of(new ExactLines.Line("you draw one", points)));
  }

  /** Three lines over so many numbers that only some have labels, and no point a mark. */
  public static ExactLines manyExact() {
    List<ExactLines.Line> lines = new ArrayList<>();
    for (String name : List.of("you draw one", "somebody draws one, you included", "nobody does")) {
      List<ExactLines.Point> points = new ArrayList<>();
      for (int at = 0; at <= 99; at++) {
        points.add(new ExactLines.Point(at, (at + 1) * (3 + lines.size()) / 6.0));
      }
      lines.add(new ExactLines.Line(name, points));
    }
    return new ExactLines(
        caption("exact-of-many", "Three lines over a long range"),
        new Axis("tiles left in the wall", ""),
        new Axis("chance", "in 100"),
        lines);
  }

  public static SquareMap map() {
    double[][] middles = {
      {8.1, 5.3, 2.2, -0.4}, {5.2, 2.4, 0.3, -2.5}, {2.1, -0.2, -2.6, -5.1}, {0.1, -2.8, -5.9, 0}
    };
    List<List<Square>> rows = new ArrayList<>();
    for (double[] values : middles) {
      List<Square> row = new ArrayList<>();
      for (double value : values) {
        row.add(value == 0 ? Square.tooFew() : Square.of(estimate(value, value - 2, value + 2)));
      }
      rows.add(row);
    }
    return new SquareMap(
        caption("map", "Play on or hold back?"),
        new Axis("playing on instead of holding back", "points per 100 games"),
        new SquareMap.Side(new Axis("tiles away", ""), List.of("2", "3", "4", "5")),
        new SquareMap.Side(
            new Axis("wall left", "tiles"), List.of("60 to 46", "45 to 31", "30 to 16", "15 to 0")),
        rows,
        Optional.of(
            new SquareMap.Border(
                List.of(3, 3, 2, 1), "the rule to remember: play on left of this line")));
  }

  public static PairedDots pairs() {
    List<PairedDots.Row> rows = new ArrayList<>();
    rows.add(pair("Consecutive run 3, “the ferry”", 21.4, 30.2, "31.1", "25"));
    rows.add(pair("Evens 1", 12.2, 12.9, "22.0", "25"));
    rows.add(
        pair("Winds and dragons 4, with the long name that nobody uses", 9.8, 4.1, "9.2", "30"));
    rows.add(
        new PairedDots.Row(
            "Singles and pairs 2",
            OptionalDouble.of(0.7),
            OptionalDouble.empty(),
            List.of("", "50")));
    return new PairedDots(
        caption("pairs", "What you aim at, what wins"),
        new Axis("share", "in 100"),
        "line",
        "aimed at after the passes",
        "share of wins",
        List.of("wins in 100 when aimed at", "value"),
        rows);
  }

  public static CalibrationPlot calibration() {
    List<CalibrationPlot.Point> points = new ArrayList<>();
    for (int i = 0; i < 10; i++) {
      double said = 5 * i + 2.5;
      double seen = said * 0.92 + 0.5;
      points.add(
          new CalibrationPlot.Point(
              said, estimate(seen, seen - 1 - 0.1 * i, seen + 1 + 0.1 * i), 24_000L / (i + 1)));
    }
    return new CalibrationPlot(
        caption("calibration", "Do the foretold chances come true?"),
        new Axis("chance foretold", "in 100"),
        new Axis("came true", "in 100"),
        "decisions",
        points);
  }

  /** Texts that a picture has to protect itself from, and words with nowhere to break. */
  public static PairedDots awkward() {
    List<PairedDots.Row> rows = new ArrayList<>();
    for (String name :
        List.of(
            "<script>alert(1)</script>",
            "\"quoted\" & 'single'",
            "Donaudampfschifffahrtsgesellschaftskapitänswitwenrente",
            "雀雀雀雀雀雀雀雀雀雀雀雀雀雀雀雀雀雀雀雀雀雀雀雀",
            "bell\u0007 and\nnew line",
            "lone \ud800 half")) {
      rows.add(pair(name, rows.size(), 6 - rows.size(), "<b>" + rows.size() + "</b>", "&"));
    }
    return new PairedDots(
        new Caption(
            "awkward",
            "Names <that> & \"bite\", in a title so long that it cannot possibly stand in a single"
                + " line of a picture and so goes on in the next one",
            "A description with <tags> & \"marks\".",
            List.of("A note <b>with</b> tags.")),
        new Axis("share", "in 100"),
        "name",
        "first",
        "second",
        List.of("<i>", "&amp;"),
        rows);
  }

  private static PairedDots.Row pair(
      String label, double first, double second, String wins, String value) {
    return new PairedDots.Row(
        label, OptionalDouble.of(first), OptionalDouble.of(second), List.of(wins, value));
  }

  private static IntervalPlot.Row row(String label, Standing standing, PlotValue estimate) {
    return new IntervalPlot.Row(label, standing, List.of(Spot.of(estimate)));
  }

  private static PlotValue estimate(double value, double low, double high) {
    return new PlotValue(value, low, high);
  }

  private static Caption caption(String stem, String title) {
    return new Caption(
        stem,
        title,
        "An invented figure; its numbers stand in the table beside it.",
        List.of(
            "Bars show the range within which the true number lies in 95 of 100 runs.",
            "Programmed players, one card, one set of rules."),
        new Slide(
            stem.equals("map") ? "PROVISIONAL: 1,000 of 20,000 deals" : "",
            "What does the sample ask, in a sentence that says what was played and why?",
            List.of("Study: " + stem + ". Compared: two players.")));
  }
}
