package org.tallywall.strategies.read;

import java.util.Arrays;
import java.util.List;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.Seats;
import org.tallywall.core.tile.Tile;

/**
 * What discards and passes tell about a tile, apart from exposures: by what the chance that an
 * opponent takes it is to be multiplied.
 *
 * <p>Fitted with {@link RiskTable} to the same 3,000 games of four {@code reckoner}. A kind that
 * she threw herself was won on a tenth to a twentieth as often as without that, one that went round
 * among the last four discards a sixth to an eighth, one that she passed to the reader an eighth to
 * a half; with each copy that lies face up it was won on less.
 */
final class Evidence {
  private static final int ROUND = 4;

  private static final Factors WIN =
      new Factors(
          new Against(0.10, 0.17, 0.12, new double[] {1, 0.21, 0.145, 0.07}),
          new Against(0.05, 0.125, 0.48, new double[] {1, 0.46, 0.28, 0.25}));

  private static final Factors CLAIM =
      new Factors(
          new Against(0.07, 0.29, 0.11, new double[] {1, 0.20, 0.08, 0.04}),
          new Against(0.11, 0.32, 0.30, new double[] {1, 0.30, 0.17, 0.12}));

  /** Factors against a closed rack and against one that shows exposures. */
  record Factors(Against closed, Against exposed) {}

  /** Factors of each kind of evidence, and by the copies that lie face up. */
  record Against(double threw, double wentRound, double passed, double[] lying) {}

  private final long[] threw = new long[Seats.COUNT];
  private final long[] passed = new long[Seats.COUNT];
  private final int[] blind = new int[Seats.COUNT];
  private final int[] lying = new int[Tile.KINDS];
  private long recent;

  /**
   * Gathers it.
   *
   * @param view what the seat knows
   * @param settings which evidence counts
   */
  void gather(SeatView view, ReadSettings settings) {
    Arrays.fill(threw, 0);
    Arrays.fill(passed, 0);
    Arrays.fill(blind, 0);
    recent = 0;
    int discards = settings.discards() ? view.discards() : 0;
    for (int at = 0; at < discards; at++) {
      long bit = 1L << view.discardTile(at);
      threw[view.discardSeat(at)] |= bit;
      recent |= at >= discards - ROUND ? bit : 0;
    }
    for (int kind = 0; kind < Tile.KINDS; kind++) {
      lying[kind] = settings.discards() ? view.faceUp(kind) : 0;
    }
    if (settings.passes() || settings.blind() > 0) {
      readPasses(view, settings.passes());
    }
  }

  private void readPasses(SeatView view, boolean tiles) {
    for (SeatView.PassSeen pass : view.passes()) {
      for (int seat = 0; seat < Seats.COUNT; seat++) {
        blind[seat] += pass.blind().get(seat);
      }
      boolean courtesy = pass.step() == null;
      int giver = courtesy ? Seats.across(view.seat()) : pass.step().from(view.seat());
      if (tiles && pass.blind().get(giver) == 0) {
        passed[giver] |= bits(pass.received());
      }
    }
  }

  private static long bits(List<Integer> kinds) {
    long bits = 0;
    for (int kind : kinds) {
      bits |= 1L << kind;
    }
    return bits;
  }

  /**
   * What counts for wins.
   *
   * @return the factors
   */
  Factors win() {
    return WIN;
  }

  /**
   * What counts for exposures.
   *
   * @return the factors
   */
  Factors claim() {
    return CLAIM;
  }

  /**
   * By what the chance that somebody takes a tile is to be multiplied.
   *
   * @param other her seat
   * @param kind a natural kind
   * @param exposed whether she shows exposures
   * @param factors what counts
   * @return 0 to 1
   */
  double factor(int other, int kind, boolean exposed, Factors factors) {
    Against against = exposed ? factors.exposed() : factors.closed();
    double factor = against.lying()[Math.min(against.lying().length - 1, lying[kind])];
    if ((threw[other] >>> kind & 1) != 0) {
      factor *= against.threw();
    }
    if ((recent >>> kind & 1) != 0) {
      factor *= against.wentRound();
    }
    return (passed[other] >>> kind & 1) != 0 ? factor * against.passed() : factor;
  }

  /**
   * How many tiles a seat passed on blind.
   *
   * @param other her seat
   * @return 0 to 6
   */
  int blind(int other) {
    return blind[other];
  }
}
