package org.tallywall.experiments.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.experiments.stop.Stopping;
import org.tallywall.experiments.study.Design;
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
   * @return in the order in which they are explained
   */
  public List<Table> all() {
    List<Way> ways = Way.of(study, tally);
    Certainty certainty = certainty();
    List<Table> tables = new ArrayList<>();
    tables.add(WinRates.of(ways, certainty));
    Design design = study.design();
    if (design instanceof Design.Comparison comparison) {
      List<Difference> differences = differences();
      tables.add(Differences.of(differences));
      if (design instanceof Design.Sweep sweep) {
        tables.add(SweepTable.of(sweep, ways, differences));
      }
      tables.add(Effects.defence(study, comparison.ways(), tally, certainty));
    } else if (design instanceof Design.RoundRobin everyone) {
      tables.addAll(Ratings.all(study, everyone, tally));
    } else if (design instanceof Design.Branch branch) {
      tables.add(Effects.branch(study, branch, tally, certainty));
    }
    tables.add(HandChoice.of(hands, ways, certainty));
    tables.add(FamilyChoice.of(hands, ways, certainty));
    tables.add(Endings.of(ways));
    tables.add(Passes.of(ways));
    return tables;
  }

  Certainty certainty() {
    return new Certainty(study.question().confidence(), stopping.isEmpty());
  }

  /** The comparisons of ways of playing, all measures of each. */
  List<Difference> differences() {
    return Difference.of(this);
  }
}
