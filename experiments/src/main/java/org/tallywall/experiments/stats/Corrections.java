package org.tallywall.experiments.stats;

import java.util.Arrays;
import java.util.Comparator;

/** p-values of many comparisons at once, in the order given. */
public final class Corrections {
  private Corrections() {}

  /**
   * Holm's step-down adjustment, which bounds the chance of any false finding (Scandinavian Journal
   * of Statistics 6, 1979, 65–70).
   *
   * @param p p-values, 0 to 1, in any order
   * @return adjusted p-values in the same order
   */
  public static double[] holm(double... p) {
    Integer[] order = order(p);
    double[] adjusted = new double[p.length];
    double largest = 0;
    for (int at = 0; at < p.length; at++) {
      largest = Math.max(largest, Math.min(1, (p.length - at) * p[order[at]]));
      adjusted[order[at]] = largest;
    }
    return adjusted;
  }

  private static Integer[] order(double[] p) {
    Integer[] order = new Integer[p.length];
    Arrays.setAll(order, at -> at);
    Arrays.sort(order, Comparator.comparingDouble(at -> p[at]));
    return order;
  }
}
