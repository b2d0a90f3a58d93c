package org.tallywall.experiments.stats;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.NonPositiveDefiniteMatrixException;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.util.FastMath;

/**
 * Ratings from contests of which only the winner counts: {@code P(i wins) = m_i g_i / sum of m_j
 * g_j}, with m_i the places that i holds (Plackett and Luce's model, first places only; Bradley and
 * Terry's is the case of two contestants). The wall is one more contestant with one place in every
 * game.
 *
 * <p>The logarithms of the worths are those of the highest likelihood with Firth's penalty, half
 * the logarithm of the determinant of Fisher's information (Firth, Biometrika 80, 1993, 27–38). It
 * takes away the leading part of the bias and keeps everybody finite; in one table of contestants
 * it comes to half a win for each, and over many tables to about half a win for each in all.
 */
public final class TopOneRatings {
  private static final double FIRTH = 0.5;
  private static final double TOLERANCE = 1e-12;
  private static final double LONGEST_STEP = 3;
  private static final int MOST_ROUNDS = 1_000;
  private static final int MOST_HALVINGS = 40;

  private final List<Contests> contests;
  private final List<int[]> present;
  private final double penalty;
  private Point point;

  private TopOneRatings(int contestants, List<Contests> contests, double penalty) {
    this.contests = List.copyOf(contests);
    this.present = this.contests.stream().map(Contests::present).toList();
    this.penalty = penalty;
    this.point = new Point(new double[contestants]);
  }

  /**
   * Contests of one composition.
   *
   * @param places places that each contestant holds; 0 where it does not take part
   * @param wins how often each won
   */
  public record Contests(int[] places, long[] wins) {
    /**
     * Contests.
     *
     * @param places places that each contestant holds
     * @param wins how often each won
     */
    public Contests {
      places = places.clone();
      wins = wins.clone();
    }

    long games() {
      return Arrays.stream(wins).sum();
    }

    /** Who takes part. */
    int[] present() {
      return IntStream.range(0, places.length).filter(at -> places[at] > 0).toArray();
    }
  }

  /**
   * The ratings with Firth's penalty.
   *
   * @param contestants how many there are, 1 or more
   * @param contests what they won against whom
   * @return the ratings
   * @throws IllegalArgumentException if some never met others, so that no fit exists
   */
  public static TopOneRatings fit(int contestants, List<Contests> contests) {
    return new TopOneRatings(contestants, contests, FIRTH).climb();
  }

  /**
   * The ratings of the highest likelihood, without a penalty, as the literature's examples have
   * them.
   *
   * @throws IllegalArgumentException if somebody never won or never lost
   */
  static TopOneRatings likeliest(int contestants, List<Contests> contests) {
    return new TopOneRatings(contestants, contests, 0).climb();
  }

  /**
   * The ratings.
   *
   * @return the natural logarithms of the worths beside that of contestant 0
   */
  public double[] logs() {
    return point.logs.clone();
  }

  /**
   * The inverse of Fisher's information.
   *
   * @return a row and a column for each contestant; those of contestant 0, the yardstick, hold 0
   */
  public double[][] inverse() {
    return Arrays.stream(point.inverse).map(double[]::clone).toArray(double[][]::new);
  }

  /**
   * How likely each contestant is to win.
   *
   * @param places places that each contestant holds
   * @return chances that sum to 1
   */
  public double[] chances(int[] places) {
    return chances(point.logs, places);
  }

  private static double[] chances(double[] logs, int[] places) {
    double[] chances = new double[logs.length];
    double together = 0;
    for (int at = 0; at < logs.length; at++) {
      chances[at] = places[at] * FastMath.exp(logs[at]);
      together += chances[at];
    }
    for (int at = 0; at < logs.length; at++) {
      chances[at] /= together;
    }
    return chances;
  }

