package org.tallywall.experiments.tally;

/**
 * What a habit did to one measure in the games in which it came into play, and in those alone. A
 * deal gives two numbers: in how many of its games that was so, and by how much these differ from
 * the same games without it.
 */
public final class EffectTally {
  private final ExactSum difference = new ExactSum();
  private final ExactSum games = new ExactSum();
  private final ExactSum differenceSquared = new ExactSum();
  private final ExactSum gamesSquared = new ExactSum();
  private final ExactSum product = new ExactSum();

  /** No deals yet. */
  public EffectTally() {}

  /**
   * Counts a deal.
   *
   * @param sum sum of the differences over the deal's games in which it came into play
   * @param number how many these are
   */
  public void addDeal(long sum, long number) {
    if (number > 0) {
      difference.add(sum);
      games.add(number);
      differenceSquared.addSquare(sum);
      gamesSquared.addSquare(number);
      product.add(Math.multiplyExact(sum, number));
    }
  }

  /** Carries all numbers out or in. */
  void carry(Carrier carrier) {
    difference.carry(carrier);
    games.carry(carrier);
    differenceSquared.carry(carrier);
    gamesSquared.carry(carrier);
    product.carry(carrier);
  }

  /**
   * Adds the deals of another tally.
   *
   * @param other of the same habit and measure
   */
  public void add(EffectTally other) {
    difference.add(other.difference);
    games.add(other.games);
    differenceSquared.add(other.differenceSquared);
    gamesSquared.add(other.gamesSquared);
    product.add(other.product);
  }

  /**
   * The differences.
   *
   * @return their sum over all games in which it came into play
   */
  public ExactSum difference() {
    return difference;
  }

  /**
   * The games in which it came into play.
   *
   * @return how many
   */
  public ExactSum games() {
    return games;
  }

  /**
   * The squares of the deals' differences.
   *
   * @return their sum
   */
  public ExactSum differenceSquared() {
    return differenceSquared;
  }

  /**
   * The squares of the deals' numbers of games.
   *
   * @return their sum
   */
  public ExactSum gamesSquared() {
    return gamesSquared;
  }

  /**
   * The deals' differences times their numbers of games.
   *
   * @return their sum
   */
  public ExactSum product() {
    return product;
  }
}
