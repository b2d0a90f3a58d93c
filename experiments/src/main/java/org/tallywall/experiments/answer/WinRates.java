package org.tallywall.experiments.answer;

import java.util.List;
import org.tallywall.experiments.stats.Estimate;
import org.tallywall.experiments.stats.FewDeals;
import org.tallywall.experiments.stats.Interval;
import org.tallywall.experiments.stats.Method;
import org.tallywall.experiments.stats.Proportion;
import org.tallywall.experiments.tally.SeatTally;
import org.tallywall.experiments.tally.SeatTally.Count;
import org.tallywall.experiments.tally.TableTally;
import org.tallywall.reports.table.Cell;
import org.tallywall.reports.table.Column;
import org.tallywall.reports.table.Table;
import org.tallywall.reports.table.TableBuilder;

/** How often each seat wins, what it earns, and where its games go. */
final class WinRates {
  private static final String GAMES = "share of games";

  private final Way way;
  private final Certainty certainty;

  private WinRates(Way way, Certainty certainty) {
    this.way = way;
    this.certainty = certainty;
  }

  static List<Column> columns() {
    return List.of(
        Column.text("arm", "The way of playing; \"table\" where one fixed table is played."),
        Column.text(
            "seat", "The seat, 0 is East and turns go to the right; \"all\" for all counted."),
        Column.text("player", "Who sits there; \"all\" where they differ."),
        Column.integer("deals", "deals", "Deals played."),
        Column.integer("games", "games", "Games of the seat: one a deal for each seat."),
        Column.integer("wins", "games", "Games won."),
        Column.rateInterval(
            "win-rate",
            GAMES,
            "Share of its games that the seat won. Where \"all\" are the four seats of one and the"
                + " same game there is no interval here or at the points: together they win every"
                + " game that anybody wins, and their points are 0."),
        Column.text("win-rate-method", "How the interval of the win rate was computed."),
        Column.decimalInterval("points", "points per game", "Points gained or lost a game."),
        Column.text("points-method", "How the interval of the points was computed."),
        Column.integer(
            "won-on-own-draw",
            "games",
            "Won on the tile drawn, by a joker exchange, or complete before play."),
        Column.integer("won-on-discard", "games", "Won on another player's discard."),
        Column.integer("threw-the-winning-tile", "games", "Threw the tile on which another won."),
        Column.integer(
            "only-paid",
            "games",
            "Somebody else won, on the own draw or on a third one's discard."),
        Column.integer("wall-game", "games", "Nobody won before the wall ran out."),
        Column.integer(
            "void", "games", "Three hands were dead. These six columns add up to all games."),
        Column.integer(
            "won-after-redeeming", "games", "Won in a game in which it had redeemed a joker."),
        Column.integer("won-jokerless", "games", "Won with a hand that was paid as jokerless."),
        Column.rate(
            "one-away-reached",
            GAMES,
            "Was one away from a line at some time between two turns, or won."),
        Column.decimal("wall-at-win", "tiles", "Mean number of tiles left in the wall at a win."),
        Column.decimal("jokers-at-win", "tiles", "Mean number of jokers in the winning hand."),
        Column.decimal("exposures", "per game", "Mean number of exposures made a game."),
        Column.decimal("exchanges", "per game", "Mean number of jokers redeemed a game."));
  }

  static Table of(List<Way> ways, Certainty certainty) {
    TableBuilder table =
        Table.builder("win-rates", "How often each way of playing wins, and where its games go")
            .columns(columns());
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
  private List<Cell> row(List<String> who, SeatTally tally, int seats, Estimate winRate) {
    long deals = way.tally().deals();
    long games = deals * seats;
    long wins = wins(tally);
    Estimate rate = certainty.shown(winRate);
    Estimate points =
        certainty.shown(
            Measures.moments(tally.points(), deals).estimate(certainty.confidence(), seats));
    return List.of(
        Cell.text(way.name()),
        Cell.text(who.get(0)),
        Cell.text(who.get(1)),
        Cell.whole(deals),
        Cell.whole(games),
        Cell.whole(wins),
        Measures.cell(rate),
        Measures.method(rate),
        Measures.cell(points),
        Measures.method(points),
        count(tally, Count.WON_ON_OWN_DRAW),
        count(tally, Count.WON_ON_DISCARD),
        count(tally, Count.THREW),
        count(tally, Count.ONLY_PAID),
        count(tally, Count.WALL_GAME),
        count(tally, Count.VOID),
        count(tally, Count.WON_AFTER_REDEEMING),
        count(tally, Count.WON_JOKERLESS),
        Cell.ratio(tally.counts().get(Count.ONE_AWAY), games),
        Cell.ratio(tally.counts().get(Count.WALL_AT_WIN), wins),
        Cell.ratio(tally.counts().get(Count.JOKERS_AT_WIN), wins),
        Cell.ratio(tally.counts().get(Count.EXPOSURES), games),
        Cell.ratio(tally.counts().get(Count.EXCHANGES), games));
  }

  private static Cell count(SeatTally tally, Count what) {
    return Cell.whole(tally.counts().get(what));
  }
}
