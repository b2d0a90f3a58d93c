package org.tallywall.experiments.answer;

import java.util.List;
import org.tallywall.experiments.stats.Estimate;
import org.tallywall.experiments.stats.FewDeals;
import org.tallywall.experiments.stats.Interval;
import org.tallywall.experiments.stats.Method;
import org.tallywall.experiments.stats.Proportion;
import org.tallywall.experiments.tally.Counts;
import org.tallywall.experiments.tally.SeatTally;
import org.tallywall.experiments.tally.SeatTally.Count;
import org.tallywall.experiments.tally.TableTally;
import org.tallywall.reports.schema.WinRateColumns;
import org.tallywall.reports.table.Cell;
import org.tallywall.reports.table.Row;
import org.tallywall.reports.table.Table;
import org.tallywall.reports.table.TableBuilder;

/** How often each seat wins, what it earns, and where its games go. */
final class WinRates {
  private final Way way;
  private final Certainty certainty;

  private WinRates(Way way, Certainty certainty) {
    this.way = way;
    this.certainty = certainty;
  }

  static Table of(List<Way> ways, Certainty certainty) {
    TableBuilder table =
        Table.builder(
                WinRateColumns.FILE, "How often each way of playing wins, and where its games go")
            .columns(WinRateColumns.all());
    for (Way way : ways) {
      new WinRates(way, certainty).rows(table);
    }
    return table.build();
  }

  private void rows(TableBuilder table) {
    TableTally tally = way.tally();
    for (int at = 0; at < way.seats().size(); at++) {
      int seat = way.seats().get(at);
      SeatTally one = tally.seat(seat);
      Estimate rate = new Proportion(wins(one), tally.deals()).estimate(certainty.confidence());
      table.row(row(List.of(String.valueOf(seat), way.players().get(at)), one, 1, rate));
    }
    if (way.seats().size() > 1) {
      int seats = way.seats().size();
      boolean alike = way.players().stream().distinct().count() == 1;
      String who = alike && !way.name().equals(Way.TABLE) ? way.players().get(0) : "all";
      Certainty known = oneGame() ? new Certainty(certainty.confidence(), false) : certainty;
      WinRates all = new WinRates(way, known);
      table.row(all.row(List.of("all", who), tally.all(), seats, together()));
    }
  }

  /** Whether all seats are those of one game, so that their sums are fixed by construction. */
  private boolean oneGame() {
    return way.wholeTable() && way.tally().games() == way.tally().deals();
  }

  /** The win rate of all seats; exact where few games were won, or few were not. */
  private Estimate together() {
    TableTally tally = way.tally();
    long wins = wins(tally.all());
    if (Math.min(wins, way.seatGames() - wins) < FewDeals.ENOUGH) {
      return Estimate.of((double) wins / way.seatGames(), exact(wins), Method.CLOPPER_PEARSON);
    }
    return Measures.moments(tally.all().wins(), tally.deals())
        .estimate(certainty.confidence(), way.seats().size());
  }

  /**
   * Nobody won: then a win in a deal, in whatever seat, is so rare. Else the mean of the seats' own
   * limits, the allowance shared among them.
   */
  private Interval exact(long wins) {
    long deals = way.tally().deals();
    if (wins == 0) {
      return new Proportion(0, deals).clopperPearson(certainty.confidence());
    }
    int seats = way.seats().size();
    double each = 1 - (1 - certainty.confidence()) / seats;
    double low = 0;
    double high = 0;
    for (int seat : way.seats()) {
      Interval one = new Proportion(wins(way.tally().seat(seat)), deals).clopperPearson(each);
      low += one.low() / seats;
      high += one.high() / seats;
    }
    return new Interval(low, high);
  }

  private static long wins(SeatTally tally) {
    return tally.wins().sum().value().longValueExact();
  }

  /** A row of one seat, or of several together; {@code who} is seat and player. */
  private Row row(List<String> who, SeatTally tally, int seats, Estimate winRate) {
    long deals = way.tally().deals();
    long games = deals * seats;
    long wins = wins(tally);
    Estimate rate = certainty.shown(winRate);
    Estimate points =
        certainty.shown(
            Measures.moments(tally.points(), deals).estimate(certainty.confidence(), seats));
    Row row =
        new Row()
            .set(WinRateColumns.ARM, way.name())
            .set(WinRateColumns.SEAT, who.get(0))
            .set(WinRateColumns.PLAYER, who.get(1))
            .set(WinRateColumns.DEALS, deals)
            .set(WinRateColumns.GAMES, games)
            .set(WinRateColumns.WINS, wins)
            .set(WinRateColumns.WIN_RATE, Measures.cell(rate))
            .set(WinRateColumns.WIN_RATE_METHOD, Measures.method(rate))
            .set(WinRateColumns.POINTS, Measures.cell(points))
            .set(WinRateColumns.POINTS_METHOD, Measures.method(points));
    parts(row, tally.counts());
    return means(row, tally.counts(), games, wins);
  }

  private static void parts(Row row, Counts<Count> counts) {
    row.set(WinRateColumns.WON_ON_OWN_DRAW, counts.get(Count.WON_ON_OWN_DRAW))
        .set(WinRateColumns.WON_ON_DISCARD, counts.get(Count.WON_ON_DISCARD))
        .set(WinRateColumns.THREW_THE_WINNING_TILE, counts.get(Count.THREW))
        .set(WinRateColumns.ONLY_PAID, counts.get(Count.ONLY_PAID))
        .set(WinRateColumns.WALL_GAME, counts.get(Count.WALL_GAME))
        .set(WinRateColumns.VOID, counts.get(Count.VOID))
        .set(WinRateColumns.WON_AFTER_REDEEMING, counts.get(Count.WON_AFTER_REDEEMING))
        .set(WinRateColumns.WON_JOKERLESS, counts.get(Count.WON_JOKERLESS));
  }

  private static Row means(Row row, Counts<Count> counts, long games, long wins) {
    return row.set(WinRateColumns.ONE_AWAY_REACHED, Cell.ratio(counts.get(Count.ONE_AWAY), games))
        .set(WinRateColumns.WALL_AT_WIN, Cell.ratio(counts.get(Count.WALL_AT_WIN), wins))
        .set(WinRateColumns.JOKERS_AT_WIN, Cell.ratio(counts.get(Count.JOKERS_AT_WIN), wins))
        .set(WinRateColumns.EXPOSURES, Cell.ratio(counts.get(Count.EXPOSURES), games))
        .set(WinRateColumns.EXCHANGES, Cell.ratio(counts.get(Count.EXCHANGES), games));
  }
}
