package org.tallywall.experiments.manners;

import java.math.BigInteger;
import org.tallywall.experiments.stats.Estimate;
import org.tallywall.experiments.stats.Moments;
import org.tallywall.experiments.stats.Proportion;

/** How often something happens, game by game, as exact sums. */
public final class PerGame {
  private long games;
  private long gamesWith;
  private long sum;
  private long squares;

  PerGame() {}

  /** Adds a game. */
  void add(long number) {
    games++;
    gamesWith += number > 0 ? 1 : 0;
    sum += number;
    squares += number * number;
  }

  /**
   * How many games were counted.
   *
   * @return 0 or more
   */
  public long games() {
    return games;
  }

  /**
   * How often it happened.
   *
   * @return 0 or more
   */
  public long number() {
    return sum;
  }

  /**
   * How often it happens in a game.
   *
   * @param confidence the level, between 0 and 1
   * @return the mean over the games, one or more
   */
  public Estimate inAGame(double confidence) {
    return new Moments(games, BigInteger.valueOf(sum), BigInteger.valueOf(squares))
        .estimate(confidence, 1);
  }

  /**
   * In which share of the games it happens at all.
   *
   * @param confidence the level, between 0 and 1
   * @return 0 to 1, of one game or more
   */
  public Estimate games(double confidence) {
    return new Proportion(gamesWith, games).estimate(confidence);
  }
}
