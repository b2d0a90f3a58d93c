package org.tallywall.experiments.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.experiments.stop.Stopping;
import org.tallywall.experiments.study.Study;
import org.tallywall.experiments.tally.StudyTally;
import org.tallywall.reports.table.Table;

/**
 * What a study answers.
 *
 * @param study the study
 * @param hands the card's hands
 * @param tally what was counted, one deal or more
 * @param stopping what was looked at while it ran; empty where the number of deals was fixed
 */
public record StudyAnswer(
    Study study, ConcreteHands hands, StudyTally tally, Optional<Stopping> stopping) {
  /**
   * All tables, each for a file of its own.
   *
   * @param ways the ways of playing, with what was counted of each
   * @param own the tables that only the study's design has
   * @return in the order in which they are explained
   */
  public List<Table> all(List<Way> ways, List<Table> own) {
    Certainty certainty = certainty();
    List<Table> tables = new ArrayList<>();
    tables.add(WinRates.of(ways, certainty));
    tables.addAll(own);
    tables.add(HandChoice.of(hands, ways, certainty));
    tables.add(FamilyChoice.of(hands, ways, certainty));
    tables.add(Endings.of(ways));
    tables.add(Passes.of(ways));
    tables.add(RulesTable.of(study.rules()));
    return tables;
  }

  /**
   * How sure its ranges are.
   *
   * @return the level, and whether ranges of a fixed number of deals may be shown
   */
  public Certainty certainty() {
    return new Certainty(study.question().confidence(), stopping.isEmpty());
  }
}
