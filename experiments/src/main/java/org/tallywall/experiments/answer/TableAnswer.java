package org.tallywall.experiments.answer;

import java.util.List;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.experiments.study.Design;
import org.tallywall.experiments.study.Study;
import org.tallywall.experiments.tally.TableTally;
import org.tallywall.reports.table.Table;

/**
 * What a study with one fixed table answers.
 *
 * @param winRates how often each seat wins
 * @param handChoice which lines are aimed at and won with
 * @param families the same by family
 * @param endings how games ended
 * @param passes the Charleston
 */
public record TableAnswer(
    Table winRates, Table handChoice, Table families, Table endings, Table passes) {
  /**
   * Makes the tables.
   *
   * @param study the study
   * @param hands the card's hands
   * @param tally what was counted, one deal or more
   * @return the tables
   */
  public static TableAnswer of(Study study, ConcreteHands hands, TableTally tally) {
    Design.Table design = (Design.Table) study.design();
    double confidence = study.question().confidence();
    List<String> players = design.players().stream().map(PlayerLabel::of).toList();
    return new TableAnswer(
        WinRates.of(players, tally, confidence),
        HandChoice.of(hands, tally, confidence),
        FamilyChoice.of(hands, tally, confidence),
        Endings.of(tally.ends()),
        Passes.of(tally));
  }

  /**
   * All tables, each for a file of its own.
   *
   * @return in the order in which they are explained
   */
  public List<Table> all() {
    return List.of(winRates, handChoice, families, endings, passes);
  }
}
