package org.tallywall.experiments.gauges.guess;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;

/**
 * Coefficients of a conditional logit model (McFadden 1974, from memory) by Newton's method, with a
 * small penalty on their squares. A choice set holds the one that was true first, then those
 * proposed; each has a known weight beside its traits.
 */
final class ConditionalLogit {
  private static final int MOST_STEPS = 25;
  private static final double ENOUGH = 1e-7;

  private final int traits;
  private final List<int[]> index = new ArrayList<>();
  private final List<float[]> value = new ArrayList<>();
  private final List<Double> offset = new ArrayList<>();
  private final List<Integer> sets = new ArrayList<>();

  /** A model of so many traits. */
  ConditionalLogit(int traits) {
    this.traits = traits;
  }

  /** The next ones added are a new choice set. */
  void beginSet() {
    sets.add(index.size());
  }

  /** Adds one to the set. */
  void add(int[] places, float[] values, double logWeight) {
    index.add(places);
    value.add(values);
    offset.add(logWeight);
  }

  /** Adds a yes or no, which is a choice between what is seen and nothing. */
  void addYesOrNo(double[] seen, boolean yes) {
    int[] places = IntStream.range(0, seen.length).filter(at -> seen[at] != 0).toArray();
    float[] values = new float[places.length];
    for (int at = 0; at < places.length; at++) {
      values[at] = (float) seen[places[at]];
    }
    beginSet();
    if (yes) {
      add(places, values, 0);
    }
    add(new int[0], new float[0], 0);
    if (!yes) {
      add(places, values, 0);
    }
  }

  int sets() {
    return sets.size();
  }

  /**
   * Fits.
   *
   * @param penalty half of it times the sum of the squares is taken off the logarithm of the
   *     likelihood
   * @return a coefficient for each trait
   */
  double[] fit(double penalty) {
    double[] weights = new double[traits];
    double before = Double.NEGATIVE_INFINITY;
    for (int step = 0; step < MOST_STEPS; step++) {
      double[] slope = new double[traits];
      double[][] bend = new double[traits][traits];
      double now = logLikelihood(weights, slope, bend);
      for (int at = 0; at < traits; at++) {
        now -= penalty / 2 * weights[at] * weights[at];
        slope[at] -= penalty * weights[at];
        bend[at][at] += penalty;
        for (int other = 0; other < at; other++) {
          bend[at][other] = bend[other][at];
        }
      }
      double[] change =
          new CholeskyDecomposition(new Array2DRowRealMatrix(bend, false), 1e-6, 1e-12)
              .getSolver()
              .solve(new ArrayRealVector(slope, false))
              .toArray();
      double largest = Arrays.stream(change).map(Math::abs).max().orElse(0);
      double scale = largest > 2 ? 2 / largest : 1;
      for (int at = 0; at < traits; at++) {
        weights[at] += scale * change[at];
      }
      if (Math.abs(now - before) < ENOUGH * Math.abs(now)) {
        break;
      }
      before = now;
    }
    return weights;
  }

  /** The mean logarithm of the chance of the true one. */
  double meanLog(double[] weights) {
    return logLikelihood(weights, null, null) / sets.size();
  }

  private double logLikelihood(double[] weights, double[] slope, double[][] bend) {
    double sum = 0;
    double[] mean = new double[traits];
    for (int set = 0; set < sets.size(); set++) {
      int from = sets.get(set);
      int to = set + 1 < sets.size() ? sets.get(set + 1) : index.size();
      double[] chance = new double[to - from];
      double most = Double.NEGATIVE_INFINITY;
      for (int at = from; at < to; at++) {
        chance[at - from] = offset.get(at) + dot(weights, at);
        most = Math.max(most, chance[at - from]);
      }
      double own = chance[0];
      double all = 0;
      for (int at = 0; at < chance.length; at++) {
        chance[at] = StrictMath.exp(chance[at] - most);
        all += chance[at];
      }
      sum += own - most - StrictMath.log(all);
      if (slope != null) {
        Arrays.fill(mean, 0);
        int[] touched = new int[traits];
        int count = 0;
        boolean[] seen = new boolean[traits];
        for (int at = 0; at < chance.length; at++) {
          double share = chance[at] / all;
          int[] places = index.get(from + at);
          float[] values = value.get(from + at);
          for (int one = 0; one < places.length; one++) {
            int i = places[one];
            if (!seen[i]) {
              seen[i] = true;
              touched[count++] = i;
            }
            mean[i] += share * values[one];
            if (share > 1e-9) {
              double[] row = bend[i];
              double times = share * values[one];
              for (int two = 0; two < places.length; two++) {
                row[places[two]] += times * values[two];
              }
            }
          }
        }
        int[] places = index.get(from);
        float[] values = value.get(from);
        for (int one = 0; one < places.length; one++) {
          slope[places[one]] += values[one];
        }
        for (int one = 0; one < count; one++) {
          int i = touched[one];
          slope[i] -= mean[i];
          double[] row = bend[i];
          for (int two = 0; two < count; two++) {
            row[touched[two]] -= mean[i] * mean[touched[two]];
          }
        }
      }
    }
    return sum;
  }

  private double dot(double[] weights, int at) {
    int[] places = index.get(at);
    float[] values = value.get(at);
    double sum = 0;
    for (int one = 0; one < places.length; one++) {
      sum += weights[places[one]] * values[one];
    }
    return sum;
  }
}
