package org.tallywall.experiments.club;

import org.apache.commons.math3.special.Gamma;
import org.apache.commons.math3.util.FastMath;

/**
 * How likely counts are at a table of which games were played: the compound multinomial
 * distribution (Mosimann, Biometrika 49, 1962, 65-82), with half a game in each box before any was
 * played (Jeffreys). So what the played games leave open is counted. Wall games, self-picked wins
 * and families are taken one after the other, as if one did not lean on the other within the wins.
 */
final class Likelihood {
  private static final double PRIOR = 0.5;

  private Likelihood() {}

  /** The logarithm, without what depends on the tally alone and so is the same at every table. */
  static double log(long[][] tally, long[][] played) {
    double sum = 0;
    for (int part = 0; part < tally.length; part++) {
      sum += log(tally[part], played[part]);
    }
    return sum;
  }

  private static double log(long[] tally, long[] played) {
    double sum = 0;
    double before = 0;
    double after = 0;
    for (int box = 0; box < tally.length; box++) {
      double known = played[box] + PRIOR;
      sum += Gamma.logGamma(known + tally[box]) - Gamma.logGamma(known);
      before += known;
      after += known + tally[box];
    }
    return tally.length == 0 ? 0 : sum + Gamma.logGamma(before) - Gamma.logGamma(after);
  }

  /** Shares that add up to 1, where each table was as likely as the next before. */
  static double[] shares(double[] logs) {
    double most = Double.NEGATIVE_INFINITY;
    for (double one : logs) {
      most = StrictMath.max(most, one);
    }
    double[] shares = new double[logs.length];
    double sum = 0;
    for (int at = 0; at < logs.length; at++) {
      shares[at] = FastMath.exp(logs[at] - most);
      sum += shares[at];
    }
    for (int at = 0; at < logs.length; at++) {
      shares[at] /= sum;
    }
    return shares;
  }

  /** How far counts are from what a table gives: the statistic G, twice the sum of o ln(o / e). */
  static double distance(long[][] tally, long[][] played) {
    double sum = 0;
    for (int part = 0; part < tally.length; part++) {
      double known = 0;
      long all = 0;
      for (int box = 0; box < tally[part].length; box++) {
        known += played[part][box] + PRIOR;
        all += tally[part][box];
      }
      for (int box = 0; box < tally[part].length; box++) {
        long found = tally[part][box];
        double expected = all * (played[part][box] + PRIOR) / known;
        sum += found == 0 ? 0 : 2 * found * FastMath.log(found / expected);
      }
    }
    return sum;
  }
}
