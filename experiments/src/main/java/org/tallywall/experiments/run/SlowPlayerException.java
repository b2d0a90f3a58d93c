package org.tallywall.experiments.run;

import org.tallywall.experiments.words.Words;

/** A player took longer for a decision than is allowed. */
public final class SlowPlayerException extends RunEndingPlayerException {
  private static final long serialVersionUID = 1L;
  private static final long MILLIS = 1_000;

  SlowPlayerException(GamePlace game, int seat, long limitMillis) {
    super(
        "took longer than "
            + Words.count(limitMillis / MILLIS, "second", "seconds")
            + " for an answer",
        game,
        seat,
        null);
  }
}