  /** Fisher's scoring; a step that leads down is halved. */
  private TopOneRatings climb() {
    for (int round = 0; round < MOST_ROUNDS; round++) {
      double[] step = point.step();
      double longest = Arrays.stream(step).map(Math::abs).max().orElse(0);
      if (longest < TOLERANCE) {
        return this;
      }
      double share = Math.min(1, LONGEST_STEP / longest);
      Point next = point.moved(step, share);
      for (int halving = 0; halving < MOST_HALVINGS && next.isBelow(point); halving++) {
        share /= 2;
        next = point.moved(step, share);
      }
      point = next;
    }
    throw new IllegalArgumentException("somebody never wins or never loses, so no ratings fit");
  }

  /** All that is known at one set of ratings. */
  private final class Point {
    private final double[] logs;
    private final double[] score;
    private final double[][] inverse;
    private final double[][] chances;
    private double value;

    Point(double[] logs) {
      this.logs = logs;
      this.score = new double[logs.length];
      this.inverse = new double[logs.length][logs.length];
      this.chances = new double[contests.size()][];
      double[][] information = new double[logs.length][logs.length];
      for (int at = 0; at < contests.size(); at++) {
        chances[at] = chances(logs, contests.get(at).places());
        add(at, information);
      }
      if (logs.length > 1) {
        invert(information);
      }
      if (penalty > 0) {
        for (int at = 0; at < contests.size(); at++) {
          addPenalty(at);
        }
      }
    }

    private void add(int contest, double[][] information) {
      Contests one = contests.get(contest);
      double[] chance = chances[contest];
      double games = one.games();
      for (int a : present.get(contest)) {
        if (one.wins()[a] > 0) {
          value += one.wins()[a] * FastMath.log(chance[a]);
        }
        score[a] += one.wins()[a] - games * chance[a];
        information[a][a] += games * chance[a];
        for (int b : present.get(contest)) {
          information[a][b] -= games * chance[a] * chance[b];
        }
      }
    }

    private void invert(double[][] information) {
      int last = logs.length - 1;
      try {
        CholeskyDecomposition parts =
            new CholeskyDecomposition(
                new Array2DRowRealMatrix(information).getSubMatrix(1, last, 1, last), 1e-9, 0);
        value += penalty * FastMath.log(parts.getDeterminant());
        RealMatrix inverted = parts.getSolver().getInverse();
        for (int a = 1; a <= last; a++) {
          for (int b = 1; b <= last; b++) {
            inverse[a][b] = inverted.getEntry(a - 1, b - 1);
          }
        }
      } catch (NonPositiveDefiniteMatrixException e) {
        throw new IllegalArgumentException("some never met others, so no ratings fit", e);
      }
    }

    /** The penalty's slope, from the third cumulants of who wins. */
    private void addPenalty(int contest) {
      int[] here = present.get(contest);
      double[] chance = chances[contest];
      double[] along = new double[logs.length];
      double own = 0;
      double whole = 0;
      for (int a : here) {
        for (int b : here) {
          along[a] += inverse[a][b] * chance[b];
        }
        own += chance[a] * inverse[a][a];
        whole += chance[a] * along[a];
      }
      double games = contests.get(contest).games();
      for (int a : here) {
        double slope = inverse[a][a] - own - 2 * along[a] + 2 * whole;
        score[a] += penalty * games * chance[a] * slope;
      }
    }

    double[] step() {
      double[] step = new double[logs.length];
      for (int a = 1; a < logs.length; a++) {
        for (int b = 1; b < logs.length; b++) {
          step[a] += inverse[a][b] * score[b];
        }
      }
      return step;
    }

    Point moved(double[] step, double share) {
      double[] moved = logs.clone();
      for (int at = 0; at < moved.length; at++) {
        moved[at] += share * step[at];
      }
      return new Point(moved);
    }

    /** Whether it lies below another by more than rounding does. */
    boolean isBelow(Point other) {
      return !(value >= other.value - 1e-10 * (1 + Math.abs(other.value)));
    }
  }
}
