package org.tallywall.core.hand;

import java.lang.invoke.MethodHandles;
import java.lang.invoke.VarHandle;
import java.nio.ByteOrder;
import java.util.Arrays;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;

/**
 * Measures one rack again and again as it changes tile by tile. It gives the distances of {@link
 * HandMeter}, but remembers for each hand what it lacks and touches only the hands that a tile
 * gained or lost concerns. What it remembers changes no answer. Not safe for use by several
 * threads.
 *
 * <p>Two numbers are kept for each hand, a byte each: the tiles not matched, and the naturals
 * missing. The distance is the larger of the second and the first less the jokers held. Eight hands
 * are compared at once in the bytes of a long, each byte below 128 so that no carry leaves it.
 */
public final class RackMeter {
  /** Below this many hands, measuring all is quicker than remembering. */
  private static final int FEW = 200;

  private static final int BIAS = 32;
  private static final long ONES = 0x0101_0101_0101_0101L;
  private static final long HIGH = 0x8080_8080_8080_8080L;
  private static final VarHandle LONGS =
      MethodHandles.byteArrayViewVarHandle(long[].class, ByteOrder.LITTLE_ENDIAN);

  private final HandMeter meter = new HandMeter();
  private final int[] counts = new int[Tile.NATURALS];
  private final Rack held = new Rack();
  private Reach reach;
  private boolean remembers;
  private Reach remembered;
  private byte[] unmatched = new byte[0];
  private byte[] missing = new byte[0];
  private int guess = HandMeter.NONE;

  /** A meter that remembers nothing yet. */
  public RackMeter() {}

  /**
   * Sets the rack and the hands to measure it by.
   *
   * @param rack the concealed tiles
   * @param possible the hands that stay possible
   */
  public void hold(Rack rack, Reach possible) {
    reach = possible;
    remembers = possible.size() >= FEW;
    held.set(rack);
    if (!remembers) {
      meter.hold(rack);
    } else {
      if (remembered != possible) {
        begin(possible);
      }
      for (int kind = 0; kind < Tile.NATURALS; kind++) {
        int count = rack.held(kind);
        if (counts[kind] != count) {
          turn(kind, Math.min(count, TileBits.width(kind)));
        }
      }
    }
  }

  private void begin(Reach possible) {
    remembered = possible;
    int size = possible.size() + 7 & ~7;
    unmatched = new byte[size];
    missing = new byte[size];
    Arrays.fill(counts, 0);
    for (int at = 0; at < size; at++) {
      boolean real = at < possible.size();
      unmatched[at] = (byte) (BIAS + possible.wanted());
      missing[at] =
          (byte)
              (real
                  ? BIAS
                      + Long.bitCount(possible.strict0[at])
                      + Long.bitCount(possible.strict1[at])
                      + Long.bitCount(possible.strict2[at])
                  : Byte.MAX_VALUE);
    }
  }

  private void turn(int kind, int count) {
    Postings postings = remembered.postings();
    while (counts[kind] < count) {
      counts[kind]++;
      change(unmatched, postings.wanting(kind, counts[kind]), -1);
      change(missing, postings.wantingNatural(kind, counts[kind]), -1);
    }
    while (counts[kind] > count) {
      change(unmatched, postings.wanting(kind, counts[kind]), 1);
      change(missing, postings.wantingNatural(kind, counts[kind]), 1);
      counts[kind]--;
    }
  }

  private static void change(byte[] of, int[] rows, int by) {
    for (int row : rows) {
      of[row] += (byte) by;
    }
  }

  /**
   * Sets what can be had at most, so that dead hands can be told.
   *
   * @param obtainable as {@link HandMeter#obtainable} has it
   */
  public void obtainable(int[] obtainable) {
    meter.obtainable(obtainable);
  }

