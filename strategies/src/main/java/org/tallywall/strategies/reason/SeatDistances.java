package org.tallywall.strategies.reason;

import org.tallywall.core.hand.HandMeter;
import org.tallywall.core.hand.Reach;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;
import org.tallywall.core.tile.TileSet;

/** Distances to the hands that a seat can still make, with its tiles as they are or would be. */
final class SeatDistances {
  private final HandMeter meter = new HandMeter();
  private final Rack rack = new Rack();
  private final int[] obtainable = new int[Tile.KINDS];
  private Reach reach;
  private TileSet set;

  /** Takes the tiles as they are. */
  void look(SeatView view) {
    set = view.table().rules().tiles();
    view.copyRack(rack);
    reach = view.reach(view.seat());
    for (int kind = 0; kind < Tile.NATURALS; kind++) {
      obtainable[kind] = set.copies(kind) - view.faceUp(kind);
    }
    obtainable[Tile.JOKER] = set.jokers() - view.discarded(Tile.JOKER);
  }

  /** Counts the tile on offer as one that can still be had. */
  void countOffered(SeatView view) {
    obtainable[view.offered()]++;
  }

  /** Gives a tile away; it may come back. */
  void give(int kind) {
    rack.remove(kind);
  }

  /** Lays a tile on the table for good. */
  void lay(int kind) {
    rack.remove(kind);
    obtainable[kind]--;
  }

  /** Takes a joker that lay open. */
  void takeJoker() {
    rack.add(Tile.JOKER);
  }

  /** Lays some tiles open in a group. */
  void expose(int kind, int naturals, int jokers, Reach left) {
    rack.remove(kind, naturals);
    obtainable[kind] -= naturals;
    rack.remove(Tile.JOKER, jokers);
    reach = left;
  }

  int jokers() {
    return rack.jokers();
  }

  /** The least distance to any hand, or {@link HandMeter#NONE}. */
  int least() {
    return least(-1);
  }

  /** The least distance to a hand of one line, of all where it is negative. */
  int least(int line) {
    begin();
    int least = HandMeter.NONE;
    for (int hand = 0; hand < reach.size(); hand++) {
      if ((line < 0 || reach.line(hand) == line) && !meter.dead(reach, hand)) {
        least = Math.min(least, meter.away(reach, hand));
      }
    }
    return least;
  }

  /** How many lines have a hand that can still be made. */
  int lines() {
    begin();
    int lines = 0;
    int last = -1;
    for (int hand = 0; hand < reach.size(); hand++) {
      if (reach.line(hand) != last && !meter.dead(reach, hand)) {
        last = reach.line(hand);
        lines++;
      }
    }
    return lines;
  }

  /** The nearest living hand of a line, by its place among all of the card, or -1. */
  int nearest(int line) {
    int least = least(line);
    for (int hand = 0; hand < reach.size() && least < HandMeter.NONE; hand++) {
      if (reach.line(hand) == line
          && meter.away(reach, hand) == least
          && !meter.dead(reach, hand)) {
        return reach.index(hand);
      }
    }
    return -1;
  }

  /** What a hand is missing; null where the exposures rule it out or it is dead. */
  Reason.Aim aim(int index) {
    begin();
    for (int hand = 0; hand < reach.size(); hand++) {
      if (reach.index(hand) == index && !meter.dead(reach, hand)) {
        Missing missing = Missing.of(meter, reach, hand, rack.jokers());
        return new Reason.Aim(
            reach.line(hand), index, meter.away(reach, hand), missing.tiles(), missing.filled());
      }
    }
    return null;
  }

  private void begin() {
    meter.obtainable(obtainable);
    meter.hold(rack);
  }

  /**
   * The nearest dead hand that wants the last tile held of a kind, looks as near as the nearest
   * living one and lacks naturals for a single or a pair; null where there is none.
   */
  Reason.Dead dead(int kind) {
    int most = least();
    Reason.Dead found = null;
    for (int hand = 0; hand < reach.size() && rack.held(kind) > 0; hand++) {
      boolean wants = reach.wants(hand, kind, rack.held(kind));
      if (wants && meter.dead(reach, hand)) {
        int away = meter.away(reach, hand);
        int lacking = lacking(hand);
        if (lacking >= 0 && (away < most || (away == most && found == null))) {
          most = away;
          found = new Reason.Dead(reach.line(hand), lacking, inView(lacking));
        }
      }
    }
    return found;
  }

  /** A kind of which a hand needs more naturals than can be had, or -1. */
  private int lacking(int hand) {
    for (int kind = 0; kind < Tile.NATURALS; kind++) {
      if (reach.wantsNatural(hand, kind, obtainable[kind] + 1)) {
        return kind;
      }
    }
    return -1;
  }

  private int inView(int kind) {
    return set.copies(kind) - obtainable[kind] + rack.held(kind);
  }
}
