package org.tallywall.experiments.answer;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.experiments.study.Design;
import org.tallywall.reports.table.Table;

/**
 * What a person reads when a run is done.
 *
 * @param sentences the answer in words, a sentence or two each
 * @param tables short tables
 */
public record Summary(List<String> sentences, List<Table> tables) {
  /** What every page of results must say. */
  public static final String CAUTION =
      "These are programmed players, this card and these rules; the figures speak of points, not of"
          + " people or stakes.";

  /**
   * Copies the lists.
   *
   * @param sentences the answer in words
   * @param tables short tables
   */
  public Summary {
    sentences = List.copyOf(sentences);
    tables = List.copyOf(tables);
  }

  /**
   * The summary of an answer.
   *
   * @param answer the answer
   * @return its summary
   */
  public static Summary of(StudyAnswer answer) {
    Design design = answer.study().design();
    if (design instanceof Design.Comparison) {
      return new ArmsSummary(answer).summary();
    } else if (design instanceof Design.RoundRobin everyone) {
      List<String> sentences = new ArrayList<>();
      sentences.add(Extents.title(answer));
      return new Summary(sentences, List.of(RatingsSummary.of(answer, everyone)));
    } else if (design instanceof Design.Branch branch) {
      return BranchSummary.of(answer, branch);
    }
    TableSummary table = new TableSummary(answer.study(), answer.hands(), answer.tally().arm(0));
    return new Summary(List.of(), List.of(table.seats(), table.lines()));
  }
}
