package org.tallywall.experiments.answer;

import org.tallywall.experiments.stats.Estimate;
import org.tallywall.experiments.stats.Proportion;
import org.tallywall.experiments.tally.AimTally;
import org.tallywall.experiments.tally.AimTally.Count;
import org.tallywall.reports.schema.AimColumns;
import org.tallywall.reports.table.Cell;
import org.tallywall.reports.table.Column;
import org.tallywall.reports.table.Row;

/** What is said of a line of the card, or of the lines of a family, that players aim at. */
final class AimCells {
  private final AimTally aim;
  private final Way way;
  private final Certainty certainty;
  private final Row row;

  private AimCells(AimTally aim, Way way, Certainty certainty, Row row) {
    this.aim = aim;
    this.way = way;
    this.certainty = certainty;
    this.row = row;
  }

  /** Adds the cells to a row. */
  static Row add(AimTally aim, Way way, Certainty certainty, Row row) {
    AimCells cells = new AimCells(aim, way, certainty, row);
    cells.aims();
    cells.wins();
    cells.leads();
    cells.play();
    return row;
  }

  private void aims() {
    count(AimColumns.AIMED_AFTER_DEAL, Count.AFTER_DEAL);
    row.set(
        AimColumns.AIMED_AFTER_DEAL_SHARE,
        Cell.ratio(aim.counts().get(Count.AFTER_DEAL), way.seatGames()));
    count(AimColumns.AIMED_AFTER_PASSES, Count.AFTER_PASSES);
    share(
        AimColumns.AIMED_SHARE,
        AimColumns.AIMED_SHARE_METHOD,
        Measures.shareAimed(aim, way, certainty.confidence()));
    count(AimColumns.AIMED_AT_END, Count.AT_END);
  }

  /** One game a deal makes wins independent; else the share of wins stands alone. */
  private void wins() {
    long won = aim.counts().get(Count.WINS);
    count(AimColumns.WINS, Count.WINS);
    if (way.oneGame() && way.wins() > 0) {
      share(
          AimColumns.SHARE_OF_WINS,
          AimColumns.SHARE_OF_WINS_METHOD,
          new Proportion(won, way.wins()).estimate(certainty.confidence()));
    } else {
      row.set(AimColumns.SHARE_OF_WINS, Cell.ratio(won, way.wins()));
    }
  }

  /** How often aiming at it after the passes led to a win. */
  private void leads() {
    count(AimColumns.AIMED_AND_WON_WITH_IT, Count.AIMED_AND_WON_WITH_IT);
    if (aim.counts().get(Count.AFTER_PASSES) > 0) {
      long deals = way.tally().deals();
      share(
          AimColumns.WIN_RATE_WITH_IT,
          AimColumns.WIN_RATE_WITH_IT_METHOD,
          Measures.winRateWithIt(aim, deals, certainty.confidence()));
      share(
          AimColumns.WIN_RATE_WHEN_AIMED,
          AimColumns.WIN_RATE_METHOD,
          Measures.winRateOfAimers(aim, deals, certainty.confidence()));
    }
  }

  private void play() {
    count(AimColumns.SWITCHED_TO, Count.SWITCHED_TO);
    count(AimColumns.SWITCHED_FROM, Count.SWITCHED_FROM);
    mean(AimColumns.WALL_AT_WIN, Count.WALL);
    mean(AimColumns.JOKERS_AT_WIN, Count.JOKERS);
    mean(AimColumns.EXPOSURES_AT_WIN, Count.EXPOSURES);
    mean(AimColumns.POINTS_WHEN_WON, Count.POINTS);
  }

  private void share(Column column, Column method, Estimate estimate) {
    Estimate shown = certainty.shown(estimate);
    row.set(column, Measures.cell(shown)).set(method, Measures.method(shown));
  }

  private void count(Column column, Count what) {
    row.set(column, aim.counts().get(what));
  }

  private void mean(Column column, Count what) {
    row.set(column, Cell.ratio(aim.counts().get(what), aim.counts().get(Count.WINS)));
  }
}
