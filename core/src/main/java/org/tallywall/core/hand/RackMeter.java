package org.tallywall.core.hand;

import java.util.Arrays;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;

/**
 * Measures one rack again and again as it changes tile by tile. It gives the distances of {@link
 * HandMeter}, but remembers for each hand what it lacks and works in only what a tile gained or
 * lost changes. What it remembers changes no answer. Not safe for use by several threads.
 *
 * <p>Two numbers are kept for each hand, as {@link Lanes}: the tiles not matched, and the naturals
 * missing. The distance is the larger of the second and the first less the jokers held.
 */
public final class RackMeter {
  /** Below this many hands, measuring all is quicker than remembering. */
  private static final int FEW = 200;

  /** No hand is further away than this. */
  private static final int FURTHEST = 14;

  private final HandMeter meter = new HandMeter();
  private final int[] counts = new int[Tile.NATURALS];
  private final LaneChange unmatchedChange = new LaneChange();
  private final LaneChange missingChange = new LaneChange();
  private final Rack held = new Rack();
  private Reach reach;
  private boolean remembers;
  private Reach remembered;
  private long kinds;
  private int words;
  private long[] unmatched = new long[0];
  private long[] missing = new long[0];
  private int guess;

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
      turnTo(rack);
    }
  }

  private void begin(Reach possible) {
    remembered = possible;
    kinds = 0;
    Arrays.fill(counts, 0);
    words = Lanes.words(possible.size());
    if (unmatched.length < words) {
      unmatched = new long[words];
      missing = new long[words];
    }
    Arrays.fill(unmatched, 0, words, Lanes.all(possible.wanted()));
    System.arraycopy(possible.postings().naturals(), 0, missing, 0, words);
    for (int at = possible.size(); at < words * Lanes.COUNT; at++) {
      missing[at / Lanes.COUNT] += Lanes.at(at % Lanes.COUNT, Lanes.MOST);
    }
  }

  private void turnTo(Rack rack) {
    Postings postings = remembered.postings();
    long now = rack.kinds() & TileBits.NATURALS;
    for (long either = kinds | now; either != 0; either &= either - 1) {
      int kind = Long.numberOfTrailingZeros(either);
      int count = Math.min(rack.held(kind), TileBits.width(kind));
      while (counts[kind] < count) {
        counts[kind]++;
        unmatchedChange.subtract(postings.wanting(kind, counts[kind]));
        missingChange.subtract(postings.wantingNatural(kind, counts[kind]));
      }
      while (counts[kind] > count) {
        unmatchedChange.add(postings.wanting(kind, counts[kind]));
        missingChange.add(postings.wantingNatural(kind, counts[kind]));
        counts[kind]--;
      }
    }
    kinds = now;
    unmatchedChange.apply(unmatched, words);
    missingChange.apply(missing, words);
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
    boolean mayBeDead = meter.mayBeDead(reach);
    int bound = least();
    int best = collect(bound, slack, mayBeDead, found);
    while (best > bound && bound < FURTHEST) {
      bound = Math.min(best, bound + slack + 1);
      best = collect(bound, slack, mayBeDead, found);
    }
    found.keep(best, slack);
  }

  /**
   * Collects living hands up to slack beyond a distance.
   *
   * @return the least distance among them
   */
  private int collect(int bound, int slack, boolean mayBeDead, NearHands found) {
    found.clear(reach.size());
    int jokers = held.jokers();
    int least = HandMeter.NONE;
    long lackingLimit = Lanes.limit(bound + slack + jokers);
    long missingLimit = Lanes.limit(bound + slack);
    for (int at = 0; at < words; at++) {
      long near = Lanes.within(unmatched[at], lackingLimit, missing[at], missingLimit);
      for (; near != 0; near &= near - 1) {
        int lane = Long.numberOfTrailingZeros(near) / Byte.SIZE;
        int row = at * Lanes.COUNT + lane;
        if (!(mayBeDead && meter.dead(reach, row))) {
          int lacking = Lanes.get(unmatched[at], lane) - jokers;
          int away = Math.max(lacking, Lanes.get(missing[at], lane));
          found.add(row, away);
          least = Math.min(least, away);
        }
      }
    }
    return least;
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
    int least = guess;
    if (within(least)) {
      while (least > 0 && within(least - 1)) {
        least--;
      }
    } else {
      do {
        least++;
      } while (least < FURTHEST && !within(least));
    }
    guess = least;
    return least;
  }

  /** Whether any hand is so near. */
  private boolean within(int away) {
    long lackingLimit = Lanes.limit(away + held.jokers());
    return Lanes.anyWithin(unmatched, lackingLimit, missing, Lanes.limit(away), words);
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
    return within(0);
  }
}
