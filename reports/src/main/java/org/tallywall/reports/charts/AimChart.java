package org.tallywall.reports.charts;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.tallywall.reports.figure.Axis;
import org.tallywall.reports.figure.Caption;
import org.tallywall.reports.figure.Figure;
import org.tallywall.reports.figure.PairedDots;
import org.tallywall.reports.results.CsvFile;
import org.tallywall.reports.results.Ranged;
import org.tallywall.reports.results.Results;
import org.tallywall.reports.schema.AimColumns;
import org.tallywall.reports.schema.FamilyColumns;
import org.tallywall.reports.schema.HandChoiceColumns;
import org.tallywall.reports.table.CellText;
import org.tallywall.reports.table.Rounding;
import org.tallywall.reports.words.Below;
import org.tallywall.reports.words.Ways;
import org.tallywall.reports.words.Wording;

/** What you aim at, what wins: a row for each section of the card, or for the lines won with. */
final class AimChart {
  /** Stem of the chart of sections. */
  static final String FAMILIES = "aim-and-win";

  /** Stem of the chart of lines. */
  static final String LINES = "aim-and-win-lines";

  /** The rows that fill a slide. */
  private static final int ROWS = 12;

  private static final double FEW = 9.95;

  private final Results results;
  private final String file;
  private final String arm;
  private final List<CsvFile.Row> rows;
  private final long aimed;

  private AimChart(Results results, String file, String arm) {
    this.results = results;
    this.file = file;
    this.arm = arm;
    List<CsvFile.Row> all =
        results.rows(file).stream().filter(row -> row.text(FamilyColumns.ARM).equals(arm)).toList();
    this.aimed = all.stream().mapToLong(row -> row.count(AimColumns.AIMED_AFTER_PASSES)).sum();
    this.rows =
        all.stream()
            .sorted(Comparator.comparingLong((CsvFile.Row row) -> -row.count(AimColumns.WINS)))
            .limit(ROWS)
            .toList();
  }

  /** Charts of sections and of lines, for each way of playing that looks otherwise. */
  static List<Figure> all(Results results) {
    List<Figure> figures = new ArrayList<>();
    for (String file : List.of(FamilyColumns.FILE, HandChoiceColumns.FILE)) {
      LikeCharts ways = LikeCharts.of(results, file);
      for (String arm : ways.drawn()) {
        int number = ways.drawn().indexOf(arm) + 1;
        new AimChart(results, file, arm).figure(number, ways.note(arm)).ifPresent(figures::add);
      }
    }
    return figures;
  }

  private Optional<PairedDots> figure(int number, Optional<String> alike) {
    boolean wins = rows.stream().anyMatch(row -> row.count(AimColumns.WINS) > 0);
    if (!wins || aimed == 0) {
      return Optional.empty();
    }
    boolean families = file.equals(FamilyColumns.FILE);
    List<String> further =
        List.of(
            "won with it, of 100 aiming at it",
            "won with any line, of 100 aiming at it",
            families ? "points per win" : "value");
    List<PairedDots.Row> pairs = rows.stream().map(this::pair).toList();
    String stem = (families ? FAMILIES : LINES) + (number == 1 ? "" : "-" + number);
    String whose = Ways.oneTable(results) ? "" : " (" + Ways.name(results, arm) + ")";
    String title =
        (families ? "What you aim at, what wins" : "The lines that win most, and who aimed at them")
            + whose;
    List<String> notes = new ArrayList<>();
    alike.ifPresent(notes::add);
    notes.add(Wording.RACKS);
    notes.addAll(Below.chart(results));
    Caption caption = Captions.of(results, stem, title, described(pairs), notes);
    return Optional.of(
        new PairedDots(
            caption,
            new Axis("share", "in 100"),
            families ? "section of the card" : "line",
            "aimed at after the passes",
            "of all wins",
            further,
            pairs));
  }

  private PairedDots.Row pair(CsvFile.Row row) {
    OptionalDouble share = row.number(AimColumns.SHARE_OF_WINS);
    String last =
        file.equals(FamilyColumns.FILE)
            ? row.number(AimColumns.POINTS_WHEN_WON).isPresent()
                ? number(row.need(AimColumns.POINTS_WHEN_WON), 0)
                : ""
            : row.text(HandChoiceColumns.VALUE);
    return new PairedDots.Row(
        label(row),
        hundredfold(row.number(AimColumns.AIMED_SHARE)),
        hundredfold(share),
        List.of(won(row, "win-rate-with-it"), won(row, "win-rate-when-aimed"), last));
  }

  private static OptionalDouble hundredfold(OptionalDouble share) {
    return share.isPresent() ? OptionalDouble.of(100 * share.getAsDouble()) : share;
  }

  private static String won(CsvFile.Row row, String column) {
    return row.ranged(column).map(Ranged::inHundred).map(share -> few(share.value())).orElse("");
  }

  /** One place more where a whole number would say next to nothing. */
  private static String few(double number) {
    return number(number, number > 0 && number < FEW ? 1 : 0);
  }

  private String label(CsvFile.Row row) {
    if (file.equals(FamilyColumns.FILE)) {
      return row.text(FamilyColumns.FAMILY);
    }
    String nickname = row.text(HandChoiceColumns.NICKNAME);
    return row.text(HandChoiceColumns.LINE) + (nickname.isEmpty() ? "" : ", " + nickname);
  }

  private static String number(double value, int places) {
    return CellText.grouped(Rounding.nearest(value, places).toPlainString());
  }

  private static String among(List<String> further) {
    return further.get(0).isEmpty() || further.get(1).isEmpty()
        ? ""
        : "; of 100 that aimed at it %s won with it, %s with any line"
            .formatted(further.get(0), further.get(1));
  }

  private static String described(List<PairedDots.Row> pairs) {
    List<String> sentences = new ArrayList<>();
    for (PairedDots.Row pair : pairs) {
      String wins =
          pair.second().isPresent() ? number(pair.second().getAsDouble(), 1) + " of 100 wins" : "";
      sentences.add(
          pair.label()
              + (": aimed at by " + number(pair.first().orElse(0), 1) + " of 100 players")
              + (wins.isEmpty() ? "" : ", " + wins)
              + among(pair.further())
              + ".");
    }
    return String.join(" ", sentences);
  }
}
