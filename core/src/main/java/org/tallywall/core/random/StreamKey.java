package org.tallywall.core.random;

/**
 * What a stream of random numbers belongs to. The key names the piece of work, never the thread,
 * the order of work, the way of playing or the player, so that different ways of playing meet the
 * same luck.
 *
 * @param seed the study's seed
 * @param deal the deal, from 0
 * @param purpose what the numbers are for
 * @param seat the seat concerned, 0 to 3, or 0; in games played on, 4 to 7 for its blind passes
 * @param sample which of several samples, from 0
 * @param decision the moment of the game: 16 times its events so far, plus the kind of question
 */
public record StreamKey(
    long seed, long deal, Purpose purpose, int seat, int sample, long decision) {
  /** Version of the whole scheme; a change of it changes every result. */
  public static final int STREAM_VERSION = 1;

  /**
   * The key as the six words of a Philox 4x64 generator. The third word counts the generator's own
   * blocks and starts at 0: anything else there makes neighboring keys share numbers.
   *
   * @return a fresh array of six words
   */
  public long[] words() {
    return words(seed, deal, purpose, seat, sample, decision);
  }

  static long[] words(long seed, long deal, Purpose purpose, int seat, int sample, long decision) {
    long lane = purpose.number() + ((long) seat << 8) + ((long) sample << 32);
    return new long[] {seed, STREAM_VERSION, 0, deal, lane, decision};
  }
}
