package org.tallywall.experiments.answer;

import java.util.List;
import org.tallywall.core.play.Seats;
import org.tallywall.experiments.stats.Estimate;
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

  private final long deals;
  private final double confidence;

  private WinRates(long deals, double confidence) {
    this.deals = deals;
    this.confidence = confidence;
  }

  static List<Column> columns() {
    return List.of(
        Column.text("arm", "The way of playing; \"table\" where one fixed table is played."),
        Column.text("seat", "The seat, 0 is East and turns go to the right; \"all\" for all four."),
        Column.text("player", "Who sits there; \"all\" for all four seats."),
        Column.integer("deals", "deals", "Deals played."),
        Column.integer("games", "games", "Games of the seat: one a deal, four for all seats."),
        Column.integer("wins", "games", "Games won."),
        Column.rateInterval("win-rate", GAMES, "Share of its games that the seat won."),
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

  static Table of(List<String> players, TableTally tally, double confidence) {
    WinRates rates = new WinRates(tally.deals(), confidence);
    TableBuilder table =
        Table.builder("win-rates", "How often each seat wins, and where its games go")
            .columns(columns());
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      SeatTally one = tally.seat(seat);
      Estimate rate = new Proportion(wins(one), tally.deals()).estimate(confidence);
      table.row(rates.row(List.of(String.valueOf(seat), players.get(seat)), one, 1, rate));
    }
    Estimate rate =
        Measures.moments(tally.all().wins(), tally.deals()).estimate(confidence, Seats.COUNT);
    table.row(rates.row(List.of("all", "all"), tally.all(), Seats.COUNT, rate));
    return table.build();
  }

  private static long wins(SeatTally tally) {
    return tally.wins().sum().value().longValueExact();
  }

  /** A row of one seat, or of several together; {@code who} is seat and player. */
  private List<Cell> row(List<String> who, SeatTally tally, int seats, Estimate rate) {
    long games = deals * seats;
    long wins = wins(tally);
    Estimate points = Measures.moments(tally.points(), deals).estimate(confidence, seats);
    return List.of(
        Cell.text("table"),
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
