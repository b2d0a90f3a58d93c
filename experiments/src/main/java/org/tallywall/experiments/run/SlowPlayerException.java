package org.tallywall.experiments.run;

/** A player took longer for a decision than is allowed. */
public final class SlowPlayerException extends RunEndingPlayerException {
  private static final long serialVersionUID = 1L;

  SlowPlayerException(GamePlace game, int seat) {
    super("no answer within the time allowed", game, seat, null);
  }
}
