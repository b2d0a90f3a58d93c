package org.tallywall.experiments.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.tallywall.experiments.results.Ranged;
import org.tallywall.experiments.results.Results;
import org.tallywall.experiments.results.Sheet;
import org.tallywall.reports.figure.Axis;
import org.tallywall.reports.figure.BandCurve;
import org.tallywall.reports.figure.BandCurve.Point;
import org.tallywall.reports.figure.Caption;
import org.tallywall.reports.figure.Estimate;
import org.tallywall.reports.figure.Scale;
import org.tallywall.reports.figure.Sign;
import org.tallywall.reports.figure.Standing;

/** At how many? A curve over the values of a setting. */
final class SweepChart {
  private SweepChart() {}

  /** A value of the setting with the last words of its name, such as "away at least 3". */
  static String label(Results results, String value) {
    return words(setting(results)) + " " + value;
  }

  private static String setting(Results results) {
    Object setting = results.study().object("sweep").get("setting");
    return setting instanceof String text ? text : "setting";
  }

  private static String words(String setting) {
    return setting.substring(setting.lastIndexOf('.') + 1).replace('-', ' ');
  }

  static Optional<BandCurve> of(Results results) {
    List<Sheet.Row> rows =
        results.rows("sweep").stream()
            .filter(row -> row.text("role").isEmpty() || row.text("role").equals("primary"))
            .toList();
    List<Point> points = points(rows);
    if (points.size() < 2) {
      return Optional.empty();
    }
    String setting = setting(results);
    String measure = rows.get(0).text("measure");
    String unit = MeasureWords.of(measure).map(MeasureWords::unit).orElse("in 100");
    String baseline = rows.get(0).text("baseline");
    List<String> sentences = new ArrayList<>();
    for (Point point : points) {
      String size =
          point.standing() == Standing.BASELINE
              ? "what the others are compared with"
              : point.estimate().text(Sign.PLUS_AND_MINUS) + " " + unit;
      sentences.add("At " + point.label() + ": " + size + ".");
    }
    Caption caption =
        new Caption(
            "setting",
            "At how many? " + words(setting),
            String.join(" ", sentences),
            Notes.under(results));
    return Optional.of(
        new BandCurve(
            caption,
            new Axis(words(setting), setting.contains(".") ? setting : ""),
            new Axis("difference on the same deals", unit),
            Scale.DIFFERENCE,
            "the same as at " + baseline,
            points));
  }

  /** Values that are numbers in order stand where they belong, others side by side. */
  private static List<Point> points(List<Sheet.Row> rows) {
    List<Sheet.Row> there =
        rows.stream()
            .filter(row -> isBaseline(row) || row.ranged("difference").isPresent())
            .toList();
    boolean numbers = IntStream.range(0, there.size()).allMatch(at -> inOrder(there, at));
    List<Point> points = new ArrayList<>();
    for (int at = 0; at < there.size(); at++) {
      Sheet.Row row = there.get(at);
      points.add(
          new Point(
              numbers ? row.need("value") : at,
              row.text("value"),
              isBaseline(row) ? Standing.BASELINE : Standing.COMPARED,
              isBaseline(row)
                  ? new Estimate(0, 0, 0)
                  : row.ranged("difference").map(Ranged::inHundred).orElseThrow().estimate()));
    }
    return points;
  }

  private static boolean isBaseline(Sheet.Row row) {
    return row.text("value").equals(row.text("baseline"));
  }

  private static boolean inOrder(List<Sheet.Row> rows, int at) {
    String text = rows.get(at).text("value");
    boolean number = text.matches("-?\\d{1,9}(\\.\\d{1,9})?");
    return number
        && (at == 0
            || rows.get(at - 1).text("value").matches("-?\\d{1,9}(\\.\\d{1,9})?")
                && rows.get(at).need("value") > rows.get(at - 1).need("value"));
  }
}
