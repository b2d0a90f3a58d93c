package org.tallywall.experiments.reading;

import java.util.List;
import org.tallywall.core.card.ConcreteHand;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.hand.HandMeter;
import org.tallywall.core.hand.Lack;
import org.tallywall.core.hand.Reach;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.Seats;
import org.tallywall.core.rules.TableRules;
import org.tallywall.core.tile.Exposure;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;
import org.tallywall.strategies.read.OpponentReader;

/**
 * Proves which tiles a seat cannot take, from what another can see: the hands that her exposures
 * leave, and the copies that are not in view. Whatever is not proved may still be safe.
 *
 * <p>A hand can be finished with a tile thrown if it still needs one of its kind, and if the copies
 * out of view, with the one thrown, suffice for its singles and pairs, and with the jokers out of
 * view for the rest. Where the tile might also be claimed for an exposure and jokers may be
 * redeemed after a claim, the jokers that lie open are counted as if she had them all.
 */
final class SafeKinds {
  private static final int LARGEST = 6;
  private static final int SMALLEST = 3;

  private final SeatView view;
  private final TableRules rules;
  private final HandMeter meter = new HandMeter();
  private final Lack lack = new Lack();
  private final Blockers blockers = new Blockers();
  private final int[] unseen = new int[Tile.KINDS];
  private final int[] obtainable = new int[Tile.KINDS];
  private final boolean[] onCard = new boolean[Tile.NATURALS];

  /**
   * The proofs in one position.
   *
   * @param view what the seat knows that would throw
   */
  SafeKinds(SeatView view) {
    this.view = view;
    rules = view.table().rules();
    for (int kind = 0; kind < Tile.KINDS; kind++) {
      unseen[kind] = view.unseen(kind);
    }
    meter.hold(new Rack());
    ConcreteHands hands = view.table().hands();
    for (int at = 0; at < hands.size(); at++) {
      ConcreteHand hand = hands.hand(at);
      for (int kind = 0; kind < Tile.NATURALS; kind++) {
        onCard[kind] |= hand.total(kind) > 0;
      }
    }
  }

  /**
   * Why a seat cannot claim a tile for an exposure.
   *
   * @param other her seat
   * @param kind a kind on the rack of the one who looks
   */
  Proof fromClaim(int other, int kind) {
    if (view.dead(other)) {
      return Proof.DEAD_HAND;
    } else if (kind == Tile.JOKER) {
      return rules.jokers().discardClaimable() ? Proof.NONE : Proof.JOKER;
    } else if (!rules.claims().strictFit()) {
      return laysAnySize(other, kind) ? Proof.NONE : Proof.OUT;
    } else if (!onCard[kind]) {
      return Proof.NOT_ON_CARD;
    }
    Reach reach = view.reach(other);
    int sizes = reach.openSizes(kind, true) | reach.openSizes(kind, false);
    if (sizes == 0) {
      return wanted(reach, kind) ? Proof.NO_GROUP : Proof.NOT_HERS;
    }
    for (int size = SMALLEST; size <= LARGEST; size++) {
      if ((sizes >> size & 1) != 0 && lays(other, reach, kind, size)) {
        return Proof.NONE;
      }
    }
    return Proof.OUT;
  }

  private boolean laysAnySize(int other, int kind) {
    int naturals = Math.min(unseen[kind], SMALLEST - 1);
    return naturals >= rules.claims().naturalsFromRack()
        && naturals + unseen[Tile.JOKER] >= SMALLEST - 1
        && concealed(other) >= SMALLEST;
  }

  /** Whether the tiles out of view allow an exposure of a size. */
  private boolean lays(int other, Reach reach, int kind, int size) {
    int fromRack = size - 1;
    int naturals = Math.min(unseen[kind], fromRack);
    int jokers = fromRack - naturals;
    boolean fits = (reach.openSizes(kind, jokers > 0) >> size & 1) != 0;
    return fits
        && naturals >= rules.claims().naturalsFromRack()
        && jokers <= unseen[Tile.JOKER]
        && concealed(other) > fromRack;
  }

  private int concealed(int other) {
    return OpponentReader.concealed(view, other);
  }

  /**
   * Why a seat cannot finish a hand with a tile.
   *
   * @param other her seat
   * @param kind a kind on the rack of the one who looks
   */
  Proof fromWin(int other, int kind) {
    blockers.clear();
    if (view.dead(other)) {
      return Proof.DEAD_HAND;
    } else if (kind == Tile.JOKER) {
      return rules.jokers().discardClaimable() ? Proof.NONE : Proof.JOKER;
    } else if (!onCard[kind]) {
      return Proof.NOT_ON_CARD;
    }
    boolean redeems = rules.jokers().afterClaim() && fromClaim(other, kind) == Proof.NONE;
    Reach reach = view.reach(other);
    if (!wanted(reach, kind)) {
      return Proof.NOT_HERS;
    }
    System.arraycopy(unseen, 0, obtainable, 0, unseen.length);
    obtainable[kind]++;
    obtainable[Tile.JOKER] += redeems ? openJokers() : 0;
    meter.obtainable(obtainable);
    for (int hand = 0; hand < reach.size(); hand++) {
      if (reach.wants(hand, kind, 1)) {
        if (!meter.dead(reach, hand)) {
          return Proof.NONE;
        }
        meter.lack(reach, hand, lack);
        blockers.add(lack, obtainable);
      }
    }
    return Proof.OUT;
  }

  /**
   * Of which kinds there are too few for the hands that need the tile.
   *
   * @param kind the kind about which {@link #fromWin} was asked last, and said {@link Proof#OUT}
   * @return a few kinds; empty where no few say it
   */
  List<Integer> outOf(int kind) {
    return blockers.kinds(kind);
  }

  private int openJokers() {
    int jokers = 0;
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      for (Exposure exposure : view.exposures(seat)) {
        jokers += exposure.jokers();
      }
    }
    return jokers;
  }

  private static boolean wanted(Reach reach, int kind) {
    for (int hand = 0; hand < reach.size(); hand++) {
      if (reach.wants(hand, kind, 1)) {
        return true;
      }
    }
    return false;
  }
}
