package org.tallywall.experiments.design.roundrobin;

import java.util.List;
import org.tallywall.experiments.stats.TopOneRatings;
import org.tallywall.experiments.stats.TopOneRatings.Contests;
import org.tallywall.experiments.tally.ContestTally;

/**
 * How far fitted ratings may be off. The deals of a table are a sample of their own, its deals the
 * units: what each deal adds to the slope of the likelihood varies about the table's mean, by the
 * sample variance with d − 1 of d deals, and the inverse of the information turns that into the
 * covariances of the ratings (Binder, International Statistical Review 51, 1983, 279–292). Of a
 * table with a single deal the model's expectation takes the mean's place.
 */
final class RatingSpread {
  private final double[][] covariances;
  private long degrees;

  /**
   * Finds the covariances.
   *
   * @param tables the tables
   * @param fit the ratings
   * @param numbers the number of each player in the fit, the wall last; −1 if it is left out
   */
  RatingSpread(List<RatedTable> tables, TopOneRatings fit, int[] numbers) {
    int contestants = fit.logs().length;
    double[][] between = new double[contestants][contestants];
    for (RatedTable table : tables) {
      add(table, fit.chances(table.contests(numbers, contestants).places()), numbers, between);
    }
    double[][] inverse = fit.inverse();
    covariances = product(product(inverse, between), inverse);
  }

  /** Covariances of the ratings beside contestant 0. */
  double[][] covariances() {
    return covariances;
  }

  /** Degrees of freedom of the covariances. */
  long degrees() {
    return Math.max(1, degrees);
  }

  private void add(RatedTable table, double[] chances, int[] numbers, double[][] between) {
    long deals = table.deals();
    if (deals == 0) {
      return;
    }
    boolean single = deals == 1;
    Contests all = table.contests(numbers, chances.length);
    double[] middle = new double[chances.length];
    for (int at = 0; at < middle.length; at++) {
      middle[at] = single ? ContestTally.GAMES * chances[at] : (double) all.wins()[at] / deals;
    }
    double stretch = single ? 1 : (double) deals / (deals - 1);
    degrees += single ? 1 : deals - 1;
    for (RatedTable.Alike way : table.ways()) {
      double[] off = new double[chances.length];
      for (int at = 0; at < off.length; at++) {
        off[at] = -middle[at];
      }
      for (int place = 0; place < way.wins().length; place++) {
        int number = numbers[table.contestant(place, numbers.length - 1)];
        if (number >= 0) {
          off[number] += way.wins()[place];
        }
      }
      for (int a = 0; a < off.length; a++) {
        for (int b = 0; off[a] != 0 && b < off.length; b++) {
          between[a][b] += stretch * way.deals() * off[a] * off[b];
        }
      }
    }
  }

  private static double[][] product(double[][] one, double[][] other) {
    double[][] product = new double[one.length][one.length];
    for (int a = 0; a < one.length; a++) {
      for (int b = 0; b < one.length; b++) {
        for (int c = 0; c < one.length; c++) {
          product[a][b] += one[a][c] * other[c][b];
        }
      }
    }
    return product;
  }
}
