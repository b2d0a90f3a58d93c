package org.tallywall.experiments.paper;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.tallywall.reports.figure.Estimate;
import org.tallywall.reports.figure.SquareMap.Square;

/**
 * Finds the border that a map of squares is remembered by: in every row a place between columns,
 * moving to one side only from row to row, with plus at its left and minus at its right. Squares
 * that are not clear only decide between borders that are as good.
 */
final class Border {
  private static final double CLEAR = 1;
  private static final double UNCLEAR = 0.001;

  private final List<List<Square>> squares;
  private final int columns;

  private Border(List<List<Square>> squares) {
    this.squares = squares;
    this.columns = squares.get(0).size();
  }

  /**
   * Looks for the border with plus at its left.
   *
   * @param squares row by row
   * @return for every row, how many columns lie at its left; none where plus or minus is clear
   *     nowhere, or a clear square lies on the wrong side of the best one
   */
  static Optional<List<Integer>> of(List<List<Square>> squares) {
    return new Border(squares).best();
  }

  private Optional<List<Integer>> best() {
    boolean plus = squares.stream().flatMap(List::stream).anyMatch(square -> sign(square) > 0);
    boolean minus = squares.stream().flatMap(List::stream).anyMatch(square -> sign(square) < 0);
    if (!plus || !minus) {
      return Optional.empty();
    }
    List<Integer> falling = cheapest(false);
    List<Integer> rising = cheapest(true);
    List<Integer> best = cost(rising) < cost(falling) ? rising : falling;
    return cost(best) < CLEAR ? Optional.of(best) : Optional.empty();
  }

  /** Dynamic programming over rows: the cheapest border that ends at each place. */
  private List<Integer> cheapest(boolean rising) {
    List<double[]> costs = new ArrayList<>();
    List<int[]> from = new ArrayList<>();
    for (int row = 0; row < squares.size(); row++) {
      double[] now = new double[columns + 1];
      int[] before = new int[columns + 1];
      for (int place = 0; place <= columns; place++) {
        before[place] = row == 0 ? 0 : bestBefore(costs.get(row - 1), place, rising);
        double past = row == 0 ? 0 : costs.get(row - 1)[before[place]];
        now[place] = past + cost(row, place);
      }
      costs.add(now);
      from.add(before);
    }
    List<Integer> places = new ArrayList<>();
    int place = bestBefore(costs.get(squares.size() - 1), rising ? columns : 0, rising);
    for (int row = squares.size() - 1; row >= 0; row--) {
      places.add(place);
      place = from.get(row)[place];
    }
    Collections.reverse(places);
    return places;
  }

  private int bestBefore(double[] costs, int place, boolean rising) {
    int best = place;
    int step = rising ? -1 : 1;
    for (int at = place; at >= 0 && at <= columns; at += step) {
      best = costs[at] < costs[best] ? at : best;
    }
    return best;
  }

  private double cost(List<Integer> places) {
    double sum = 0;
    for (int row = 0; row < places.size(); row++) {
      sum += cost(row, places.get(row));
    }
    return sum;
  }

  private double cost(int row, int place) {
    double sum = 0;
    for (int column = 0; column < columns; column++) {
      Square square = squares.get(row).get(column);
      double value = square.estimate().map(Estimate::value).orElse(0.0);
      boolean wrong = column < place ? value < 0 : value > 0;
      if (wrong) {
        sum += sign(square) == 0 ? UNCLEAR : CLEAR;
      }
    }
    return sum;
  }

  private static int sign(Square square) {
    return square.estimate().map(Estimate::clearSign).orElse(0);
  }
}
