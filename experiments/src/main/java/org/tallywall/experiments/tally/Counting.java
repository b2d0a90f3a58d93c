package org.tallywall.experiments.tally;

import org.tallywall.core.play.Outcome;
import org.tallywall.core.play.Seats;

/** A tally, and the seats of a game that are counted into it. */
final class Counting {
  private final TableTally tally;
  private final int mask;
  private int away;

  Counting(TableTally tally, int mask) {
    this.tally = tally;
    this.mask = mask;
  }

  TableTally tally() {
    return tally;
  }

  int mask() {
    return mask;
  }

  boolean counts(int seat) {
    return (mask >> seat & 1) == 1;
  }

  /** A game begins; the racks have been measured. */
  void began(Distances distances) {
    away = distances.sum(mask);
  }

  /** A pass has been made; the racks have been measured anew. */
  void passed(int pass, Distances distances) {
    int before = away;
    away = distances.sum(mask);
    tally.passes().addPass(pass, Integer.bitCount(mask), before, away);
  }

  void stopAsked(int stoppers) {
    tally.passes().addStop(stoppers != 0, Integer.bitCount(stoppers & mask));
  }

  void ended(EndTally.End end, Outcome outcome) {
    long points = 0;
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      points += counts(seat) ? outcome.points().get(seat) : 0;
    }
    tally.ends().add(end, outcome.wall());
    tally.endGame(outcome.win() != null && counts(outcome.win().seat()) ? 1 : 0, points);
  }
}
