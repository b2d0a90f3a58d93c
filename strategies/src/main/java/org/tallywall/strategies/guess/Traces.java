package org.tallywall.strategies.guess;

import java.util.Arrays;
import java.util.List;
import org.tallywall.core.play.PassStep;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.Seats;
import org.tallywall.core.tile.Tile;

/**
 * What a seat has seen another do, apart from her exposures: what she threw, let lie, passed, got
 * and said. Where a sheet leaves it out, nothing is there to be read.
 */
final class Traces {
  /** How long ago: her last discard, the one before, the three before that, and all others. */
  static final int AGES = 4;

  /** Since her last discard, in the round before, and earlier. */
  static final int ROUNDS = 3;

  private static final int[] AGE_FROM = {0, 1, 2, 5};

  /** Kinds that she threw, by age. */
  final long[] threw = new long[AGES];

  /** Kinds that others threw and nobody took, by round. */
  final long[] wentBy = new long[ROUNDS];

  /** Kinds, jokers apart, that she let lie with the very rack she has now. */
  long letLie;

  /** How many of each kind she was passed by the seat that looks, as far as it knows. */
  final int[] given = new int[Tile.KINDS];

  /** The same, in the second round and across by agreement. */
  final int[] givenLate = new int[Tile.KINDS];

  /** Kinds that the seat that looks got from her in the passes. */
  long passed;

  /** The same, in the second round and across by agreement. */
  long passedLate;

  /** Kinds that lie face up more than once, and more than twice. */
  long twiceUp;

  long thriceUp;

  /** What the table heard of her. */
  boolean stopped;

  int blind;
  int courtesy;
  int redeemed;
  boolean threwJoker;
  boolean threwFlower;

  /** How many of her last discards were the first of their kind on the table, and how many not. */
  int freshThrown;

  int staleThrown;

  /**
   * Gathers it.
   *
   * @param view what the seat knows
   * @param seat who is looked at
   */
  void look(SeatView view, int seat) {
    Arrays.fill(threw, 0);
    Arrays.fill(wentBy, 0);
    Arrays.fill(given, 0);
    Arrays.fill(givenLate, 0);
    passed = 0;
    passedLate = 0;
    twiceUp = 0;
    thriceUp = 0;
    freshThrown = 0;
    staleThrown = 0;
    readLetLie(view, seat);
    readDiscards(view, seat);
    readPasses(view, seat);
    for (int kind = 0; kind < Tile.NATURALS; kind++) {
      twiceUp |= view.faceUp(kind) >= 2 ? 1L << kind : 0;
      thriceUp |= view.faceUp(kind) >= 3 ? 1L << kind : 0;
    }
    stopped = view.stoppers().contains(seat);
    courtesy = view.courtesyAsked(seat);
    redeemed = 0;
    for (SeatView.ExchangeSeen exchange : view.exchanges()) {
      redeemed += exchange.seat() == seat ? 1 : 0;
    }
    long all = threw[0] | threw[1] | threw[2] | threw[3];
    threwJoker = (all >>> Tile.JOKER & 1) != 0;
    threwFlower = (all >>> Tile.FLOWER & 1) != 0;
  }

  /**
   * Discards that she let lie with the very rack she has now. A discard that was claimed is in no
   * list, and so may have been hers: only tiles are counted after which the turns went round
   * without a claim.
   */
  private void readLetLie(SeatView view, int seat) {
    letLie = 0;
    boolean offer = view.offered() >= 0;
    if (view.claimedThisTurn() || (offer && view.offeredBy() == seat)) {
      return;
    }
    int next = offer ? view.offeredBy() : view.seat();
    int at = view.discards() - (offer ? 2 : 1);
    while (at >= 0 && view.discardSeat(at) != seat && Seats.right(view.discardSeat(at)) == next) {
      letLie |= 1L << view.discardTile(at);
      next = view.discardSeat(at--);
    }
    letLie &= ~(1L << Tile.JOKER);
  }

  private void readDiscards(SeatView view, int seat) {
    int own = 0;
    int last = view.discards() - (view.offered() >= 0 && view.offeredBy() != seat ? 2 : 1);
    for (int at = last; at >= 0; at--) {
      long bit = 1L << view.discardTile(at);
      if (view.discardSeat(at) == seat) {
        int age = AGES - 1;
        while (own < AGE_FROM[age]) {
          age--;
        }
        threw[age] |= bit;
        own++;
      } else {
        wentBy[Math.min(own, ROUNDS - 1)] |= bit;
      }
    }
    int counted = 0;
    for (int at = last; at >= 0 && counted < 5; at--) {
      if (view.discardSeat(at) == seat) {
        counted++;
        boolean fresh = true;
        for (int before = 0; before < at && fresh; before++) {
          fresh = view.discardTile(before) != view.discardTile(at);
        }
        freshThrown += fresh ? 1 : 0;
        staleThrown += fresh ? 0 : 1;
      }
    }
  }

  private void readPasses(SeatView view, int seat) {
    blind = 0;
    for (SeatView.PassSeen pass : view.passes()) {
      boolean courtesyPass = pass.step() == null;
      boolean late = courtesyPass || pass.step().compareTo(PassStep.LEFT_1) > 0;
      int from = courtesyPass ? Seats.across(view.seat()) : pass.step().from(view.seat());
      int to = courtesyPass ? Seats.across(view.seat()) : pass.step().to(view.seat());
      blind += pass.blind().get(seat);
      if (from == seat && pass.blind().get(seat) == 0) {
        passed |= bits(pass.received());
        passedLate |= late ? bits(pass.received()) : 0;
      }
      if (to == seat && pass.blind().get(seat) == 0) {
        for (int kind : pass.given()) {
          given[kind]++;
          givenLate[kind] += late ? 1 : 0;
        }
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
}
