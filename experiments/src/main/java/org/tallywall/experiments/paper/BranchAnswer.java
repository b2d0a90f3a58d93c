package org.tallywall.experiments.paper;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.experiments.results.Results;
import org.tallywall.reports.document.Part;
import org.tallywall.reports.figure.Figure;
import org.tallywall.reports.figure.SquareMap;
import org.tallywall.reports.figure.SquareMap.Square;

/** The answer of a study that asks when a choice holds. */
final class BranchAnswer {
  private BranchAnswer() {}

  static Part.Answer of(Results results) {
    List<Part.Paragraph> paragraphs = new ArrayList<>();
    int[] counts = new int[4];
    for (Figure figure : BranchChart.all(results)) {
      SquareMap map = (SquareMap) figure;
      map.squares().forEach(row -> row.forEach(square -> counts[place(square)]++));
      map.border()
          .ifPresent(
              border ->
                  paragraphs.add(
                      Part.Paragraph.of(
                          map.caption().title() + " " + upper(border.words()) + ".")));
    }
    int all = counts[0] + counts[1] + counts[2] + counts[3];
    String headline =
        "Of %d situations, the first choice is clearly better in %d and clearly worse in %d; in %d it could not be told, and %d came up too seldom to say anything."
            .formatted(all, counts[1], counts[2], counts[0], counts[3]);
    paragraphs.add(
        Part.Paragraph.of(
            "Each figure says what one choice at that moment is worth, on the same hidden tiles and"
                + " the same luck, and play as before afterwards; it does not say what a player is"
                + " worth who always chooses so."));
    return new Part.Answer(headline, paragraphs);
  }

  private static int place(Square square) {
    if (square.estimate().isEmpty()) {
      return 3;
    }
    int sign = square.estimate().get().clearSign();
    return sign == 0 ? 0 : sign > 0 ? 1 : 2;
  }

  private static String upper(String words) {
    return Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }
}
