package org.tallywall.experiments.answer;

import java.util.List;
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
}
