package org.tallywall.core.play;

import org.tallywall.core.random.Purpose;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.random.StreamKey;
import org.tallywall.core.tile.TileSet;

/**
 * The luck of one game: the wall and the dice. The wall is shuffled once; dice have a stream of
 * their own, so that rules about them change no tile (rule 1.2.5).
 */
public final class Deal {
  /** Number of tiles dealt: 14 to East and 13 to each of the others (rule 1.3). */
  public static final int DEALT = 53;

  private final long seed;
  private final long number;
  private final int[] wall;
  private final int firstDie;
  private final int secondDie;
  private final int sample;

  private Deal(long seed, long number, int[] wall, int[] dice, int sample) {
    this.seed = seed;
    this.number = number;
    this.wall = wall;
    this.firstDie = dice[0];
    this.secondDie = dice[1];
    this.sample = sample;
  }

  /**
   * A deal by its number.
   *
   * @param seed the study's seed
   * @param number the deal, from 0
   * @param tiles the tiles on the table
   * @return always the same deal for the same arguments
   */
  public static Deal of(long seed, long number, TileSet tiles) {
    int[] wall = tiles.tiles();
    stream(seed, number, Purpose.WALL).shuffle(wall, wall.length);
    RandomStream dice = stream(seed, number, Purpose.DICE);
    int first = dice.below(6) + 1;
    int second = dice.below(6) + 1;
    return new Deal(seed, number, wall, new int[] {first, second}, 0);
  }

  private static RandomStream stream(long seed, long number, Purpose purpose) {
    return new RandomStream(new StreamKey(seed, number, purpose, 0, 0, 0));
  }

  /**
   * A deal with a given wall, for positions set up by hand.
   *
   * @param seed seed of the other streams
   * @param number number of the deal in their keys
   * @param wall the tiles in the order in which they are taken
   * @param dice the two dice, 1 to 6 each
   * @return the deal
   */
  public static Deal stacked(long seed, long number, int[] wall, int... dice) {
    return new Deal(seed, number, wall.clone(), dice, 0);
  }

  /**
   * The same wall and dice, with other luck in what players decide by chance and in blind passes.
   *
   * @param other which sample of that luck; 0 is the usual one
   * @return a deal that shares the wall with this one
   */
  public Deal withLuck(int other) {
    return new Deal(seed, number, wall, new int[] {firstDie, secondDie}, other);
  }

  /**
   * Which sample of the luck of decisions the game takes.
   *
   * @return 0 unless asked for otherwise
   */
  public int sample() {
    return sample;
  }

  /**
   * The seed.
   *
   * @return any long
   */
  public long seed() {
    return seed;
  }

  /**
   * The deal's number.
   *
   * @return 0 or more
   */
  public long number() {
    return number;
  }

  /**
   * How many tiles the wall has before the deal.
   *
   * @return 152 for the usual tiles
   */
  public int size() {
    return wall.length;
  }

  /**
   * A tile of the wall.
   *
   * @param index its place in the order in which tiles are taken, from 0
   * @return its kind
   */
  public int tile(int index) {
    return wall[index];
  }

  /**
   * One of the dice.
   *
   * @param which 0 or 1
   * @return 1 to 6
   */
  public int die(int which) {
    return which == 0 ? firstDie : secondDie;
  }

  /**
   * The seat to which a tile is dealt (rule 1.3.2).
   *
   * @param index its place in the wall, 0 to 52
   * @return 0 to 3
   */
  public static int dealtTo(int index) {
    return index < 48 ? index / 4 % 4 : index == 52 ? Seats.EAST : index - 48;
  }

  /**
   * How many tiles a seat is dealt, and holds until the first is thrown (rule 1.3).
   *
   * @param seat 0 to 3
   * @return 14 for East, 13 for the others
   */
  public static int tilesOf(int seat) {
    return seat == Seats.EAST ? 14 : 13;
  }
}
