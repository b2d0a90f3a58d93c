package org.tallywall.experiments.answer;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.tallywall.experiments.stats.Estimate;
import org.tallywall.experiments.stats.Proportion;
import org.tallywall.experiments.tally.AimTally;
import org.tallywall.experiments.tally.AimTally.Count;
import org.tallywall.reports.table.Cell;
import org.tallywall.reports.table.Column;

/** The columns that lines and families of a card have in common. */
final class AimColumns {
  private AimColumns() {}

  static List<Column> columns() {
    return List.of(
        Column.integer("aimed-after-deal", "players", "Players that aimed at it after the deal."),
        Column.rate(
            "aimed-after-deal-share",
            "share of players",
            "Share of all players that aimed at it after the deal."),
        Column.integer(
            "aimed-after-passes", "players", "Players that aimed at it after the passes."),
        Column.rateInterval(
            "aimed-share",
            "share of players",
            "Share of all players that aimed at it after the passes."),
        Column.text("aimed-share-method", "How the interval of that share was computed."),
        Column.integer("aimed-at-end", "players", "Players that aimed at it when the game ended."),
        Column.integer("wins", "games", "Games won with it."),
        Column.rateInterval(
            "share-of-wins",
            "share of games won",
            "Its share of all games won; with its interval where one game a deal is played."),
        Column.text("share-of-wins-method", "How the interval of that share was computed."),
        Column.integer(
            "aimed-and-won-with-it",
            "players",
            "Players that aimed at it after the passes and won with it."),
        Column.rateInterval(
            "win-rate-with-it",
            "share of players",
            "Share of the players aiming at it after the passes that won with it."),
        Column.text("win-rate-with-it-method", "How the interval of that share was computed."),
        Column.rateInterval(
            "win-rate-when-aimed",
            "share of players",
            "Share of the players aiming at it after the passes that won, with whatever line."),
        Column.text("win-rate-method", "How the interval of that share was computed."),
        Column.integer("switched-to", "times", "Times that a player changed to it in play."),
        Column.integer("switched-from", "times", "Times that a player left it in play."),
        Column.decimal("wall-at-win", "tiles", "Mean number of tiles left in the wall."),
        Column.decimal("jokers-at-win", "tiles", "Mean number of jokers in the winning hand."),
        Column.decimal("exposures-at-win", "exposures", "Mean number of the winner's exposures."),
        Column.decimal("points-when-won", "points per game", "What the winner received."));
  }

  static List<Cell> cells(AimTally aim, Way way, Certainty certainty) {
    List<Cell> cells = new ArrayList<>();
    cells.add(count(aim, Count.AFTER_DEAL));
    cells.add(Cell.ratio(aim.counts().get(Count.AFTER_DEAL), way.seatGames()));
    cells.add(count(aim, Count.AFTER_PASSES));
    rate(cells, certainty.shown(Measures.shareAimed(aim, way, certainty.confidence())));
    cells.add(count(aim, Count.AT_END));
    cells.add(count(aim, Count.WINS));
    share(cells, aim.counts().get(Count.WINS), way, certainty);
    cells.add(count(aim, Count.AIMED_AND_WON_WITH_IT));
    if (aim.counts().get(Count.AFTER_PASSES) == 0) {
      cells.addAll(Collections.nCopies(4, Cell.empty()));
    } else {
      long deals = way.tally().deals();
      rate(cells, certainty.shown(Measures.winRateWithIt(aim, deals, certainty.confidence())));
      rate(cells, certainty.shown(Measures.winRateOfAimers(aim, deals, certainty.confidence())));
    }
    cells.add(count(aim, Count.SWITCHED_TO));
    cells.add(count(aim, Count.SWITCHED_FROM));
    for (Count mean : List.of(Count.WALL, Count.JOKERS, Count.EXPOSURES, Count.POINTS)) {
      cells.add(Cell.ratio(aim.counts().get(mean), aim.counts().get(Count.WINS)));
    }
    return cells;
  }

  /** One game a deal makes wins independent; else the share stands alone. */
  private static void share(List<Cell> cells, long won, Way way, Certainty certainty) {
    if (way.oneGame() && way.wins() > 0) {
      rate(cells, new Proportion(won, way.wins()).estimate(certainty.confidence()));
    } else {
      cells.add(Cell.ratio(won, way.wins()));
      cells.add(Cell.empty());
    }
  }

  private static void rate(List<Cell> cells, Estimate rate) {
    cells.add(Measures.cell(rate));
    cells.add(Measures.method(rate));
  }

  private static Cell count(AimTally aim, Count what) {
    return Cell.whole(aim.counts().get(what));
  }
}
