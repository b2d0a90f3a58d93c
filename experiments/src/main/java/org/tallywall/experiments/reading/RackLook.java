package org.tallywall.experiments.reading;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.tallywall.core.hand.HandMeter;
import org.tallywall.core.hand.Lack;
import org.tallywall.core.hand.NearHands;
import org.tallywall.core.hand.Reach;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;
import org.tallywall.core.tile.TileSet;

/**
 * Looks at a guessed rack as its owner would: which living hands are nearest, how far away they
 * are, and which tiles bring it nearer. A hand is dead if the tiles that lie face up rule it out.
 */
final class RackLook {
  private final HandMeter meter = new HandMeter();
  private final NearHands near = new NearHands();
  private final Lack lack = new Lack();
  private final int[] copies = new int[Tile.KINDS];
  private final boolean[] needed = new boolean[Tile.KINDS];
  private long waits;

  /**
   * Looks in one position.
   *
   * @param view what one seat knows
   */
  RackLook(SeatView view) {
    TileSet set = view.table().rules().tiles();
    for (int kind = 0; kind < Tile.NATURALS; kind++) {
      copies[kind] = set.copies(kind) - view.faceUp(kind);
    }
    copies[Tile.JOKER] = set.jokers() - view.discarded(Tile.JOKER);
    if (view.offered() >= 0) {
      copies[view.offered()]++;
    }
    meter.obtainable(copies);
  }

  /**
   * Looks at a rack.
   *
   * @param rack the concealed tiles
   * @param reach the hands that the exposures beside it leave
   */
  void look(Rack rack, Reach reach) {
    meter.hold(rack);
    meter.nearest(reach, 0, near);
    waits = near.least() <= 1 ? meter.waits(reach) : 0;
    Arrays.fill(needed, false);
    for (int at = 0; at < near.count(); at++) {
      meter.lack(reach, near.hand(at), lack);
      boolean open = lack.opens() > rack.jokers();
      for (int kind = 0; kind < lack.kinds(); kind++) {
        needed[lack.kind(kind)] |= lack.natural(kind) > 0 || open && lack.open(kind) > 0;
      }
    }
  }

  /** The lines of which some hand is not ruled out by what lies face up. */
  List<Integer> living(Reach reach) {
    Set<Integer> lines = new TreeSet<>();
    for (int hand = 0; hand < reach.size(); hand++) {
      if (!meter.dead(reach, hand)) {
        lines.add(reach.line(hand));
      }
    }
    return List.copyOf(lines);
  }

  /** Tiles away from the nearest living hand, {@link HandMeter#NONE} where all are dead. */
  int away() {
    return near.least();
  }

  /** How many hands are that near. */
  int hands() {
    return near.count();
  }

  /** One of these hands, its place in the reach. */
  int hand(int at) {
    return near.hand(at);
  }

  /** Whether a tile of a kind would bring the rack nearer to one of these hands. */
  boolean needs(int kind) {
    return needed[kind] && copies[kind] > 0;
  }

  /** Whether a tile of a kind would complete the rack. */
  boolean waitsFor(int kind) {
    return (waits >>> kind & 1) != 0;
  }
}
