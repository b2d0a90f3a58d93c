package org.tallywall.experiments.answer;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.apache.commons.math3.util.FastMath;
import org.tallywall.experiments.stats.Estimate;
import org.tallywall.experiments.stats.Method;
import org.tallywall.experiments.study.Arm;
import org.tallywall.experiments.study.Design;
import org.tallywall.experiments.study.Study;
import org.tallywall.experiments.tally.StudyTally;
import org.tallywall.experiments.tally.TableTally;
import org.tallywall.reports.table.Cell;
import org.tallywall.reports.table.Column;
import org.tallywall.reports.table.Table;
import org.tallywall.reports.table.TableBuilder;

/** A round-robin's players with their ratings, and the differences between them. */
final class Ratings {
  private final List<Arm> players;
  private final StudyTally tally;
  private final RatingFit fit;
  private final List<Integer> order;

  private Ratings(Study study, Design.RoundRobin design, StudyTally tally) {
    this.players = design.players();
    this.tally = tally;
    this.fit = new RatingFit(players.size(), tally.contests(), study.question().confidence());
    this.order =
        IntStream.range(0, players.size())
            .boxed()
            .sorted(Comparator.comparingDouble(this::place).reversed())
            .toList();
  }

  static Table of(Study study, Design.RoundRobin design, StudyTally tally) {
    return new Ratings(study, design, tally).ratings();
  }

  /** The ratings, and the differences of every two. */
  static List<Table> all(Study study, Design.RoundRobin design, StudyTally tally) {
    Ratings all = new Ratings(study, design, tally);
    return List.of(all.ratings(), all.differences());
  }

  /** Strongest first, those that never won last. */
  private double place(int player) {
    return fit.rating(player).map(Estimate::value).orElse(Double.NEGATIVE_INFINITY);
  }

  private Table ratings() {
    TableBuilder table = Table.builder("ratings", "Everyone against everyone").columns(columns());
    for (int player : order) {
      TableTally one = tally.arm(player);
      long wins = one.all().wins().sum().value().longValueExact();
      Optional<Estimate> rating = fit.rating(player);
      OptionalDouble below = fit.below(player);
      table.row(
          Cell.text(players.get(player).name()),
          Cell.text(PlayerLabel.of(players.get(player).player())),
          Cell.whole(one.deals()),
          Cell.whole(one.games()),
          Cell.whole(wins),
          Cell.ratio(wins, one.games()),
          Cell.decimal(one.all().points().sum().value().doubleValue() / one.games()),
          rating.map(Measures::cell).orElse(Cell.empty()),
          Cell.decimal(below),
          rating.map(value -> Cell.decimal(FastMath.exp(value.value()))).orElse(Cell.empty()),
          rating.map(Measures::method).orElse(method(below)));
    }
    return table.build();
  }

  private static Cell method(OptionalDouble below) {
    return below.isPresent() ? Cell.text(Method.CLOPPER_PEARSON_CARRIED.text()) : Cell.empty();
  }

  private static List<Column> columns() {
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
            "Strength beside the average of the players that won, those left out that won in fewer"
                + " than 20 of their deals and in less than a quarter of them; from who won each"
                + " game (Plackett-Luce, first places only, the wall as a further contestant;"
                + " highest likelihood with Firth's penalty, which comes to about half a win for"
                + " each contestant in all); empty for a player that never won."),
        Column.decimal(
            "rating-below",
            "natural logarithm",
            "For a player that never won: the strength is below this, by the upper limit of the"
                + " exact interval of the deals in which it won a game; empty for all others."),
        Column.decimal(
            "times-average", "times", "How often it wins for one win of a player of strength 0."),
        Column.text("rating-method", "How the interval or the limit was computed."));
  }

  private Table differences() {
    TableBuilder table =
        Table.builder("rating-differences", "Differences in strength")
            .columns(
                Column.text("arm", "The stronger of two players."),
                Column.text("other", "The other."),
                Column.decimalInterval(
                    "difference",
                    "natural logarithm",
                    "By how much its rating is above the other's; not adjusted for the number of"
                        + " pairs. Pairs with a player that never won, or that won in fewer than 20"
                        + " of its deals and in less than a quarter of them, are left out."),
                Column.decimal(
                    "standard-error",
                    "natural logarithm",
                    "The standard error of the difference, from the spread of deals within"
                        + " tables."));
    List<Integer> known = order.stream().filter(fit::isSpreadKnown).toList();
    for (int above = 0; above < known.size(); above++) {
      for (int below = above + 1; below < known.size(); below++) {
        int player = known.get(above);
        int other = known.get(below);
        table.row(
            Cell.text(players.get(player).name()),
            Cell.text(players.get(other).name()),
            Measures.cell(fit.difference(player, other)),
            Cell.decimal(fit.errorOfDifference(player, other)));
      }
    }
    return table.build();
  }
}
