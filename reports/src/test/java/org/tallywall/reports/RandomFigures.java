package org.tallywall.reports;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
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

/** Figures of any kind, with short and long names, small and large numbers. */
public final class RandomFigures {
  private static final String[] WORDS = {
    "a", "tile", "wall", "exposure", "between", "hold-back", "Konzentrationsfähigkeit", "Ü", "&"
  };

  private RandomFigures() {}

  public static Figure next(SplittableRandom random) {
    return switch (random.nextInt(7)) {
      case 0 -> plot(random);
      case 1 -> bars(random);
      case 2 -> curve(random);
      case 3 -> map(random);
      case 4 -> pairs(random);
      case 5 -> exact(random);
      default -> calibration(random);
    };
  }

  private static IntervalPlot plot(SplittableRandom random) {
    int panels = 1 + random.nextInt(2);
    double size = size(random);
    List<IntervalPlot.Row> rows = new ArrayList<>();
    for (int i = random.nextInt(14); i >= 0; i--) {
      List<Spot> spots = new ArrayList<>();
      for (int j = 0; j < panels; j++) {
        boolean none = random.nextInt(5) == 0;
        spots.add(none ? Spot.words("compared with") : Spot.of(estimate(random, size)));
      }
      rows.add(new IntervalPlot.Row(words(random, 9), standing(random), spots));
    }
    Panel levels = Panel.levels(axis(random));
    Panel differences = Panel.differences(axis(random), words(random, 8));
    List<Panel> both = panels == 1 ? List.of(differences) : List.of(levels, differences);
    return new IntervalPlot(caption(random), words(random, 3), both, rows);
  }

  private static PartBars bars(SplittableRandom random) {
    int parts = 2 + random.nextInt(5);
    List<PartBars.Bar> bars = new ArrayList<>();
    List<PartBars.Change> changes = new ArrayList<>();
    for (int bar = 0; bar < 1 + random.nextInt(6); bar++) {
      bars.add(new PartBars.Bar(words(random, 9), standing(random), shares(random, parts)));
      int first = random.nextInt(parts);
      changes.add(new PartBars.Change(bar, first, estimate(random, 20)));
      changes.add(new PartBars.Change(bar, (first + 1) % parts, estimate(random, 20)));
    }
    List<String> names = new ArrayList<>();
    for (int part = 0; part < parts; part++) {
      names.add(words(random, 6));
    }
    changes.removeIf(change -> change.bar() >= bars.size());
    return new PartBars(caption(random), axis(random), names, bars, changes);
  }

  private static List<Double> shares(SplittableRandom random, int parts) {
    List<Double> cuts = new ArrayList<>(List.of(0.0, 100.0));
    double near = random.nextInt(2) == 0 ? 100 : 6;
    for (int i = 1; i < parts; i++) {
      cuts.add(random.nextDouble() * near);
    }
    Collections.sort(cuts);
    List<Double> shares = new ArrayList<>();
    for (int i = 1; i < cuts.size(); i++) {
      shares.add(cuts.get(i) - cuts.get(i - 1));
    }
    return shares;
  }

  private static BandCurve curve(SplittableRandom random) {
    List<BandCurve.Point> points = new ArrayList<>();
    double size = size(random);
    double at = 0;
    for (int i = 2 + random.nextInt(20); i > 0; i--) {
      at += 0.5 + random.nextDouble();
      points.add(
          new BandCurve.Point(at, words(random, 3), standing(random), estimate(random, size)));
    }
    Scale scale = random.nextInt(2) == 0 ? Scale.LEVEL : Scale.DIFFERENCE;
    String zero = scale == Scale.LEVEL ? "" : words(random, 12);
    return new BandCurve(caption(random), axis(random), axis(random), scale, zero, points);
  }

