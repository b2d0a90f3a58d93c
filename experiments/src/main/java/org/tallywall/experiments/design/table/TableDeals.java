package org.tallywall.experiments.design.table;

import org.tallywall.experiments.deals.DealPlayer;
import org.tallywall.experiments.deals.Tables;
import org.tallywall.experiments.run.GamePlace;
import org.tallywall.experiments.tally.StudyTally;

/** One game a deal at one fixed table. */
final class TableDeals implements DealPlayer {
  private static final int EVERY_SEAT = 15;

  private final Tables tables;
  private final Tables.Table table;

  TableDeals(TableDesign design, Tables tables) {
    this.tables = tables;
    this.table = tables.table(design.players());
  }

  @Override
  public void play(long deal, StudyTally into) {
    tables.tally().count(into.arm(0), EVERY_SEAT);
    table.play(tables.deal(deal), new GamePlace(deal, deal, "", GamePlace.ALL));
    into.arm(0).endDeal();
    into.endDeal(1);
  }
}
