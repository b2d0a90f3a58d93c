package org.tallywall.experiments.school;

import java.math.BigInteger;
import java.util.Optional;
import org.tallywall.experiments.stats.Interval;
import org.tallywall.experiments.stats.Moments;

/**
 * How another choice met the one made: what it brought more, world by world, in the same worlds.
 *
 * @param worlds how many worlds, 0 or more
 * @param sum points that the other brought more
 * @param squares the sum of the squares of these differences
 */
public record Met(int worlds, long sum, long squares) {
  /** They never met. */
  static final Met NEVER = new Met(0, 0, 0);

  /** What comes of the points of the other and of the choice made, by world. */
  static Met of(int[] other, int[] made) {
    long sum = 0;
    long squares = 0;
    for (int world = 0; world < other.length; world++) {
      long more = (long) other[world] - made[world];
      sum += more;
      squares += more * more;
    }
    return new Met(other.length, sum, squares);
  }

  /**
   * What the other brings more.
   *
   * @return points a game; 0 where they never met
   */
  public double mean() {
    return worlds == 0 ? 0 : (double) sum / worlds;
  }

  /**
   * How many standard errors the mean lies above 0, as they would be if the two were alike.
   *
   * @return below 0 where the choice made brings more; 0 where every world ended alike
   */
  double errors() {
    return squares == 0 ? 0 : sum / Math.sqrt(squares);
  }

  /** The mean less such a standard error, in points a game. */
  double atLeast() {
    return worlds == 0 ? 0 : (sum - Math.sqrt(squares)) / worlds;
  }

  /**
   * The mean with Student's range.
   *
   * @return the range; none where the two never met, or always ended alike
   */
  public Optional<Interval> range() {
    return worlds == 0
        ? Optional.empty()
        : new Moments(worlds, BigInteger.valueOf(sum), BigInteger.valueOf(squares))
            .estimate(SchoolResult.CONFIDENCE, 1)
            .interval();
  }
}
