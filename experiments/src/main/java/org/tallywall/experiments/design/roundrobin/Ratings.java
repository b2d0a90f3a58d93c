package org.tallywall.experiments.design.roundrobin;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.apache.commons.math3.util.FastMath;
import org.tallywall.experiments.answer.Measures;
import org.tallywall.experiments.answer.PlayerLabel;
import org.tallywall.experiments.answer.StudyAnswer;
import org.tallywall.experiments.stats.Estimate;
import org.tallywall.experiments.stats.Method;
import org.tallywall.experiments.study.Arm;
import org.tallywall.experiments.tally.StudyTally;
import org.tallywall.experiments.tally.TableTally;
import org.tallywall.reports.schema.RatingColumns;
import org.tallywall.reports.schema.RatingDifferenceColumns;
import org.tallywall.reports.table.Cell;
import org.tallywall.reports.table.Row;
import org.tallywall.reports.table.Table;
import org.tallywall.reports.table.TableBuilder;

/** A round-robin's players with their ratings, and the differences between them. */
final class Ratings {
  private final List<Arm> players;
  private final StudyTally tally;
  private final RatingFit fit;
  private final List<Integer> order;

  private Ratings(StudyAnswer answer, RoundRobinDesign design) {
    this.players = design.players();
    this.tally = answer.tally();
    double confidence = answer.certainty().confidence();
    this.fit = new RatingFit(players.size(), tally.contests(), confidence);
    this.order =
        IntStream.range(0, players.size())
            .boxed()
            .sorted(Comparator.comparingDouble(this::place).reversed())
            .toList();
  }

  /** The ratings, and the differences of every two. */
  static List<Table> all(StudyAnswer answer, RoundRobinDesign design) {
    Ratings all = new Ratings(answer, design);
    return List.of(all.ratings(), all.differences());
  }

  /** Strongest first, those that never won last. */
  private double place(int player) {
    return fit.rating(player).map(Estimate::value).orElse(Double.NEGATIVE_INFINITY);
  }

  private Table ratings() {
    TableBuilder table =
        Table.builder(RatingColumns.FILE, "Everyone against everyone").columns(RatingColumns.all());
    for (int player : order) {
      TableTally one = tally.arm(player);
      long wins = one.all().wins().sum().value().longValueExact();
      Optional<Estimate> rating = fit.rating(player);
      OptionalDouble below = fit.below(player);
      table.row(
          new Row()
              .set(RatingColumns.ARM, players.get(player).name())
              .set(RatingColumns.PLAYER, PlayerLabel.of(players.get(player).player()))
              .set(RatingColumns.DEALS, one.deals())
              .set(RatingColumns.GAMES, one.games())
              .set(RatingColumns.WINS, wins)
              .set(RatingColumns.WIN_RATE, Cell.ratio(wins, one.games()))
              .set(RatingColumns.POINTS, Cell.decimal(points(one)))
              .set(RatingColumns.RATING, rating.map(Measures::cell).orElse(Cell.empty()))
              .set(RatingColumns.RATING_BELOW, below)
              .set(RatingColumns.TIMES_AVERAGE, times(rating))
              .set(
                  RatingColumns.RATING_METHOD, rating.map(Measures::method).orElse(method(below))));
    }
    return table.build();
  }

  private static Cell method(OptionalDouble below) {
    return below.isPresent() ? Cell.text(Method.CLOPPER_PEARSON_CARRIED.text()) : Cell.empty();
  }

  private static double points(TableTally one) {
    return one.all().points().sum().value().doubleValue() / one.games();
  }

  private static Cell times(Optional<Estimate> rating) {
    return rating.map(value -> Cell.decimal(FastMath.exp(value.value()))).orElse(Cell.empty());
  }

  private Table differences() {
    TableBuilder table =
        Table.builder(RatingDifferenceColumns.FILE, "Differences in strength")
            .columns(RatingDifferenceColumns.all());
    List<Integer> known = order.stream().filter(fit::isSpreadKnown).toList();
    for (int above = 0; above < known.size(); above++) {
      for (int below = above + 1; below < known.size(); below++) {
        int player = known.get(above);
        int other = known.get(below);
        table.row(
            new Row()
                .set(RatingDifferenceColumns.ARM, players.get(player).name())
                .set(RatingDifferenceColumns.OTHER, players.get(other).name())
                .set(
                    RatingDifferenceColumns.DIFFERENCE,
                    Measures.cell(fit.difference(player, other)))
                .set(
                    RatingDifferenceColumns.STANDARD_ERROR,
                    Cell.decimal(fit.errorOfDifference(player, other))));
      }
    }
    return table.build();
  }
}
