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
  private final ExactSum cubes = new ExactSum();
  private final ExactSum squaresTimesGames = new ExactSum();
  private final ExactSum timesGamesSquared = new ExactSum();
  private final ExactSum gamesCubed = new ExactSum();
  private long more;
  private long fewer;

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
      long square = Math.multiplyExact(sum, sum);
      long numberSquared = Math.multiplyExact(number, number);
      cubes.add(Math.multiplyExact(square, sum));
      squaresTimesGames.add(Math.multiplyExact(square, number));
      timesGamesSquared.add(Math.multiplyExact(sum, numberSquared));
      gamesCubed.add(Math.multiplyExact(numberSquared, number));
      more += sum > 0 ? 1 : 0;
      fewer += sum < 0 ? 1 : 0;
    }
  }

  /** Carries all numbers out or in. */
  void carry(Carrier carrier) {
    difference.carry(carrier);
    games.carry(carrier);
    differenceSquared.carry(carrier);
    gamesSquared.carry(carrier);
    product.carry(carrier);
    cubes.carry(carrier);
    squaresTimesGames.carry(carrier);
    timesGamesSquared.carry(carrier);
    gamesCubed.carry(carrier);
    more = carrier.carry(more);
    fewer = carrier.carry(fewer);
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
    cubes.add(other.cubes);
    squaresTimesGames.add(other.squaresTimesGames);
    timesGamesSquared.add(other.timesGamesSquared);
    gamesCubed.add(other.gamesCubed);
    more += other.more;
    fewer += other.fewer;
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

  /**
   * The cubes of the deals' differences.
   *
   * @return their sum
   */
  public ExactSum cubes() {
    return cubes;
  }

  /**
   * The squares of the deals' differences times their numbers of games.
   *
   * @return their sum
   */
  public ExactSum squaresTimesGames() {
    return squaresTimesGames;
  }

  /**
   * The deals' differences times the squares of their numbers of games.
   *
   * @return their sum
   */
  public ExactSum timesGamesSquared() {
    return timesGamesSquared;
  }

  /**
   * The cubes of the deals' numbers of games.
   *
   * @return their sum
   */
  public ExactSum gamesCubed() {
    return gamesCubed;
  }

  /**
   * Deals whose differences add up to more than nothing.
   *
   * @return how many
   */
  public long more() {
    return more;
  }

  /**
   * Deals whose differences add up to less than nothing.
   *
   * @return how many
   */
  public long fewer() {
    return fewer;
  }
}
