package org.tallywall.experiments.gauges;

import java.util.List;
import org.tallywall.reports.results.CsvFile;
import org.tallywall.reports.results.Results;

/**
 * The strengths of some players on one card beside that of the first of them, with covariances:
 * those follow from the standard errors of all their differences.
 */
final class Strengths {
  private final double[] beside;
  private final double[][] covariances;

  /**
   * Reads them.
   *
   * @param results of the card
   * @param names the players; all their differences are there
   */
  Strengths(Results results, List<String> names) {
    int players = names.size();
    beside = new double[players];
    double[][] squares = new double[players][players];
    for (CsvFile.Row row : results.rows("rating-differences")) {
      int one = names.indexOf(row.text("arm"));
      int other = names.indexOf(row.text("other"));
      if (one >= 0 && other >= 0) {
        double error = row.need("standard-error");
        squares[one][other] = error * error;
        squares[other][one] = error * error;
        if (one == 0 || other == 0) {
          beside[Math.max(one, other)] = (other == 0 ? 1 : -1) * row.need("difference");
        }
      }
    }
    covariances = new double[players][players];
    for (int a = 0; a < players; a++) {
      for (int b = 0; b < players; b++) {
        covariances[a][b] = (squares[a][0] + squares[b][0] - squares[a][b]) / 2;
      }
    }
  }

  /** A sum of strengths, with weights that sum to 0. */
  double sum(double[] weights) {
    double sum = 0;
    for (int at = 0; at < weights.length; at++) {
      sum += weights[at] * beside[at];
    }
    return sum;
  }

  /** The variance of such a sum. */
  double variance(double[] weights) {
    double sum = 0;
    for (int a = 0; a < weights.length; a++) {
      for (int b = 0; b < weights.length; b++) {
        sum += weights[a] * weights[b] * covariances[a][b];
      }
    }
    return sum;
  }

  /** The strengths of all but the first beside it. */
  double[] others() {
    double[] others = new double[beside.length - 1];
    System.arraycopy(beside, 1, others, 0, others.length);
    return others;
  }

  /** The covariances of {@link #others()}. */
  double[][] covariancesOfOthers() {
    double[][] others = new double[beside.length - 1][beside.length - 1];
    for (int at = 0; at < others.length; at++) {
      System.arraycopy(covariances[at + 1], 1, others[at], 0, others.length);
    }
    return others;
  }
}
