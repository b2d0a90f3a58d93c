package org.tallywall.experiments.run;

/** A player ended the whole program in the middle of a game. */
public final class ExitingPlayerException extends RunEndingPlayerException {
  private static final long serialVersionUID = 1L;

  ExitingPlayerException(GamePlace game, int seat) {
    super("ended the whole program", game, seat, null);
  }
}
