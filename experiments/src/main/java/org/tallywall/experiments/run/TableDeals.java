package org.tallywall.experiments.run;

import org.tallywall.core.play.Deal;
import org.tallywall.experiments.study.Design;
import org.tallywall.experiments.study.Study;
import org.tallywall.experiments.tally.StudyTally;

/** One game a deal at one fixed table. */
final class TableDeals implements DealPlayer {
  private static final int EVERY_SEAT = 15;

  private final Study study;
  private final Tables tables;
  private final Tables.Table table;

  TableDeals(Study study, Design.Table design, Tables tables) {
    this.study = study;
    this.tables = tables;
    this.table = tables.table(design.players());
  }

  @Override
  public void play(long deal, StudyTally into) {
    tables.tally().count(into.arm(0), EVERY_SEAT);
    table.play(
        Deal.of(study.extent().seed(), deal, study.rules().tiles()),
        new GamePlace(deal, deal, "", GamePlace.ALL));
    into.arm(0).endDeal();
    into.endDeal(1);
  }
}
