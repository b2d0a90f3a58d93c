package org.tallywall.experiments.stats;

import java.util.List;
import org.apache.commons.math3.distribution.ChiSquaredDistribution;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/**
 * Whether several numbers, measured together in each of several places, are the same in all places:
 * the weighted sum of squares about their common mean, a chi-squared number if they are (Cochran,
 * Biometrics 10, 1954, 101–129, with matrices for weights; a test of Wald's kind).
 *
 * @param statistic the sum of squares
 * @param degrees its degrees of freedom: numbers times places but one
 */
public record Sameness(double statistic, int degrees) {

  /**
   * The test.
   *
   * @param measured the numbers of each place
   * @param covariances their covariances, which can be inverted
   * @return the test
   */
  public static Sameness of(List<double[]> measured, List<double[][]> covariances) {
    int numbers = measured.get(0).length;
    RealMatrix weight = new Array2DRowRealMatrix(numbers, numbers);
    RealVector sum = new ArrayRealVector(numbers);
    for (int place = 0; place < measured.size(); place++) {
      RealMatrix one = inverse(new Array2DRowRealMatrix(covariances.get(place)));
      weight = weight.add(one);
      sum = sum.add(one.operate(new ArrayRealVector(measured.get(place))));
    }
    RealVector common = inverse(weight).operate(sum);
    double statistic = 0;
    for (int place = 0; place < measured.size(); place++) {
      RealVector off = new ArrayRealVector(measured.get(place)).subtract(common);
      RealMatrix one = inverse(new Array2DRowRealMatrix(covariances.get(place)));
      statistic += off.dotProduct(one.operate(off));
    }
    return new Sameness(statistic, numbers * (measured.size() - 1));
  }

  private static RealMatrix inverse(RealMatrix matrix) {
    return new LUDecomposition(matrix).getSolver().getInverse();
  }

  /**
   * How often equal numbers give a statistic so large.
   *
   * @return 0 to 1
   */
  public double p() {
    return 1 - new ChiSquaredDistribution(null, degrees).cumulativeProbability(statistic);
  }

  /**
   * Above what the statistic lies by chance this rarely.
   *
   * @param level the chance, such as 0.05
   * @return the critical value
   */
  public double critical(double level) {
    return new ChiSquaredDistribution(null, degrees).inverseCumulativeProbability(1 - level);
  }
}