  private static SquareMap map(SplittableRandom random) {
    int columns = 1 + random.nextInt(7);
    int rows = 1 + random.nextInt(7);
    double size = size(random);
    List<List<Square>> squares = new ArrayList<>();
    List<Integer> places = new ArrayList<>();
    for (int row = 0; row < rows; row++) {
      List<Square> line = new ArrayList<>();
      for (int column = 0; column < columns; column++) {
        boolean few = random.nextInt(6) == 0;
        line.add(few ? Square.tooFew() : Square.of(estimate(random, size)));
      }
      squares.add(line);
      places.add(random.nextInt(columns + 1));
    }
    return new SquareMap(
        caption(random),
        axis(random),
        side(random, columns),
        side(random, rows),
        squares,
        Optional.of(new SquareMap.Border(places, words(random, 14))));
  }

  private static SquareMap.Side side(SplittableRandom random, int count) {
    List<String> labels = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      labels.add(random.nextInt(100) + " to " + random.nextInt(100));
    }
    return new SquareMap.Side(axis(random), labels);
  }

  private static PairedDots pairs(SplittableRandom random) {
    double size = size(random);
    List<PairedDots.Row> rows = new ArrayList<>();
    for (int i = random.nextInt(60); i >= 0; i--) {
      OptionalDouble first = OptionalDouble.of(random.nextDouble() * size);
      OptionalDouble second =
          random.nextInt(4) == 0 ? OptionalDouble.empty() : OptionalDouble.of(size / 3);
      List<String> further = List.of(Integer.toString(random.nextInt(1000)), words(random, 2));
      rows.add(new PairedDots.Row(words(random, 8), first, second, further));
    }
    List<String> headings = List.of(words(random, 5), words(random, 2));
    return new PairedDots(
        caption(random),
        axis(random),
        words(random, 2),
        words(random, 9),
        words(random, 9),
        headings,
        rows);
  }

  private static ExactLines exact(SplittableRandom random) {
    double size = size(random);
    int count = 2 + random.nextInt(60);
    int step = 1 + random.nextInt(20);
    List<ExactLines.Line> lines = new ArrayList<>();
    for (int line = random.nextInt(3); line >= 0; line--) {
      List<ExactLines.Point> points = new ArrayList<>();
      for (int at = 0; at < count; at++) {
        points.add(new ExactLines.Point(at * step, random.nextDouble() * size));
      }
      lines.add(new ExactLines.Line(words(random, 8), points));
    }
    return new ExactLines(caption(random), axis(random), axis(random), lines);
  }

  private static CalibrationPlot calibration(SplittableRandom random) {
    List<CalibrationPlot.Point> points = new ArrayList<>();
    double foretold = 0;
    for (int i = random.nextInt(12); i >= 0; i--) {
      foretold += random.nextDouble() * 8 + 0.1;
      PlotValue seen = new PlotValue(foretold, foretold * 0.9, foretold * 1.1);
      points.add(new CalibrationPlot.Point(foretold, seen, 1 + random.nextInt(1_000_000)));
    }
    return new CalibrationPlot(caption(random), axis(random), axis(random), "games", points);
  }

  private static Caption caption(SplittableRandom random) {
    Slide slide =
        new Slide(
            random.nextBoolean() ? "" : "PROVISIONAL: " + words(random, 5),
            words(random, 30),
            List.of(words(random, 30)));
    return new Caption("random", words(random, 16), "Random.", List.of(words(random, 30)), slide);
  }

  private static Axis axis(SplittableRandom random) {
    return new Axis(words(random, 5), random.nextInt(3) == 0 ? "" : words(random, 5));
  }

  private static Standing standing(SplittableRandom random) {
    return random.nextInt(4) == 0 ? Standing.BASELINE : Standing.COMPARED;
  }

  private static PlotValue estimate(SplittableRandom random, double size) {
    double value = (random.nextDouble() - 0.4) * size;
    double half = random.nextInt(8) == 0 ? 0 : (0.02 + random.nextDouble()) * size / 4;
    return new PlotValue(value, value - half, value + half);
  }

  /** From hundredths to tens of thousands. */
  private static double size(SplittableRandom random) {
    return StrictMath.pow(10, random.nextInt(7) - 2);
  }

  private static String words(SplittableRandom random, int most) {
    List<String> words = new ArrayList<>();
    for (int i = random.nextInt(most); i >= 0; i--) {
      words.add(WORDS[random.nextInt(WORDS.length)]);
    }
    return String.join(" ", words);
  }
}
