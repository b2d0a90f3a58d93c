package org.tallywall.reports.papers;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.reports.charts.BranchChart;
import org.tallywall.reports.charts.BranchMap;
import org.tallywall.reports.document.Part;
import org.tallywall.reports.results.Results;
import org.tallywall.reports.results.Sheet;
import org.tallywall.reports.words.BranchWords;
import org.tallywall.reports.words.MeasureWords;

/** The answer of a study that asks when a choice holds. */
final class BranchAnswer {
  private static final String ONCE =
      "Each figure says what one choice at that moment is worth, on the same hidden tiles and the same"
          + " luck, and play as before afterwards; it does not say what a player is worth who always"
          + " chooses so.";

  private static final String CLEAR =
      "Clear is what stays clear when all situations are counted together: among many, a few look"
          + " clear by luck.";
  private static final int OPEN = 0;
  private static final int MORE = 1;
  private static final int LESS = 2;
  private static final int SELDOM = 3;

  private BranchAnswer() {}

  static Part.Answer of(Results results) {
    List<BranchMap> maps = BranchChart.all(results);
    List<Part.Paragraph> paragraphs = new ArrayList<>();
    maps.forEach(map -> paragraphs.add(Part.Paragraph.of(map.rule())));
    paragraphs.add(Part.Paragraph.of(ONCE + BranchWords.moment(results)));
    paragraphs.add(Part.Paragraph.of(CLEAR));
    return new Part.Answer(headline(results), paragraphs);
  }

  /** How many situations speak for what, over all squares and options. */
  private static String headline(Results results) {
    String primary = results.study().text("primary");
    int[] counts = new int[4];
    List<Sheet.Row> rows =
        results.rows("branch").stream()
            .filter(row -> primary.isEmpty() || row.text("measure").equals(primary))
            .toList();
    rows.forEach(row -> counts[place(results, row)]++);
    String measure = MeasureWords.of(primary).map(MeasureWords::heading).orElse("points");
    return "%s: %s clearly more in %d of %d situations, clearly less in %d; in %d it could not be told, and %d came up too seldom to say anything."
        .formatted(
            BranchWords.sentence(BranchWords.of(rows.get(0)).instead()),
            measure,
            counts[MORE],
            rows.size(),
            counts[LESS],
            counts[OPEN],
            counts[SELDOM]);
  }

  private static int place(Results results, Sheet.Row row) {
    if (row.ranged("difference").isEmpty()) {
      return row.text("method").equals("too few") ? SELDOM : OPEN;
    }
    int sign = BranchWords.clear(row, results.confidence());
    return sign == 0 ? OPEN : sign < 0 ? MORE : LESS;
  }
}
