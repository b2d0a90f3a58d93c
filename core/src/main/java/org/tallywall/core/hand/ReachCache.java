package org.tallywall.core.hand;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.tallywall.core.tile.Exposure;

/**
 * Remembers what exposures leave possible, since the same few come up again and again. It changes
 * no answer. Not safe for use by several threads.
 */
public final class ReachCache {
  private static final int PLACES = 1 << 14;
  private static final int MOST = PLACES / 2;
  private static final int BITS = 9;
  private static final int EXPOSURES = 4;
  private static final long SPREAD = 0x9E37_79B9_7F4A_7C15L;

  private final ConcreteHands hands;
  private final long[] keys = new long[PLACES];
  private final Reach[] values = new Reach[PLACES];
  private final int[] codes = new int[EXPOSURES];
  private int known;

  /**
   * An empty memory.
   *
   * @param hands all hands of the card
   */
  public ReachCache(ConcreteHands hands) {
    this.hands = hands;
  }

  /**
   * What some exposures leave possible.
   *
   * @param exposures the exposures, in any order; at most four
   * @return the same as {@link ConcreteHands#reach}
   */
  public Reach reach(List<Exposure> exposures) {
    return reachWith(exposures, null);
  }

  /**
   * What some exposures and one more leave possible.
   *
   * @param exposures the exposures, in any order; at most three
   * @param more a further one, or null for none
   * @return the same as {@link ConcreteHands#reach}
   */
  public Reach reachWith(List<Exposure> exposures, Exposure more) {
    if (exposures.isEmpty() && more == null) {
      return hands.closed();
    }
    long key = key(exposures, more);
    int place = place(key);
    if (keys[place] != key) {
      if (known >= MOST) {
        Arrays.fill(keys, 0);
        Arrays.fill(values, null);
        known = 0;
        place = place(key);
      }
      List<Exposure> all = new ArrayList<>(exposures);
      if (more != null) {
        all.add(more);
      }
      keys[place] = key;
      values[place] = hands.reach(all);
      known++;
    }
    return values[place];
  }

  /** The place of a key, or the free place where it belongs; no key is 0. */
  private int place(long key) {
    int place = (int) (key * SPREAD >>> Long.SIZE - 14);
    while (keys[place] != 0 && keys[place] != key) {
      place = place + 1 & PLACES - 1;
    }
    return place;
  }

  private long key(List<Exposure> exposures, Exposure more) {
    int count = exposures.size();
    boolean joker = more != null && more.jokers() > 0;
    for (int at = 0; at < count; at++) {
      Exposure exposure = exposures.get(at);
      codes[at] = code(exposure);
      joker |= exposure.jokers() > 0;
    }
    if (more != null) {
      codes[count++] = code(more);
    }
    Arrays.sort(codes, 0, count);
    long key = joker ? 1 : 0;
    for (int at = 0; at < count; at++) {
      key = key << BITS | codes[at] + 1;
    }
    return key;
  }

  private static int code(Exposure exposure) {
    return exposure.kind() * 8 + exposure.size();
  }
}
