package org.tallywall.experiments.stats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.tallywall.experiments.stats.TopOneRatings.Contests;

class TopOneRatingsTest {
  /**
   * American League East 1987, wins of row over column (Agresti, Categorical Data Analysis, 1990);
   * logarithms of the worths beside Baltimore's as published there to four digits, the standard
   * error of the first computed apart by Newton's method.
   */
  @Test
  void likeliest_baseballOf1987_agrees() {
    int[][] wins = {
      {0, 7, 9, 7, 7, 9, 11},
      {6, 0, 7, 5, 11, 9, 9},
      {4, 6, 0, 7, 7, 8, 12},
      {6, 8, 6, 0, 6, 7, 10},
      {6, 2, 6, 7, 0, 7, 12},
      {4, 4, 5, 6, 6, 0, 6},
      {2, 4, 1, 3, 1, 7, 0}
    };
    List<Contests> contests = new ArrayList<>();
    for (int a = 0; a < 7; a++) {
      for (int b = a + 1; b < 7; b++) {
        int[] places = new int[7];
        long[] won = new long[7];
        places[a] = 1;
        places[b] = 1;
        won[a] = wins[a][b];
        won[b] = wins[b][a];
        contests.add(new Contests(places, won));
      }
    }
    TopOneRatings fit = TopOneRatings.likeliest(7, contests);

    double[] published = {1.5814, 1.4364, 1.2945, 1.2476, 1.1077, 0.6839};
    for (int team = 0; team < 6; team++) {
      assertThat(fit.logs()[team] - fit.logs()[6]).isCloseTo(published[team], within(5.1e-5));
    }
    assertThat(Math.sqrt(fit.inverse()[6][6])).isCloseTo(0.343256, within(1e-5));
  }

  @Test
  void likeliest_oneAgainstThreeAndTheWall_hasTheClosedForm() {
    TopOneRatings fit =
        TopOneRatings.likeliest(
            3, List.of(new Contests(new int[] {1, 3, 1}, new long[] {300, 600, 100})));

    assertThat(fit.logs()[1]).isCloseTo(-Math.log(1.5), within(1e-9));
    assertThat(fit.logs()[2] - fit.logs()[1]).isCloseTo(Math.log(0.5), within(1e-9));
    assertThat(fit.inverse()[1][1]).isCloseTo(1 / 300.0 + 1 / 600.0, within(1e-9));
    assertThatThrownBy(
            () ->
                TopOneRatings.likeliest(
                    2, List.of(new Contests(new int[] {1, 1}, new long[] {5, 0}))))
        .isInstanceOf(IllegalArgumentException.class);
  }

  /** Jeffreys' prior of a multinomial adds half to each count, so Firth's penalty does here. */
  @Test
  void fit_oneTable_isHalfAWinForEach() {
    long[] wins = {10, 3, 0, 20};
    TopOneRatings fit = TopOneRatings.fit(4, List.of(new Contests(new int[] {1, 1, 1, 1}, wins)));

    for (int at = 1; at < 4; at++) {
      assertThat(fit.logs()[at]).isCloseTo(Math.log((wins[at] + 0.5) / 10.5), within(1e-9));
    }
  }

  /**
   * The same likelihood and penalty, written down once more with chances and a determinant of the
   * test's own, climbed by steps along one rating at a time, halved where none leads up.
   */
  @Test
  void fit_fiveTables_isTheTopOfThePenalizedLikelihood() {
    List<Contests> contests =
        List.of(
            new Contests(new int[] {1, 1, 1, 1, 0, 1}, new long[] {9, 4, 0, 2, 0, 5}),
            new Contests(new int[] {1, 1, 1, 0, 1, 1}, new long[] {7, 6, 1, 0, 3, 3}),
            new Contests(new int[] {1, 1, 0, 1, 1, 1}, new long[] {8, 2, 0, 1, 4, 5}),
            new Contests(new int[] {1, 0, 1, 1, 1, 1}, new long[] {11, 0, 0, 2, 3, 4}),
            new Contests(new int[] {0, 1, 1, 1, 1, 1}, new long[] {0, 8, 0, 3, 4, 5}));
    double[] top = climb(contests);
    double[] fitted = TopOneRatings.fit(6, contests).logs();
    for (int at = 1; at < 6; at++) {
      assertThat(fitted[at]).isCloseTo(top[at - 1], within(1e-5));
    }
  }

  private static double[] climb(List<Contests> contests) {
    double[] logs = new double[5];
    double value = penalized(logs, contests);
    for (double step = 1; step > 1e-7; ) {
      boolean up = false;
      for (int at = 0; at < 10; at++) {
        double[] next = logs.clone();
        next[at / 2] += at % 2 == 0 ? step : -step;
        double there = penalized(next, contests);
        if (there > value) {
          logs = next;
          value = there;
          up = true;
        }
      }
      step /= up ? 1 : 2;
    }
    return logs;
  }

  private static double penalized(double[] logs, List<Contests> contests) {
    double value = 0;
    double[][] information = new double[5][5];
    for (Contests one : contests) {
      double[] weights = new double[6];
      double sum = 0;
      long games = 0;
      for (int at = 0; at < 6; at++) {
        weights[at] = one.places()[at] * Math.exp(at == 0 ? 0 : logs[at - 1]);
        sum += weights[at];
        games += one.wins()[at];
      }
      for (int a = 0; a < 6; a++) {
        value += one.wins()[a] == 0 ? 0 : one.wins()[a] * Math.log(weights[a] / sum);
        for (int b = 0; a > 0 && b < 5; b++) {
          double same = a - 1 == b ? weights[a] / sum : 0;
          information[a - 1][b] += games * (same - weights[a] * weights[b + 1] / sum / sum);
        }
      }
    }
    return value + 0.5 * Math.log(determinant(information));
  }

  private static double determinant(double[][] matrix) {
    double product = 1;
    for (int at = 0; at < matrix.length; at++) {
      product *= matrix[at][at];
      for (int below = at + 1; below < matrix.length; below++) {
        double times = matrix[below][at] / matrix[at][at];
        for (int column = at; column < matrix.length; column++) {
          matrix[below][column] -= times * matrix[at][column];
        }
      }
    }
    return product;
  }
}
