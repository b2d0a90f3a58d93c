package org.tallywall.experiments.reading;

/**
 * How many guesses are made of the hidden tiles.
 *
 * @param seed of their random numbers
 * @param guesses how many, 1 or more
 * @param tried in how many of them the supposed players are asked, 1 or more, at most all
 */
public record Draws(long seed, int guesses, int tried) {
  /**
   * Checks the numbers.
   *
   * @param seed of their random numbers
   * @param guesses how many
   * @param tried in how many of them players are asked
   * @throws IllegalArgumentException if a number is out of its range
   */
  public Draws {
    if (guesses < 1 || tried < 1 || tried > guesses) {
      throw new IllegalArgumentException(guesses + " guesses, " + tried + " of them tried");
    }
  }
}
