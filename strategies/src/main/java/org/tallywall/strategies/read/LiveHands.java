package org.tallywall.strategies.read;

import java.util.Arrays;
import org.tallywall.core.hand.HandMeter;
import org.tallywall.core.hand.Lack;
import org.tallywall.core.hand.Reach;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.rules.TableRules;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;

/**
 * What the exposures of one opponent leave possible, and which tile she may be waiting for.
 *
 * <p>A hand counts as live if it holds all her exposures and the rest can still be had: one further
 * copy may come from the reader, who might throw it. Each live hand is weighed with each kind that
 * it lacks as the last: how likely her rack holds the rest of it ({@link WaysTable}), from the
 * copies that the reader cannot see. A pair of which only two copies are unseen thus weighs less
 * than one of which all four are, and a kind that the reader holds itself weighs hardly anything.
 */
final class LiveHands {
  private final HandMeter meter = new HandMeter();
  private final Rack nothing = new Rack();
  private final Lack rest = new Lack();
  private final int[] obtainable = new int[Tile.KINDS];
  private final int[] unseen = new int[Tile.KINDS];
  private final double[] weight = new double[Tile.KINDS];
  private final double[] waited = new double[Tile.KINDS];
  private final double[] wanted = new double[Tile.KINDS];
  private final double[] single = new double[Tile.KINDS];
  private double all;
  private double value;
  private int live;
  private int lines;

  /** Nothing read yet. */
  LiveHands() {}

  /** Forgets what was read. */
  void clear() {
    live = 0;
    lines = 0;
    all = 0;
    value = 0;
    Arrays.fill(waited, 0);
    Arrays.fill(wanted, 0);
    Arrays.fill(single, 0);
  }

  /**
   * Reads an opponent.
   *
   * @param view what the reader knows
   * @param reach the hands that her exposures leave
   */
  void read(SeatView view, Reach reach) {
    clear();
    TableRules rules = view.table().rules();
    for (int kind = 0; kind < Tile.KINDS; kind++) {
      unseen[kind] = view.unseen(kind);
      obtainable[kind] = unseen[kind] + Math.min(1, view.held(kind));
    }
    obtainable[Tile.JOKER] = rules.tiles().jokers() - view.discarded(Tile.JOKER);
    meter.obtainable(obtainable);
    meter.hold(nothing);
    int line = -1;
    for (int hand = 0; hand < reach.size(); hand++) {
      if (!meter.dead(reach, hand)) {
        live++;
        lines += reach.line(hand) == line ? 0 : 1;
        line = reach.line(hand);
        meter.lack(reach, hand, rest);
        weigh(reach.hands().line(line).value());
      }
    }
  }

  private void weigh(int points) {
    int kinds = rest.kinds();
    double whole = 0;
    for (int last = 0; last < kinds; last++) {
      double product = 1;
      for (int at = 0; at < kinds; at++) {
        product *= oneKind(at, at == last);
      }
      weight[last] = product;
      whole += product;
    }
    all += whole;
    value += whole * points;
    for (int at = 0; at < kinds; at++) {
      int kind = rest.kind(at);
      waited[kind] += weight[at];
      wanted[kind] += whole;
      single[kind] += rest.natural(at) > 0 ? whole : 0;
    }
  }

  /** The weight of what must be held of one kind, the last tile of all left out where it is. */
  private double oneKind(int at, boolean last) {
    int natural = rest.natural(at);
    int open = rest.open(at);
    if (last) {
      if (open > 0) {
        open--;
      } else {
        natural--;
      }
    }
    return WaysTable.weight(natural, open, unseen[rest.kind(at)]);
  }

  /**
   * How many hands are live.
   *
   * @return 0 or more
   */
  int live() {
    return live;
  }

  /**
   * How many lines are live.
   *
   * @return 0 or more
   */
  int lines() {
    return lines;
  }

  /**
   * The share of what she may be waiting for that is one kind.
   *
   * @param kind a natural kind
   * @return 0 to 1; the shares of all kinds sum to 1, or to 0 where no hand is live
   */
  double waited(int kind) {
    return all == 0 ? 0 : waited[kind] / all;
  }

  /**
   * The share of her live hands, as weighed, that want a tile of a kind.
   *
   * @param kind a natural kind
   * @return 0 to 1
   */
  double wanted(int kind) {
    return all == 0 ? 0 : wanted[kind] / all;
  }

  /**
   * The share of her live hands, as weighed, that want a kind for a single or a pair.
   *
   * @param kind a natural kind
   * @return 0 to 1
   */
  double wantedNatural(int kind) {
    return all == 0 ? 0 : single[kind] / all;
  }

  /**
   * What her lines pay on the average, as weighed.
   *
   * @param otherwise points where no hand is live
   * @return points
   */
  double value(double otherwise) {
    return all == 0 ? otherwise : value / all;
  }
}
