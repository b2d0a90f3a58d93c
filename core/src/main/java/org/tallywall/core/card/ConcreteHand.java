package org.tallywall.core.card;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.tallywall.core.tile.Tile;
import org.tallywall.core.tile.TileSet;
import org.tallywall.core.tile.TileText;

/**
 * One hand of the card with nothing left open: groups of three or more, and loose tiles by kind.
 * Loose tiles of one kind are one heap, however the line prints them.
 */
public final class ConcreteHand {
  private final int[] groups;
  private final int[] loose;
  private final int[] total;

  /**
   * A hand of groups of any size; those of one or two tiles become loose.
   *
   * @param kinds the kind of each group, 0 to 34
   * @param sizes the size of each group, 1 to 6
   */
  ConcreteHand(int[] kinds, int[] sizes) {
    loose = new int[Tile.KINDS];
    total = new int[Tile.KINDS];
    int[] large = new int[kinds.length];
    int count = 0;
    for (int at = 0; at < kinds.length; at++) {
      total[kinds[at]] += sizes[at];
      if (sizes[at] >= 3) {
        large[count++] = code(kinds[at], sizes[at]);
      } else {
        loose[kinds[at]] += sizes[at];
      }
    }
    groups = Arrays.copyOf(large, count);
    Arrays.sort(groups);
  }

  private static int code(int kind, int size) {
    return (6 - size) * Tile.KINDS + kind;
  }

  /**
   * How many groups of three or more it has.
   *
   * @return 0 to 4
   */
  public int groups() {
    return groups.length;
  }

  /**
   * The kind of a group; groups stand by size, larger first, then by kind.
   *
   * @param index from 0
   * @return a kind, 0 to 34
   */
  public int groupKind(int index) {
    return groups[index] % Tile.KINDS;
  }

  /**
   * The size of a group.
   *
   * @param index from 0
   * @return 3 to 6
   */
  public int groupSize(int index) {
    return 6 - groups[index] / Tile.KINDS;
  }

  /**
   * How many loose tiles of a kind it has: singles and pairs, which take no joker.
   *
   * @param kind a kind, 0 to 35
   * @return 0 or more
   */
  public int loose(int kind) {
    return loose[kind];
  }

  /**
   * How many tiles of a kind it has in all.
   *
   * @param kind a kind, 0 to 35
   * @return 0 or more
   */
  public int total(int kind) {
    return total[kind];
  }

  /**
   * The fewest jokers with which it can be made.
   *
   * @param set the tiles there are
   * @return the tiles beyond the copies of their kind, summed
   */
  public int jokersNeeded(TileSet set) {
    int needed = 0;
    for (int kind = 0; kind < Tile.NATURALS; kind++) {
      needed += Math.max(0, total[kind] - set.copies(kind));
    }
    return needed;
  }

  /**
   * Whether it can be made at all: loose tiles within the copies there are, and no more jokers than
   * there are, none where the line forbids them.
   *
   * @param set the tiles there are
   * @param jokersAllowed whether the line allows jokers
   * @return true if it can
   */
  public boolean canBeMade(TileSet set, boolean jokersAllowed) {
    for (int kind = 0; kind < Tile.NATURALS; kind++) {
      if (loose[kind] > set.copies(kind)) {
        return false;
      }
    }
    return jokersNeeded(set) <= (jokersAllowed ? set.jokers() : 0);
  }

  /**
   * The hand as words: groups, then pairs, then singles.
   *
   * @return as in {@code 1111b 333b 444d 22c 55c}, word by word
   */
  public List<String> words() {
    List<String> words = new ArrayList<>();
    for (int at = 0; at < groups.length; at++) {
      words.add(TileText.word(groupKind(at), groupSize(at)));
    }
    for (int kind = 0; kind < Tile.NATURALS; kind++) {
      for (int pair = 0; pair < loose[kind] / 2; pair++) {
        words.add(TileText.word(kind, 2));
      }
    }
    for (int kind = 0; kind < Tile.NATURALS; kind++) {
      if (loose[kind] % 2 == 1) {
        words.add(TileText.word(kind, 1));
      }
    }
    return words;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof ConcreteHand hand
        && Arrays.equals(groups, hand.groups)
        && Arrays.equals(loose, hand.loose);
  }

  @Override
  public int hashCode() {
    return 31 * Arrays.hashCode(groups) + Arrays.hashCode(loose);
  }

  /** The words with single spaces between. */
  @Override
  public String toString() {
    return String.join(" ", words());
  }
}
