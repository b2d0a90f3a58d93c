package org.tallywall.reports.tables;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tallywall.reports.figure.Sign;
import org.tallywall.reports.results.CsvFile;
import org.tallywall.reports.results.Ranged;
import org.tallywall.reports.results.Results;
import org.tallywall.reports.schema.RatingColumns;
import org.tallywall.reports.schema.RatingDifferenceColumns;

/**
 * Which players next to each other in a ladder can be told apart: those whose difference has a
 * range without 0. Two ranges that overlap say little of it. Players that are equal lie closest to
 * their neighbors of all, so that such a range leaves 0 out more rarely than its level says.
 */
public final class RatingNeighbors {
  private final Results results;
  private final Map<List<String>, CsvFile.Row> pairs = new HashMap<>();

  /**
   * The neighbors of a ladder.
   *
   * @param results its results
   */
  public RatingNeighbors(Results results) {
    this.results = results;
    results
        .rows(RatingDifferenceColumns.FILE)
        .forEach(
            row ->
                pairs.putIfAbsent(
                    List.of(
                        row.text(RatingDifferenceColumns.ARM),
                        row.text(RatingDifferenceColumns.OTHER)),
                    row));
  }

  /**
   * What can be told.
   *
   * @return two sentences at most, one for each kind of pair; empty where no pair is known
   */
  public String sentences() {
    List<String> apart = new ArrayList<>();
    List<String> close = new ArrayList<>();
    List<String> names =
        results.rows(RatingColumns.FILE).stream().map(row -> row.text(RatingColumns.ARM)).toList();
    for (int at = 0; at + 1 < names.size(); at++) {
      String upper = names.get(at);
      String lower = names.get(at + 1);
      difference(upper, lower)
          .ifPresent(
              range -> {
                if (range.low() > 0) {
                  apart.add(upper + " is above " + lower + " (by " + text(range) + ")");
                } else {
                  close.add(upper + " and " + lower);
                }
              });
    }
    return sentence("Neighbors told apart by the range of their difference: ", apart)
        + (apart.isEmpty() || close.isEmpty() ? "" : " ")
        + sentence("Neighbors too close to call: ", close);
  }

  /**
   * Whether one player is above another.
   *
   * @param upper the one
   * @param lower the other
   * @return whether the range of their difference leaves out 0; empty where there is none
   */
  public Optional<Boolean> above(String upper, String lower) {
    return difference(upper, lower).map(range -> range.low() > 0);
  }

  private static String sentence(String begin, List<String> pairs) {
    return pairs.isEmpty() ? "" : begin + String.join("; ", pairs) + ".";
  }

  private static String text(Ranged range) {
    return range.estimate().valueText(Sign.MINUS_ONLY)
        + ", "
        + range.estimate().rangeText(Sign.MINUS_ONLY);
  }

  private Optional<Ranged> difference(String upper, String lower) {
    return Optional.ofNullable(pairs.get(List.of(upper, lower)))
        .flatMap(row -> row.ranged(RatingDifferenceColumns.DIFFERENCE));
  }
}
