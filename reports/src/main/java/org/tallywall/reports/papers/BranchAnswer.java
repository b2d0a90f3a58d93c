package org.tallywall.reports.papers;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.reports.charts.BranchChart;
import org.tallywall.reports.charts.BranchMap;
import org.tallywall.reports.document.Part;
import org.tallywall.reports.results.CsvFile;
import org.tallywall.reports.results.Results;
import org.tallywall.reports.schema.BranchColumns;
import org.tallywall.reports.words.BranchWords;
import org.tallywall.reports.words.MeasureWords;

/** The answer of a study that asks when a choice holds. */
final class BranchAnswer {
  private static final String ONCE =
      "Each figure says what one choice at that moment is worth, on the same hidden tiles and the same"
          + " luck, and play as before afterwards; it does not say what a player is worth who always"
          + " chooses so.";

  private static final String COUNTED =
      "Each game is counted once, at its first decision that fits a situation; a late situation holds"
          + " only games in which none fitted earlier.";

  private static final String FILE =
      "The file branch.csv has it the other way round: the second choice less the first.";

  private static final String CLEAR =
      "Clear is what stays clear when all situations are counted together: among many, a few look"
          + " clear by luck.";

  private static final String RULE =
      "A rule needs clear situations on both sides of a border and none that contradict it.";

  private static final int OPEN = 0;
  private static final int MORE = 1;
  private static final int LESS = 2;
  private static final int SELDOM = 3;

  private BranchAnswer() {}

  static Part.Answer of(Results results) {
    List<BranchMap> maps = BranchChart.all(results);
    List<Part.Paragraph> paragraphs = new ArrayList<>();
    maps.forEach(map -> paragraphs.add(Part.Paragraph.of(map.rule())));
    if (maps.stream().anyMatch(map -> map.border().isEmpty())) {
      paragraphs.add(Part.Paragraph.of(RULE));
    }
    paragraphs.add(Part.Paragraph.of(ONCE + BranchWords.moment(results)));
    paragraphs.add(Part.Paragraph.of(COUNTED));
    paragraphs.add(Part.Paragraph.of(CLEAR + " " + FILE));
    return new Part.Answer(headline(results), paragraphs);
  }

  /** How many situations speak for what, over all situations and options. */
  private static String headline(Results results) {
    String primary = results.study().text("primary");
    int[] counts = new int[4];
    List<CsvFile.Row> rows =
        results.rows(BranchColumns.FILE).stream()
            .filter(row -> primary.isEmpty() || row.text(BranchColumns.MEASURE).equals(primary))
            .toList();
    rows.forEach(row -> counts[place(results, row)]++);
    MeasureWords measure = MeasureWords.of(primary).orElse(MeasureWords.POINTS);
    return "%s %s clearly more %s in %s of %s situations and clearly fewer in %s%s%s."
        .formatted(
            BranchWords.sentence(BranchWords.of(rows.get(0)).instead()),
            measure.past(),
            measure.noun(),
            none(counts[MORE]),
            rows.size(),
            none(counts[LESS]),
            told("; %s could not be told", counts[OPEN]),
            told(
                "; in %s, fewer than " + BranchColumns.FEW + " deals were counted",
                counts[SELDOM]));
  }

  private static String none(int count) {
    return count == 0 ? "none" : Integer.toString(count);
  }

  private static String told(String words, int count) {
    return count == 0 ? "" : words.formatted(count);
  }

  private static int place(Results results, CsvFile.Row row) {
    boolean few = row.text(BranchColumns.METHOD).equals("too few");
    if (row.ranged(BranchColumns.DIFFERENCE).isEmpty()) {
      return few ? SELDOM : OPEN;
    }
    int sign = BranchWords.clear(row, results.confidence());
    return sign == 0 ? OPEN : sign < 0 ? MORE : LESS;
  }
}
