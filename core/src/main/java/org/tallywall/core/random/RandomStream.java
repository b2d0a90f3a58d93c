package org.tallywall.core.random;

import org.apache.commons.rng.core.source64.Philox4x64;

/**
 * Random numbers of one key: Philox 4x64 (Salmon, Moraes, Dror and Shaw, SC 2011) from Commons RNG.
 * The generator is made when the first number is asked for, so a stream that nobody uses costs
 * nothing. Not safe for use by several threads.
 *
 * <p>Whoever is handed a stream gets its numbers and those of {@link #beside}, and nothing that
 * leads to the numbers of another purpose: a player must not be able to look at the wall. Only
 * {@link GameStreams} turns streams.
 */
public final class RandomStream {
  private static final long LOW_32 = 0xFFFF_FFFFL;

  private long seed;
  private long deal;
  private Purpose purpose;
  private int seat;
  private int sample;
  private long decision;
  private Philox4x64 source;

  /**
   * The stream of a key.
   *
   * @param key what the numbers belong to
   */
  public RandomStream(StreamKey key) {
    begin(key.seed(), key.deal());
    turnTo(key.purpose(), key.seat(), key.sample(), key.decision());
  }

  /** Turns this stream to a deal, so that one object serves many games. */
  void begin(long seed, long deal) {
    this.seed = seed;
    this.deal = deal;
    this.source = null;
  }

  /** Turns this stream to the deal of another. */
  void begin(RandomStream other) {
    begin(other.seed, other.deal);
  }

  /**
   * A stream for the same seat, deal and moment, to play the game out in the head.
   *
   * @param other what its numbers are for: {@link Purpose#ROLLOUT}
   * @param which which of several samples, from 0
   * @return a new stream
   * @throws IllegalArgumentException for any other purpose, such as the wall
   */
  public RandomStream beside(Purpose other, int which) {
    if (other != Purpose.ROLLOUT) {
      throw new IllegalArgumentException("beside a stream there are those of playouts alone");
    }
    return new RandomStream(new StreamKey(seed, deal, other, seat, which, decision));
  }

  /** Turns this stream to another piece of work of the same deal. */
  void turnTo(Purpose purpose, int seat, int sample, long decision) {
    this.purpose = purpose;
    this.seat = seat;
    this.sample = sample;
    this.decision = decision;
    this.source = null;
  }

  /**
   * The next 64 random bits.
   *
   * @return any long, all equally likely
   */
  public long nextLong() {
    if (source == null) {
      source = new Philox4x64(StreamKey.words(seed, deal, purpose, seat, sample, decision));
    }
    return source.nextLong();
  }

  /**
   * A whole number below a bound, all equally likely: the upper 32 bits of an output times the
   * bound, with rejection (Lemire, ACM Trans. Model. Comput. Simul. 29, 2019).
   *
   * @param bound the bound, 1 or more
   * @return 0 to {@code bound - 1}
   * @throws IllegalArgumentException if the bound is below 1
   */
  public int below(int bound) {
    if (bound < 1) {
      throw new IllegalArgumentException("the bound is 1 or more, not " + bound);
    }
    long product = (nextLong() >>> 32) * bound;
    if ((product & LOW_32) < bound) {
      long least = ((1L << 32) - bound) % bound;
      while ((product & LOW_32) < least) {
        product = (nextLong() >>> 32) * bound;
      }
    }
    return (int) (product >>> 32);
  }

  /**
   * Whether something of the given chance happens.
   *
   * @param chance 0 to 1; 0 never happens and draws no number, 1 always and draws none either
   * @return true with that chance, to within 2^-53
   */
  public boolean happens(double chance) {
    if (chance <= 0) {
      return false;
    }
    return chance >= 1 || (nextLong() >>> 11) * 0x1.0p-53 < chance;
  }

  /**
   * Puts the first numbers of an array into random order: the descending shuffle (Fisher and Yates;
   * Knuth, The Art of Computer Programming 2, 3.4.2, algorithm P).
   *
   * @param values the array, changed in place
   * @param length how many of its first values take part
   */
  public void shuffle(int[] values, int length) {
    for (int last = length - 1; last > 0; last--) {
      int other = below(last + 1);
      int kept = values[last];
      values[last] = values[other];
      values[other] = kept;
    }
  }
}
