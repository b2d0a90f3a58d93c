package org.tallywall.experiments.stats;

import java.util.Arrays;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.tallywall.core.random.RandomStream;

/**
 * Draws the deals of a study again, whole and with replacement, to see how far their mean may be
 * off without leaning on the normal curve (Efron and Tibshirani, An Introduction to the Bootstrap,
 * 1993; the corrected limits are those of Efron, Journal of the American Statistical Association 82
 * (1987) 171–185).
 */
public final class Bootstrap {
  private static final NormalDistribution NORMAL = new NormalDistribution();

  private final double[] values;
  private final double mean;
  private final double[] means;

  /**
   * Draws the deals again.
   *
   * @param values one value a deal, two deals or more
   * @param resamples how often they are drawn, 1 or more
   * @param random decides what is drawn
   * @throws IllegalArgumentException with fewer than two deals or no resample
   */
  public Bootstrap(double[] values, int resamples, RandomStream random) {
    if (values.length < 2 || resamples < 1) {
      throw new IllegalArgumentException("two deals are drawn again at least once");
    }
    this.values = values.clone();
    this.mean = mean(values);
    this.means = new double[resamples];
    for (int sample = 0; sample < resamples; sample++) {
      double sum = 0;
      for (int draw = 0; draw < values.length; draw++) {
        sum += values[random.below(values.length)];
      }
      means[sample] = sum / values.length;
    }
    Arrays.sort(means);
  }

  private static double mean(double[] values) {
    double sum = 0;
    for (double value : values) {
      sum += value;
    }
    return sum / values.length;
  }

  /**
   * The standard error that ever more resamples would come to; it has a closed form for a mean.
   *
   * @param values one value a deal
   * @return 0 or more, in the unit of the values
   */
  public static double idealStandardError(double... values) {
    double mean = mean(values);
    double squares = 0;
    for (double value : values) {
      squares += (value - mean) * (value - mean);
    }
    return Math.sqrt(squares) / values.length;
  }

  /**
   * The spread of the resamples' means.
   *
   * @return their standard deviation, 0 or more
   */
  public double standardError() {
    double centre = mean(means);
    double squares = 0;
    for (double one : means) {
      squares += (one - centre) * (one - centre);
    }
    return means.length < 2 ? 0 : Math.sqrt(squares / (means.length - 1));
  }

  /**
   * The plain percentile limits.
   *
   * @param confidence the level, between 0 and 1
   * @return the interval
   */
  public Interval percentile(double confidence) {
    double tail = (1 - confidence) / 2;
    return new Interval(quantile(tail), quantile(1 - tail));
  }

  /**
   * The limits corrected for bias and for a spread that changes with the mean.
   *
   * @param confidence the level, between 0 and 1
   * @return the interval; that of {@link #percentile} where all values are alike
   */
  public Interval corrected(double confidence) {
    double shift = bias();
    if (!Double.isFinite(shift)) {
      return percentile(confidence);
    }
    double tail = (1 - confidence) / 2;
    double acceleration = acceleration(values);
    return new Interval(
        quantile(level(tail, shift, acceleration)), quantile(level(1 - tail, shift, acceleration)));
  }

  /** The normal quantile of the share of resamples below the mean, ties counted half. */
  private double bias() {
    long below = 0;
    long ties = 0;
    double near = 1e-12 * Math.max(1, Math.abs(mean));
    for (double one : means) {
      if (Math.abs(one - mean) <= near) {
        ties++;
      } else if (one < mean) {
        below++;
      }
    }
    double share = (below + ties / 2.0) / means.length;
    return NORMAL.inverseCumulativeProbability(share);
  }

  /**
   * How fast the spread of the mean changes with the mean, from the skewness of the values.
   *
   * @param values one value a deal
   * @return the acceleration; 0 where all values are alike
   */
  public static double acceleration(double... values) {
    double mean = mean(values);
    double squares = 0;
    double cubes = 0;
    for (double value : values) {
      double gap = value - mean;
      squares += gap * gap;
      cubes += gap * gap * gap;
    }
    return squares == 0 ? 0 : cubes / (6 * squares * Math.sqrt(squares));
  }

  /**
   * The level at which a corrected limit is read off.
   *
   * @param tail the level asked for, between 0 and 1
   * @param shift the bias, as a normal quantile
   * @param acceleration how fast the spread changes
   * @return a level between 0 and 1
   */
  static double level(double tail, double shift, double acceleration) {
    double z = shift + NORMAL.inverseCumulativeProbability(tail);
    return NORMAL.cumulativeProbability(shift + z / (1 - acceleration * z));
  }

  private double quantile(double level) {
    int at = (int) Math.ceil(level * means.length) - 1;
    return means[Math.max(0, Math.min(means.length - 1, at))];
  }
}
