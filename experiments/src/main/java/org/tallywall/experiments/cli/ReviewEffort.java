package org.tallywall.experiments.cli;

import java.util.concurrent.TimeUnit;
import org.tallywall.experiments.error.WrongInputException;
import org.tallywall.experiments.review.ReviewLimits;
import org.tallywall.experiments.run.RunLimits;
import org.tallywall.experiments.study.Patience;

/**
 * How much a review may take.
 *
 * @param nanos time for all tables, in nanoseconds
 * @param games games for all tables
 * @param threads how many threads play
 */
record ReviewEffort(long nanos, long games, int threads) {
  private static final long USUAL_SECONDS = 20;
  private static final long MOST_SECONDS = Patience.MOST_SECONDS;
  private static final long MOST_GAMES = 1_000_000_000;

  static ReviewEffort of(Long seconds, Long playouts, int threads) {
    if (seconds != null && (seconds < 1 || seconds > MOST_SECONDS)) {
      throw new WrongInputException(
          "--seconds takes a number from 1 to 86,400, which is a day, not " + seconds);
    } else if (playouts != null && (playouts < 1 || playouts > MOST_GAMES)) {
      throw new WrongInputException(
          "--playouts takes a number from 1 to 1,000,000,000, not " + playouts);
    }
    Long time = seconds == null && playouts == null ? Long.valueOf(USUAL_SECONDS) : seconds;
    return new ReviewEffort(
        time == null ? ReviewLimits.ANY_TIME : TimeUnit.SECONDS.toNanos(time),
        playouts == null ? ReviewLimits.ANY_GAMES : playouts,
        threads);
  }

  /** The share of one table. */
  ReviewLimits share(int tables) {
    return new ReviewLimits(
        games == ReviewLimits.ANY_GAMES ? games : games / tables,
        nanos == ReviewLimits.ANY_TIME ? nanos : nanos / tables,
        RunLimits.of(threads, Patience.USUAL.decisionSeconds()));
  }
}
