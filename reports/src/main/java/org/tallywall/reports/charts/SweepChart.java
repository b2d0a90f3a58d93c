package org.tallywall.reports.charts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.tallywall.reports.figure.Axis;
import org.tallywall.reports.figure.BandCurve;
import org.tallywall.reports.figure.BandCurve.Point;
import org.tallywall.reports.figure.Caption;
import org.tallywall.reports.figure.PlotValue;
import org.tallywall.reports.figure.Scale;
import org.tallywall.reports.figure.Sign;
import org.tallywall.reports.figure.Standing;
import org.tallywall.reports.results.CsvFile;
import org.tallywall.reports.results.Ranged;
import org.tallywall.reports.results.Results;
import org.tallywall.reports.schema.SweepColumns;
import org.tallywall.reports.words.MeasureWords;
import org.tallywall.reports.words.SettingWords;

/** At how many? A curve over the values of a setting. */
final class SweepChart {
  private static final Pattern NUMBER = Pattern.compile("-?\\d{1,9}(\\.\\d{1,9})?");

  private SweepChart() {}

  static Optional<BandCurve> of(Results results) {
    List<CsvFile.Row> rows = results.rows(SweepColumns.FILE);
    List<CsvFile.Row> there = there(rows);
    List<Point> points = points(Room.first(there));
    if (points.size() < 2) {
      return Optional.empty();
    }
    String setting = SettingWords.setting(results);
    String measure = first(rows, "measure");
    String unit = MeasureWords.of(measure).map(MeasureWords::unit).orElse("in 100");
    List<String> sentences = new ArrayList<>();
    String baseline = "";
    for (Point point : points) {
      boolean itself = point.standing() == Standing.BASELINE;
      baseline = itself ? point.label() : baseline;
      String size =
          itself
              ? "what the others are compared with"
              : point.estimate().text(Sign.PLUS_AND_MINUS) + " " + unit;
      sentences.add("At " + point.label() + ": " + size + ".");
    }
    Room.first(rows).stream()
        .filter(row -> !isBaseline(row) && row.ranged(SweepColumns.DIFFERENCE).isEmpty())
        .map(
            row ->
                "At "
                    + row.text(SweepColumns.VALUE)
                    + ": too few deals came out differently to say.")
        .forEach(sentences::add);
    List<String> notes = new ArrayList<>();
    notes.add("In study files the setting is called " + setting + ".");
    notes.addAll(Room.below(results, there.size()));
    Caption caption =
        Captions.of(results, "setting", title(results, rows), String.join(" ", sentences), notes);
    return Optional.of(
        new BandCurve(
            caption,
            new Axis(SettingWords.heading(results).orElse(SettingWords.words(setting)), ""),
            new Axis("difference on the same deals", unit),
            Scale.DIFFERENCE,
            baseline.isEmpty() ? "the same" : "the same as at " + baseline,
            points));
  }

  private static String title(Results results, List<CsvFile.Row> rows) {
    boolean numbers =
        rows.stream().allMatch(row -> NUMBER.matcher(row.text(SweepColumns.VALUE)).matches());
    String asked = numbers ? "At how many? " : "Compared: ";
    return asked
        + SettingWords.heading(results)
            .map(words -> (numbers ? "A" : "a") + " player that " + words)
            .orElse(SettingWords.words(SettingWords.setting(results)));
  }

  private static String first(List<CsvFile.Row> rows, String column) {
    return rows.stream()
        .map(row -> row.text(column))
        .filter(text -> !text.isEmpty())
        .findFirst()
        .orElse("");
  }

  private static List<CsvFile.Row> there(List<CsvFile.Row> rows) {
    return rows.stream()
        .filter(row -> isBaseline(row) || row.ranged(SweepColumns.DIFFERENCE).isPresent())
        .toList();
  }

  /** Values that are numbers in order stand where they belong, others side by side. */
  private static List<Point> points(List<CsvFile.Row> there) {
    boolean numbers = IntStream.range(0, there.size()).allMatch(at -> inOrder(there, at));
    List<Point> points = new ArrayList<>();
    for (int at = 0; at < there.size(); at++) {
      CsvFile.Row row = there.get(at);
      points.add(
          new Point(
              numbers ? row.need(SweepColumns.VALUE) : at,
              row.text(SweepColumns.VALUE),
              isBaseline(row) ? Standing.BASELINE : Standing.COMPARED,
              isBaseline(row)
                  ? new PlotValue(0, 0, 0)
                  : row.ranged(SweepColumns.DIFFERENCE)
                      .map(Ranged::inHundred)
                      .orElseThrow()
                      .estimate()));
    }
    return points;
  }

  private static boolean isBaseline(CsvFile.Row row) {
    return row.text(SweepColumns.COMPARED_WITH).equals("yes");
  }

  private static boolean inOrder(List<CsvFile.Row> rows, int at) {
    if (!NUMBER.matcher(rows.get(at).text(SweepColumns.VALUE)).matches()) {
      return false;
    }
    return at == 0
        || NUMBER.matcher(rows.get(at - 1).text(SweepColumns.VALUE)).matches()
            && rows.get(at).need(SweepColumns.VALUE) > rows.get(at - 1).need(SweepColumns.VALUE);
  }
}
