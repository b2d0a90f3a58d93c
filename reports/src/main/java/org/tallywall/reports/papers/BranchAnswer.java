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
      "Each number says what that one choice is worth, with the same hidden tiles, the same luck, and"
          + " play as before from then on. It does not say what a player who always chooses this way"
          + " is worth.";

  private static final String COUNTED =
      "Each game counts once, at its first decision that fits a situation, so a late situation holds"
          + " only games in which none fit earlier.";

  private static final String FILE =
      "The file branch.csv has it the other way around: the second choice minus the first.";

  private static final String CLEAR =
      "\u201cClear\u201d means clear with all situations counted together: among many, a few look clear"
          + " by luck.";

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
    return "%s %s clearly more %s in %s of %s situations, clearly fewer in %s%s%s."
        .formatted(
            BranchWords.sentence(BranchWords.of(rows.get(0)).instead()),
            measure.past(),
            measure.noun(),
            none(counts[MORE]),
            rows.size(),
            none(counts[LESS]),
            told("; %s were too close to call", counts[OPEN]),
            told("; %s came up in fewer than " + BranchColumns.FEW + " deals", counts[SELDOM]));
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
