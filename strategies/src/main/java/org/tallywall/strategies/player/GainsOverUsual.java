package org.tallywall.strategies.player;

/** What choices brought beyond the usual one, world by world on the same guesses. */
final class GainsOverUsual {
  private final double[] sum;
  private final double[] squares;
  private final int[] worlds;

  /**
   * Nothing counted yet.
   *
   * @param choices how many choices there are, the usual one first
   */
  GainsOverUsual(int choices) {
    sum = new double[choices];
    squares = new double[choices];
    worlds = new int[choices];
  }

  /**
   * Counts one world.
   *
   * @param choice a choice, from 0
   * @param points what it brought beyond the usual one there
   */
  void add(int choice, double points) {
    sum[choice] += points;
    squares[choice] += points * points;
    worlds[choice]++;
  }

  /**
   * The mean difference.
   *
   * @param choice a choice that was counted
   * @return points
   */
  double mean(int choice) {
    return sum[choice] / worlds[choice];
  }

  /**
   * Whether a choice is better than the usual one by more than chance explains.
   *
   * @param choice a choice that was counted
   * @param surerBy standard errors of the mean difference that it must be above 0
   * @return true if so
   */
  boolean surelyBetter(int choice, double surerBy) {
    double mean = mean(choice);
    double variance = squares[choice] / worlds[choice] - mean * mean;
    return mean > 0 && mean > surerBy * Math.sqrt(Math.max(0, variance) / worlds[choice]);
  }
}
