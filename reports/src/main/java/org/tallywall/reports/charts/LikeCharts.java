package org.tallywall.reports.charts;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.tallywall.reports.results.CsvFile;
import org.tallywall.reports.results.Results;
import org.tallywall.reports.schema.AimColumns;
import org.tallywall.reports.schema.FamilyColumns;
import org.tallywall.reports.schema.HandChoiceColumns;
import org.tallywall.reports.schema.WayColumns;
import org.tallywall.reports.words.Listed;
import org.tallywall.reports.words.Ways;
import org.tallywall.reports.words.Wording;

/**
 * Which ways of playing need a chart of their own: one that would look like the chart of the way
 * they are compared with is not drawn, and the chart that is there says how near it is.
 */
final class LikeCharts {
  /** From here on, in 100, a dot is seen to lie elsewhere. */
  private static final double SEEN = 2;

  private static final int MOST_CHARTS = 3;

  /** Where ways of playing prefer sections of the card, the chart of each is asked for. */
  private static final int MOST_OF_SECTIONS = 12;

  private static final String PREFERS = "prefer-family";

  private final Results results;
  private final int most;
  private final List<String> drawn = new ArrayList<>();
  private final List<String> left = new ArrayList<>();

  /** How far a dot of a way that is not drawn lies from the same dot that is, at most. */
  private final Map<String, Double> alike = new LinkedHashMap<>();

  private LikeCharts(Results results, int most) {
    this.results = results;
    this.most = most;
  }

  static LikeCharts of(Results results, String file) {
    boolean sections = file.equals(FamilyColumns.FILE) && isAboutSections(results);
    LikeCharts charts = new LikeCharts(results, sections ? MOST_OF_SECTIONS : MOST_CHARTS);
    Map<String, Map<String, CsvFile.Row>> ways = new LinkedHashMap<>();
    for (CsvFile.Row row : results.rows(file)) {
      String name =
          row.text(file.equals(FamilyColumns.FILE) ? FamilyColumns.FAMILY : HandChoiceColumns.LINE);
      ways.computeIfAbsent(row.text(FamilyColumns.ARM), arm -> new HashMap<>()).put(name, row);
    }
    if (!ways.isEmpty()) {
      String baseline = Ways.baseline(results);
      String first = ways.containsKey(baseline) ? baseline : ways.keySet().iterator().next();
      charts.drawn.add(first);
      ways.forEach((arm, rows) -> charts.place(arm, furthest(rows, ways.get(first))));
    }
    return charts;
  }

  private static boolean isAboutSections(Results results) {
    return results.rows(WayColumns.FILE).stream()
        .anyMatch(row -> row.text(WayColumns.SETTING).endsWith(PREFERS));
  }

  private void place(String arm, double furthest) {
    if (drawn.contains(arm)) {
      return;
    }
    if (furthest < SEEN) {
      alike.put(arm, furthest);
    } else if (drawn.size() < most) {
      drawn.add(arm);
    } else {
      left.add(arm);
    }
  }

  private static double furthest(Map<String, CsvFile.Row> rows, Map<String, CsvFile.Row> others) {
    double furthest = 0;
    for (Map.Entry<String, CsvFile.Row> row : rows.entrySet()) {
      CsvFile.Row other = others.get(row.getKey());
      if (other == null) {
        return Double.POSITIVE_INFINITY;
      }
      furthest =
          Math.max(
              furthest,
              Math.max(
                  apart(
                      row.getValue().number(AimColumns.AIMED_SHARE),
                      other.number(AimColumns.AIMED_SHARE)),
                  apart(
                      row.getValue().number(AimColumns.SHARE_OF_WINS),
                      other.number(AimColumns.SHARE_OF_WINS))));
    }
    return furthest;
  }

  private static double apart(OptionalDouble one, OptionalDouble other) {
    return 100 * Math.abs(one.orElse(0) - other.orElse(0));
  }

  /** The ways of playing with a chart of their own. */
  List<String> drawn() {
    return List.copyOf(drawn);
  }

  /** What the chart of a way says of those that have none; empty where there are none. */
  Optional<String> note(String arm) {
    if (!drawn.get(0).equals(arm)) {
      return Optional.empty();
    }
    List<String> sentences = new ArrayList<>();
    if (!alike.isEmpty()) {
      double most = alike.values().stream().mapToDouble(Double::doubleValue).max().orElse(0);
      List<String> names = alike.keySet().stream().map(this::quoted).toList();
      String whose = "The chart of " + Listed.or(Room.first(names));
      sentences.add(
          most == 0
              ? whose + " is the same."
              : whose
                  + " would look the same: no dot lies more than %s in 100 from where it is here."
                      .formatted(Wording.upTo(most)));
    }
    if (!left.isEmpty()) {
      List<String> names = left.stream().map(this::quoted).toList();
      sentences.add("Not drawn, but in the tables: " + Listed.and(Room.first(names)) + ".");
    }
    return sentences.isEmpty() ? Optional.empty() : Optional.of(String.join(" ", sentences));
  }

  private String quoted(String arm) {
    return Wording.quoted(Ways.name(results, arm));
  }
}
