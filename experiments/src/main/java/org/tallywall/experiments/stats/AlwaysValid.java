package org.tallywall.experiments.stats;

import org.apache.commons.math3.special.Gamma;
import org.apache.commons.math3.util.FastMath;

/**
 * Bands that hold at every number of deals at once, so that one may look as often as one likes and
 * stop when the answer is clear.
 *
 * <p>Howard, Ramdas, McAuliffe and Sekhon, "Time-uniform, nonparametric, nonasymptotic confidence
 * sequences", Annals of Statistics 49 (2021) 1055–1080; for unbounded values Waudby-Smith, Arbour,
 * Sinha, Kennedy and Ramdas, "Time-uniform central limit theory and asymptotic confidence
 * sequences", Annals of Statistics (2024). The tuning constant decides only where the band is
 * tightest and must be fixed before the deals are seen.
 */
public final class AlwaysValid {
  private static final double TOLERANCE = 1e-12;

  private AlwaysValid() {}

  /**
   * The tuning constant that makes a band tightest at a sum of squares.
   *
   * @param optimum the sum of squares expected at the planned number of deals, above 0
   * @param alpha chance to miss the truth ever, both sides together
   * @return the constant
   */
  public static double tuning(double optimum, double alpha) {
    double twice = 2 * FastMath.log(1 / alpha);
    return optimum / (twice + FastMath.log(1 + twice));
  }

  /**
   * The normal mixture's bound on a sum, both sides together.
   *
   * @param v sum of squares, 0 or more
   * @param rho the tuning constant
   * @param alpha chance to miss, both sides together
   * @return the bound
   */
  public static double normalMixture(double v, double rho, double alpha) {
    return Math.sqrt((v + rho) * (FastMath.log(1 + v / rho) + 2 * FastMath.log(1 / alpha)));
  }

  /**
   * The logarithm of the gamma-exponential mixture at a sum.
   *
   * @param s the sum, 0 or more
   * @param v sum of squares, 0 or more
   * @param rho the tuning constant
   * @param c width of the range of the values
   * @return the logarithm
   */
  public static double logGammaExponential(double s, double v, double rho, double c) {
    double r = rho / (c * c);
    double w = (v + rho) / (c * c);
    double k = (c * s + v) / (c * c);
    return r * FastMath.log(r)
        - Gamma.logGamma(r)
        - FastMath.log(Gamma.regularizedGammaP(r, r))
        + Gamma.logGamma(w)
        + FastMath.log(Gamma.regularizedGammaP(w, k + r))
        - w * FastMath.log(k + r)
        + k;
  }

  /**
   * The bound of the gamma-exponential mixture on a sum, one side.
   *
   * @param v sum of squared errors of predictions, 0 or more
   * @param rho the tuning constant
   * @param alpha chance to miss on this side
   * @param c width of the range of the values
   * @return the bound
   */
  public static double gammaExponential(double v, double rho, double alpha, double c) {
    double target = FastMath.log(1 / alpha);
    double low = 0;
    double high = 1;
    while (logGammaExponential(high, v, rho, c) < target) {
      high *= 2;
    }
    while (high - low > TOLERANCE * Math.max(1, high)) {
      double middle = (low + high) / 2;
      if (logGammaExponential(middle, v, rho, c) < target) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return (low + high) / 2;
  }

  /**
   * Half the width of the empirical-Bernstein band of a mean of bounded values.
   *
   * @param n number of deals, 1 or more
   * @param v sum of squared errors of each value against the mean of those before it
   * @param rho the tuning constant
   * @param alpha chance to miss ever, both sides together
   * @param c width of the range of the values
   * @return the half-width
   */
  public static double empiricalBernstein(long n, double v, double rho, double alpha, double c) {
    return gammaExponential(v, rho, alpha / 2, c) / n;
  }

  /**
   * Half the width of the asymptotic band of a mean, for values without bounds; from 1,000 deals
   * on.
   *
   * @param n number of deals
   * @param variance their variance
   * @param rho the tuning constant
   * @param alpha chance to miss ever, both sides together
   * @return the half-width
   */
  public static double asymptotic(long n, double variance, double rho, double alpha) {
    return normalMixture(n * variance, rho, alpha) / n;
  }
}
