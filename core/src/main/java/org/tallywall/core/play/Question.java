package org.tallywall.core.play;

/** The kinds of questions put to players; their numbers stand in stream keys and never change. */
enum Question {
  DECLARE(0),
  STOP(7),
  COURTESY_NUMBER(8),
  COURTESY_TILES(9),
  CLAIM(10),
  TURN(11);

  private static final int MOMENTS_PER_EVENT = 16;

  private final int number;

  Question(int number) {
    this.number = number;
  }

  /**
   * The word of a stream key for this question.
   *
   * @param events how many events the game has had
   * @return the moment
   */
  long moment(long events) {
    return MOMENTS_PER_EVENT * events + number;
  }

  /**
   * The word of a stream key for a pass.
   *
   * @param events how many events the game has had
   * @param step the pass
   * @return the moment
   */
  static long moment(long events, PassStep step) {
    return MOMENTS_PER_EVENT * events + step.number();
  }
}