  /**
   * Finds the hands that are nearest, and those a little further, dead ones left out.
   *
   * @param slack how much further than the nearest, 0 or more
   * @param found takes the result, the same as that of {@link HandMeter#nearest}
   */
  public void nearest(int slack, NearHands found) {
    if (!remembers) {
      meter.nearest(reach, slack, found);
      return;
    }
    int best = search(Math.min(guess, HandMeter.NONE - 1), slack, found);
    if (best > guess) {
      best = search(HandMeter.NONE - slack - 1, slack, found);
    }
    found.keep(best, slack);
    guess = best;
  }

  /** Collects living hands within slack of the best so far; nothing further than a bound counts. */
  private int search(int bound, int slack, NearHands found) {
    found.clear(reach.size());
    int best = bound;
    int least = HandMeter.NONE;
    boolean mayBeDead = meter.mayBeDead(reach);
    long jokers = ONES * held.jokers();
    long limit = limit(best + slack);
    for (int at = 0; at < unmatched.length; at += Long.BYTES) {
      long larger = larger(at, jokers);
      long near = limit - larger & HIGH;
      while (near != 0) {
        int lane = Long.numberOfTrailingZeros(near) >>> 3;
        near &= near - 1;
        int row = at + lane;
        int away = (int) (larger >>> lane * Byte.SIZE & 0xFF) - BIAS;
        if (away <= best + slack && !(mayBeDead && meter.dead(reach, row))) {
          found.add(row, away);
          least = Math.min(least, away);
          if (away < best) {
            best = away;
            limit = limit(best + slack);
          }
        }
      }
    }
    return least;
  }

  /** Eight limits with the high bit set: less a distance, it stays set where that is within. */
  private static long limit(int away) {
    return ONES * Math.min(BIAS + away, Byte.MAX_VALUE - 1) | HIGH;
  }

  /** The larger of missing and unmatched less jokers, for eight hands. */
  private long larger(int at, long jokers) {
    long lacking = (long) LONGS.get(unmatched, at) - jokers;
    long natural = (long) LONGS.get(missing, at);
    long lackingMore = (lacking | HIGH) - natural & HIGH;
    long mask = (lackingMore >>> 7) * 0xFF;
    return lacking & mask | natural & ~mask;
  }

  /**
   * The least distance over all hands, dead ones included.
   *
   * @return the same as {@link HandMeter#least(Reach)}
   */
  public int least() {
    if (!remembers) {
      return meter.least(reach);
    }
    long jokers = ONES * held.jokers();
    long least = ONES * Byte.MAX_VALUE;
    for (int at = 0; at < unmatched.length; at += Long.BYTES) {
      long away = larger(at, jokers);
      long more = (least | HIGH) - away & HIGH;
      long mask = (more >>> 7) * 0xFF;
      least = away & mask | least & ~mask;
    }
    int lowest = Byte.MAX_VALUE;
    for (int lane = 0; lane < Long.BYTES; lane++) {
      lowest = Math.min(lowest, (int) (least >>> lane * Byte.SIZE) & 0xFF);
    }
    return lowest - BIAS;
  }

  /** Makes the rack ready for {@link #lack}. */
  public void prepareLack() {
    meter.hold(held);
  }

  /**
   * What the rack lacks of one hand, after {@link #prepareLack}.
   *
   * @param index the hand, from 0
   * @param into takes the result, the same as that of {@link HandMeter#lack}
   */
  public void lack(int index, Lack into) {
    meter.lack(reach, index, into);
  }

  /**
   * The kinds that complete a rack that is one away.
   *
   * @return the same as {@link HandMeter#waits}
   */
  public long waits() {
    meter.hold(held);
    return meter.waits(reach);
  }

  /**
   * Whether the tiles are a hand of the card.
   *
   * @return true if the rack is 0 away from one, dead hands included
   */
  public boolean complete() {
    if (!remembers) {
      return meter.least(reach, 1) == 0;
    }
    long jokers = ONES * held.jokers();
    long limit = limit(0);
    for (int at = 0; at < unmatched.length; at += Long.BYTES) {
      if ((limit - larger(at, jokers) & HIGH) != 0) {
        return true;
      }
    }
    return false;
  }
}
