package org.tallywall.experiments.story;

import java.util.List;
import org.tallywall.core.tile.Rack;

/** What a hand needs, in words. */
public final class NeedWords {
  private NeedWords() {}

  /**
   * The tiles, and how many of them jokers on the rack stand for.
   *
   * @param words how tiles are named
   * @param tiles kinds that bring the rack closer to the hand, at least one
   * @param filled how many of them jokers on the rack stand for, 0 or more
   * @return as in {@code needs 13b, one of them by joker}
   */
  public static String of(TileWords words, List<Integer> tiles, int filled) {
    return "needs " + words.rack(rack(tiles)) + byJoker(filled);
  }

  /**
   * Kinds as a rack, which is how they are typed together.
   *
   * @param tiles kinds, 0 to 35
   * @return a rack of them
   */
  public static Rack rack(List<Integer> tiles) {
    return Rack.of(tiles.stream().mapToInt(Integer::intValue).toArray());
  }

  /**
   * How many tiles jokers on the rack stand for.
   *
   * @param filled that number, 0 or more
   * @return words that follow the tiles; empty for 0
   */
  public static String byJoker(int filled) {
    return switch (filled) {
      case 0 -> "";
      case 1 -> ", one of them by joker";
      default -> ", " + filled + " of them by jokers";
    };
  }
}
