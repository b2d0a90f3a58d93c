package org.tallywall.experiments.design.roundrobin;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.util.FastMath;
import org.tallywall.experiments.answer.Measures;
import org.tallywall.experiments.answer.PlayerLabel;
import org.tallywall.experiments.stats.Estimate;
import org.tallywall.experiments.study.Arm;
import org.tallywall.experiments.study.Study;
import org.tallywall.experiments.tally.StudyTally;
import org.tallywall.experiments.tally.TableTally;
import org.tallywall.reports.table.Cell;
import org.tallywall.reports.table.Column;
import org.tallywall.reports.table.Table;
import org.tallywall.reports.table.TableBuilder;

/** A round-robin's players with their ratings. */
final class Ratings {
  private Ratings() {}

  static Table of(Study study, RoundRobinDesign design, StudyTally tally) {
    List<Arm> players = design.players();
    RatingFit fit = new RatingFit(study, players.size(), tally.contests());
    List<Estimate> ratings = fit.ratings(study.question().confidence());
    TableBuilder table =
        Table.builder("ratings", "Everyone against everyone").columns(columns(fit.helped()));
    for (int player : order(ratings)) {
      TableTally one = tally.arm(player);
      long wins = one.all().wins().sum().value().longValueExact();
      Estimate rating = ratings.get(player);
      table.row(
          Cell.text(players.get(player).name()),
          Cell.text(PlayerLabel.of(players.get(player).player())),
          Cell.whole(one.deals()),
          Cell.whole(one.games()),
          Cell.whole(wins),
          Cell.ratio(wins, one.games()),
          Cell.decimal(one.all().points().sum().value().doubleValue() / one.games()),
          Measures.cell(rating),
          Cell.decimal(FastMath.exp(rating.value())),
          Measures.method(rating));
    }
    return table.build();
  }

  private static List<Column> columns(boolean helped) {
    return List.of(
        Column.text("arm", "What the study calls the player, strongest first."),
        Column.text("player", "The player and its settings."),
        Column.integer("deals", "deals", "Deals played."),
        Column.integer("games", "games", "Games played, four a deal."),
        Column.integer("wins", "games", "Games won."),
        Column.rate("win-rate", "share of games", "Games won, against whoever sat there."),
        Column.decimal("points", "points per game", "Points a game, against whoever sat there."),
        Column.decimalInterval(
            "rating",
            "natural logarithm",
            "Strength beside the average of these players, from who won each game (Plackett-Luce,"
                + " first places only, the wall as a further contestant)"
                + (helped
                    ? "; half a win was lent to everybody, for somebody hardly ever won."
                    : ".")),
        Column.decimal(
            "times-average", "times", "How often it wins for one win of an average player."),
        Column.text("rating-method", "How the interval of the rating was computed."));
  }

  private static List<Integer> order(List<Estimate> ratings) {
    List<Integer> order = new ArrayList<>();
    for (int player = 0; player < ratings.size(); player++) {
      order.add(player);
    }
    order.sort((a, b) -> Double.compare(ratings.get(b).value(), ratings.get(a).value()));
    return order;
  }
}
