package org.tallywall.reports.words;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.tallywall.reports.figure.PlotValue;
import org.tallywall.reports.figure.Sign;
import org.tallywall.reports.results.CsvFile;
import org.tallywall.reports.results.Ranged;
import org.tallywall.reports.results.Results;
import org.tallywall.reports.schema.AimColumns;
import org.tallywall.reports.schema.FamilyColumns;
import org.tallywall.reports.schema.HandChoiceColumns;
import org.tallywall.reports.schema.OverallColumns;
import org.tallywall.reports.schema.WinRateColumns;
import org.tallywall.reports.table.Column;

/** What a study of one fixed table answers, in one sentence; every figure has its range. */
public final class TableHeadline {
  /** So many sections or lines fit into a sentence. */
  private static final int NAMED = 3;

  private final Results results;

  /**
   * Words for the results of one fixed table.
   *
   * @param results what a results folder holds
   */
  public TableHeadline(Results results) {
    this.results = results;
  }

  /**
   * The headline.
   *
   * @return the words
   */
  public String text() {
    return switch (Shown.of(results)) {
      case SEATS -> seats();
      case FAMILIES -> wins(FamilyColumns.FILE, FamilyColumns.FAMILY);
      case LINES -> wins(HandChoiceColumns.FILE, HandChoiceColumns.LINE);
      case ENDINGS -> endings();
      case PASSES -> passes();
    };
  }

  private String seats() {
    List<String> seats = new ArrayList<>();
    for (CsvFile.Row row : Ways.rows(results)) {
      String won = row.ranged(WinRateColumns.WIN_RATE).map(TableHeadline::inHundred).orElse("none");
      seats.add(Ways.seat(row) + " " + (seats.isEmpty() ? "won " : "") + won);
    }
    return "Of 100 games, " + Listed.and(seats) + "; " + nobody() + ".";
  }

  /** The sections or lines that most wins came from. */
  private String wins(String file, Column name) {
    List<CsvFile.Row> most =
        results.rows(file).stream()
            .filter(row -> row.count(AimColumns.WINS) > 0)
            .sorted(Comparator.comparingLong((CsvFile.Row row) -> -row.count(AimColumns.WINS)))
            .limit(NAMED)
            .toList();
    if (most.isEmpty()) {
      return somebody();
    }
    List<String> parts = new ArrayList<>();
    for (CsvFile.Row row : most) {
      String came = parts.isEmpty() ? " came with " : " with ";
      parts.add(
          row.ranged(AimColumns.SHARE_OF_WINS)
              .map(share -> around(share.inHundred(), came + row.text(name)))
              .orElse(row.text(name)));
    }
    return "Of 100 wins, " + Listed.and(parts) + ".";
  }

  private String endings() {
    Optional<Ranged> half = value("half-over");
    return half.isEmpty()
        ? somebody()
        : "Half of all games were over with %s; %s."
            .formatted(
                around(half.get(), " or more tiles left in the wall"),
                value("wall-game")
                    .map(share -> around(share.inHundred(), " of 100 were wall games"))
                    .orElse("no wall game"));
  }

  private String passes() {
    Optional<Ranged> dealt = value("away-before", "right-1");
    Optional<Ranged> passed = value("away-after", "left-1");
    if (dealt.isEmpty() || passed.isEmpty()) {
      return somebody();
    }
    String first =
        "The first three passes brought racks from %s tiles away to %s, averaged over all four"
            .formatted(plain(dealt.get()), plain(passed.get()));
    return value("stopped")
        .map(
            stopped ->
                first + "; " + around(stopped.inHundred(), " of 100 games went no further") + ".")
        .orElse(first + ".");
  }

  /**
   * How often anybody won at all.
   *
   * @return the words
   */
  public String somebody() {
    Optional<Ranged> won = value("won");
    return won.isEmpty()
        ? "No game was played."
        : "Of 100 games, %s; %s."
            .formatted(
                around(won.get().inHundred(), " were won"),
                voids() ? "nobody won the rest" : "the rest were wall games");
  }

  private String nobody() {
    return value("won")
        .map(won -> new Ranged(1 - won.value(), 1 - won.high(), 1 - won.low()))
        .map(lost -> "nobody won " + inHundred(lost))
        .orElse("nobody won the rest");
  }

  private boolean voids() {
    return value("void").filter(share -> share.value() > 0).isPresent();
  }

  private Optional<Ranged> value(String figure) {
    return value(figure, "");
  }

  private Optional<Ranged> value(String figure, String part) {
    return results.rows(OverallColumns.FILE).stream()
        .filter(row -> row.text(OverallColumns.FIGURE).equals(figure))
        .filter(row -> row.text(OverallColumns.PART).equals(part))
        .findFirst()
        .flatMap(row -> row.ranged(OverallColumns.VALUE));
  }

  /**
   * A share as a number in 100 with its range.
   *
   * @param share a share with its range
   * @return the words
   */
  public static String inHundred(Ranged share) {
    return plain(share.inHundred());
  }

  /**
   * A number with its range in brackets.
   *
   * @param number the number
   * @return the words
   */
  public static String plain(Ranged number) {
    PlotValue estimate = number.estimate();
    return "%s (%s)"
        .formatted(estimate.valueText(Sign.MINUS_ONLY), estimate.rangeText(Sign.MINUS_ONLY));
  }

  /** A number, words, and then its range in brackets. */
  private static String around(Ranged number, String words) {
    PlotValue estimate = number.estimate();
    return estimate.valueText(Sign.MINUS_ONLY)
        + words
        + (" (" + estimate.rangeText(Sign.MINUS_ONLY) + ")");
  }
}
