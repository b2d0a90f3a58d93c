package org.tallywall.core.card;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Whether a hand can be made with the usual tiles, by taking the tiles out of the box one by one.
 */
final class PlainMaking {
  private PlainMaking() {}

  /** Groups are written as in 4x7b, loose tiles as in 7b; loose tiles are taken first. */
  static boolean possible(List<String> groups, List<String> loose, boolean jokersAllowed) {
    Map<String, Integer> taken = new HashMap<>();
    for (String tile : loose) {
      if (taken.merge(tile, 1, Integer::sum) > copies(tile)) {
        return false;
      }
    }
    int jokers = 0;
    for (String group : groups) {
      String tile = group.substring(2);
      for (int at = 0; at < group.charAt(0) - '0'; at++) {
        if (taken.getOrDefault(tile, 0) < copies(tile)) {
          taken.merge(tile, 1, Integer::sum);
        } else {
          jokers++;
        }
      }
    }
    return jokers <= (jokersAllowed ? 8 : 0);
  }

  private static int copies(String tile) {
    return tile.equals("F") ? 8 : 4;
  }
}
