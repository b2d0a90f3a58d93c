package org.tallywall.experiments.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.experiments.stats.EveryLook;
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
 * @param early whether it is an answer before the end that had been fixed, or after one that was
 *     moved, so that its ranges have to hold at every look; where it has a rule for stopping, they
 *     do anyway
 */
public record StudyAnswer(
    Study study,
    ConcreteHands hands,
    StudyTally tally,
    Optional<Stopping> stopping,
    boolean early) {
  /**
   * The answer of a run that came to the end that was fixed for it.
   *
   * @param study the study
   * @param hands the card's hands
   * @param tally what was counted, one deal or more
   * @param stopping what was looked at while it ran; empty where the number of deals was fixed
   */
  public StudyAnswer(
      Study study, ConcreteHands hands, StudyTally tally, Optional<Stopping> stopping) {
    this(study, hands, tally, stopping, false);
  }

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
    return certainty.look().isPresent() ? tables.stream().map(LookedAt::named).toList() : tables;
  }

  /**
   * How sure its ranges are.
   *
   * @return the level, and whether ranges of a fixed number of deals may be shown
   */
  public Certainty certainty() {
    double confidence = study.question().confidence();
    return early && stopping.isEmpty()
        ? Certainty.at(new EveryLook(tally.deals(), confidence))
        : new Certainty(confidence, stopping.isEmpty());
  }
}
