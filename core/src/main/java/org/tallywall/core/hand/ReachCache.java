package org.tallywall.core.hand;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.tallywall.core.tile.Exposure;

/**
 * Remembers what exposures leave possible, since the same few come up again and again. It changes
 * no answer. Not safe for use by several threads.
 */
public final class ReachCache {
  private static final int MOST = 20_000;
  private static final int BITS = 9;

  private final ConcreteHands hands;
  private final Map<Long, Reach> known = new HashMap<>();

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
    if (exposures.isEmpty()) {
      return hands.closed();
    }
    long key = key(exposures);
    Reach reach = known.get(key);
    if (reach == null) {
      if (known.size() >= MOST) {
        known.clear();
      }
      reach = hands.reach(exposures);
      known.put(key, reach);
    }
    return reach;
  }

  /**
   * What some exposures and one more leave possible.
   *
   * @param exposures the exposures, in any order; at most three
   * @param more a further one
   * @return the same as {@link ConcreteHands#reach}
   */
  public Reach reachWith(List<Exposure> exposures, Exposure more) {
    List<Exposure> all = new ArrayList<>(exposures);
    all.add(more);
    return reach(all);
  }

  private static long key(List<Exposure> exposures) {
    int[] codes = new int[exposures.size()];
    boolean joker = false;
    for (int at = 0; at < codes.length; at++) {
      Exposure exposure = exposures.get(at);
      codes[at] = exposure.kind() * 8 + exposure.size();
      joker |= exposure.jokers() > 0;
    }
    Arrays.sort(codes);
    long key = joker ? 1 : 0;
    for (int code : codes) {
      key = key << BITS | code + 1;
    }
    return key;
  }
}
