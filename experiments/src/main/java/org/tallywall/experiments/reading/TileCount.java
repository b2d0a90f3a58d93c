package org.tallywall.experiments.reading;

import java.util.stream.IntStream;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.Seats;
import org.tallywall.core.play.TrialDiscard;

/** Counts what would become of one kind of tile. */
final class TileCount {
  private final int kind;
  private final int thrower;
  private final int[] winsOf = new int[Seats.COUNT];
  private final int[] claimsOf = new int[Seats.COUNT];
  private int guesses;
  private int wins;
  private long paid;
  private int least = Integer.MAX_VALUE;
  private int most;
  private int tried;
  private int claims;

  /**
   * Counts for a kind.
   *
   * @param kind the kind
   * @param thrower whose tile it is
   */
  TileCount(int kind, int thrower) {
    this.kind = kind;
    this.thrower = thrower;
  }

  int kind() {
    return kind;
  }

  /** Counts a guess in which nobody waits for the kind. */
  void quiet() {
    guesses++;
  }

  /**
   * Counts a guess.
   *
   * @param trial the kind has just been thrown there
   * @return whether somebody may win on it
   */
  boolean add(TrialDiscard trial) {
    guesses++;
    int winners = trial.mayWin();
    if (winners == 0) {
      return false;
    }
    wins++;
    int first = Seats.COUNT;
    for (int step = Seats.COUNT - 1; step > 0; step--) {
      int seat = (thrower + step) % Seats.COUNT;
      if ((winners >> seat & 1) != 0) {
        winsOf[seat]++;
        first = seat;
      }
    }
    int pays = -trial.points(first)[thrower];
    paid += pays;
    least = Math.min(least, pays);
    most = Math.max(most, pays);
    return true;
  }

  /**
   * Counts who wants it for an exposure.
   *
   * @param trial the kind has just been thrown there
   * @param won whether somebody may win on it
   */
  void addClaims(TrialDiscard trial, boolean won) {
    tried++;
    int seats = trial.laysOpen();
    claims += seats != 0 && !won ? 1 : 0;
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      claimsOf[seat] += seats >> seat & 1;
    }
  }

  /**
   * What was counted.
   *
   * @param view what the seat knows
   * @param shelters how safe the kind is
   */
  TileReading reading(SeatView view, Shelters shelters) {
    return new TileReading(
        kind,
        view.held(kind),
        guesses,
        wins,
        IntStream.of(winsOf).boxed().toList(),
        paid,
        wins == 0 ? 0 : least,
        most,
        tried,
        claims,
        IntStream.of(claimsOf).boxed().toList(),
        shelters);
  }
}
