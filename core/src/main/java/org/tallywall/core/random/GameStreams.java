package org.tallywall.core.random;

/**
 * The streams of one game after the other, all in one object that is turned from one piece of work
 * to the next. Whoever holds this can turn the stream; whoever is handed the stream cannot.
 *
 * <p>A game that is played on from what a player knows has only the numbers of playouts: otherwise
 * a player could turn the stream that came with its question to the wall.
 */
public final class GameStreams {
  private final RandomStream stream =
      new RandomStream(new StreamKey(0, 0, Purpose.ROLLOUT, 0, 0, 0));
  private boolean playsOn;

  /** The streams of no game yet. */
  public GameStreams() {}

  /**
   * Takes up a deal.
   *
   * @param seed the study's seed
   * @param deal the deal, from 0
   */
  public void begin(long seed, long deal) {
    playsOn = false;
    stream.begin(seed, deal);
  }

  /**
   * Takes up a game that is played on in a player's head.
   *
   * @param question the stream that came with the question; its seed and deal are taken
   */
  public void playOn(RandomStream question) {
    playsOn = true;
    stream.begin(question);
  }

  /**
   * Takes up the game of other streams, to be played on.
   *
   * @param others the other streams
   */
  public void playOn(GameStreams others) {
    playOn(others.stream);
  }

  /**
   * The stream of a piece of work.
   *
   * @param purpose what the numbers are for
   * @param seat the seat concerned
   * @param sample which of several samples, from 0
   * @param decision the moment of the game
   * @return always the same object, good until the next call
   * @throws IllegalStateException if a game is played on and the purpose is no playout
   */
  public RandomStream turnTo(Purpose purpose, int seat, int sample, long decision) {
    if (playsOn && purpose != Purpose.ROLLOUT) {
      throw new IllegalStateException("a game played on has the numbers of playouts alone");
    }
    stream.turnTo(purpose, seat, sample, decision);
    return stream;
  }
}
