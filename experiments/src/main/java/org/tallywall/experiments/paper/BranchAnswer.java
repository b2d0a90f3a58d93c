package org.tallywall.experiments.paper;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.reports.document.Part;
import org.tallywall.reports.figure.SquareMap;
import org.tallywall.reports.figure.SquareMap.Square;
import org.tallywall.reports.results.Results;

/** The answer of a study that asks when a choice holds. */
final class BranchAnswer {
  private static final String ONCE =
      "Each figure says what one choice at that moment is worth, on the same hidden tiles and the same"
          + " luck, and play as before afterwards; it does not say what a player is worth who always"
          + " chooses so.";

  private BranchAnswer() {}

  static Part.Answer of(Results results) {
    List<Part.Paragraph> paragraphs = new ArrayList<>();
    int[] counts = new int[4];
    List<SquareMap> maps = BranchChart.all(results);
    for (SquareMap map : maps) {
      map.squares().forEach(row -> row.forEach(square -> counts[place(square)]++));
      map.border()
          .ifPresent(
              border ->
                  paragraphs.add(Part.Paragraph.of(rule(results, map, border.columnsBefore()))));
    }
    int all = counts[0] + counts[1] + counts[2] + counts[3];
    String headline =
        "Of %d situations, it is clearly better in %d to %s and in %d to %s; in %d it could not be told, and %d came up too seldom to say anything."
            .formatted(
                all, counts[1], first(results), counts[2], second(results), counts[0], counts[3]);
    paragraphs.add(Part.Paragraph.of(ONCE));
    return new Part.Answer(headline, paragraphs);
  }

  /** The choice that all squares speak of. */
  private static String first(Results results) {
    return BranchChart.words(results.rows("branch").get(0).text("compared-with"));
  }

  /** The choices that it is compared with. */
  private static String second(Results results) {
    List<String> others =
        results.rows("branch").stream()
            .map(row -> BranchChart.words(row.text("option")))
            .distinct()
            .toList();
    return others.size() == 1 ? others.get(0) : "choose otherwise";
  }

  private static int place(Square square) {
    if (square.estimate().isEmpty()) {
      return 3;
    }
    int sign = square.estimate().get().clearSign();
    return sign == 0 ? 0 : sign > 0 ? 1 : 2;
  }

  /** The border in words: up to how many tiles away, for each part of the wall. */
  private static String rule(Results results, SquareMap map, List<Integer> columnsBefore) {
    List<String> rows = new ArrayList<>();
    for (int row = 0; row < columnsBefore.size(); row++) {
      int columns = columnsBefore.get(row);
      String away =
          columns == 0 ? "never" : "up to " + map.across().labels().get(columns - 1) + " away";
      rows.add("with %s tiles left %s".formatted(map.down().labels().get(row), away));
    }
    return "The rule to remember%s: %s %s; else %s."
        .formatted(
            map.caption().title().replaceFirst("^[^(]*", " ").stripTrailing(),
            first(results),
            String.join(", ", rows),
            second(results));
  }
}
