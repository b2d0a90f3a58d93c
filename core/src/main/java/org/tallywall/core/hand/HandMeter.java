package org.tallywall.core.hand;

import java.util.Arrays;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;

/**
 * Measures how many tiles a rack is away from concrete hands: this is the only place that does.
 *
 * <p>With J jokers on the rack, matched = the sum over kinds of the smaller of held and wanted, and
 * missing = the natural tiles still lacking for singles and pairs (for all groups, where the line
 * takes no jokers),
 *
 * <pre>away = max(missing, wanted − matched − J)</pre>
 *
 * <p>where wanted is 14 less the exposed tiles. A line without jokers needs no case of its own: its
 * missing tiles are all that lack, which is never less than the second term. Not safe for use by
 * several threads.
 */
public final class HandMeter {
  /** More than any distance: what a reach without hands is away. */
  public static final int NONE = 99;

  private final TileBits rack = new TileBits();
  private final TileBits obtainable = new TileBits();
  private final int[] obtainableCounts = new int[Tile.KINDS];
  private int jokers;

  /** A meter set to an empty rack, with every tile obtainable. */
  public HandMeter() {
    everythingObtainable();
  }

  /**
   * Sets the rack to be measured.
   *
   * @param tiles the concealed tiles
   */
  public void hold(Rack tiles) {
    rack.set(tiles);
    jokers = tiles.jokers();
  }

  /** From now on no hand counts as dead. */
  public void everythingObtainable() {
    for (int kind = 0; kind < Tile.NATURALS; kind++) {
      obtainableCounts[kind] = TileBits.width(kind);
      obtainable.replace(kind, TileBits.width(kind));
    }
    obtainableCounts[Tile.JOKER] = NONE;
  }

  /**
   * Sets what can be had at most, so that dead hands can be told.
   *
   * @param counts for each kind, jokers last, the tiles on the rack and those unseen; for jokers
   *     also those in exposures, which can be redeemed
   */
  public void obtainable(int[] counts) {
    int kind = Arrays.mismatch(counts, obtainableCounts);
    while (kind >= 0 && kind < Tile.NATURALS) {
      obtainableCounts[kind] = counts[kind];
      obtainable.replace(kind, counts[kind]);
      kind = Arrays.mismatch(counts, obtainableCounts);
    }
    obtainableCounts[Tile.JOKER] = counts[Tile.JOKER];
  }

  /**
   * How many tiles the rack is away from one hand.
   *
   * @param reach the hands that stay possible
   * @param index the hand, from 0
   * @return 0 to 14
   */
  public int away(Reach reach, int index) {
    int lacking = reach.wanted() - matched(reach, index) - jokers;
    return Math.max(missing(reach, index), lacking);
  }

  private int matched(Reach reach, int index) {
    return Long.bitCount(reach.need0[index] & rack.w0)
        + Long.bitCount(reach.need1[index] & rack.w1)
        + Long.bitCount(reach.need2[index] & rack.w2);
  }

  private int missing(Reach reach, int index) {
    return Long.bitCount(reach.strict0[index] & ~rack.w0)
        + Long.bitCount(reach.strict1[index] & ~rack.w1)
        + Long.bitCount(reach.strict2[index] & ~rack.w2);
  }

  /**
   * What the rack lacks of one hand, jokers left aside.
   *
   * @param reach the hands that stay possible
   * @param index the hand, from 0
   * @param into takes the result
   */
  public void lack(Reach reach, int index, Lack into) {
    into.clear();
    int row = Reach.ROW * index;
    lack(0, reach.rows[row] & ~rack.w0, reach.rows[row + 3], into);
    lack(1, reach.rows[row + 1] & ~rack.w1, reach.rows[row + 4], into);
    lack(2, reach.rows[row + 2] & ~rack.w2, reach.rows[row + 5], into);
    into.addOver(reach.over[index]);
  }

  private static void lack(int word, long lacking, long strict, Lack into) {
    for (long bits = lacking; bits != 0; bits &= bits - 1) {
      int bit = Long.numberOfTrailingZeros(bits);
      into.add(TileBits.kind(word, bit), (strict >>> bit & 1) != 0);
    }
  }

  /**
   * Whether any hand at all might be dead, judged by all hands together; where not, none need be
   * looked at.
   *
   * @param reach the hands that stay possible
   * @return false where no hand is dead
   */
  boolean mayBeDead(Reach reach) {
    long[] all = reach.together;
    long loose = all[3] & ~obtainable.w0 | all[4] & ~obtainable.w1 | all[5] & ~obtainable.w2;
    int jokersWanted =
        reach.mostOver
            + Long.bitCount(all[0] & ~obtainable.w0)
            + Long.bitCount(all[1] & ~obtainable.w1)
            + Long.bitCount(all[2] & ~obtainable.w2);
    return loose != 0 || jokersWanted > obtainableCounts[Tile.JOKER];
  }

  /**
   * Whether a hand can no longer be made: a single or pair lacks its natural tiles, or more jokers
   * would be needed than can be had.
   *
   * @param reach the hands that stay possible
   * @param index the hand, from 0
   * @return true if it is dead for the rack
   */
  public boolean dead(Reach reach, int index) {
    long[] rows = reach.rows;
    int row = Reach.ROW * index;
    long loose =
        rows[row + 3] & ~obtainable.w0
            | rows[row + 4] & ~obtainable.w1
            | rows[row + 5] & ~obtainable.w2;
    if (loose != 0) {
      return true;
    }
    int jokersWanted =
        reach.over[index]
            + Long.bitCount(rows[row] & ~obtainable.w0)
            + Long.bitCount(rows[row + 1] & ~obtainable.w1)
            + Long.bitCount(rows[row + 2] & ~obtainable.w2);
    return jokersWanted > obtainableCounts[Tile.JOKER];
  }

  /**
   * The least distance over all hands, dead ones included.
   *
   * @param reach the hands that stay possible
   * @return 0 to 14, or {@link #NONE} where no hand is possible
   */
  public int least(Reach reach) {
    return least(reach, NONE);
  }

  /**
   * The least distance over all hands, dead ones included, if it is small.
   *
   * @param reach the hands that stay possible
   * @param below only smaller distances count
   * @return the least distance if it is below the bound, else the bound
   */
  public int least(Reach reach, int below) {
    return LeastScan.least(reach, rack, reach.wanted() - jokers, below);
  }

  /**
   * The least distance of every line, dead hands included.
   *
   * @param reach the hands that stay possible
   * @param into takes a distance for each line of the card, {@link #NONE} where the exposures rule
   *     it out
   */
  public void leastByLine(Reach reach, int[] into) {
    Arrays.fill(into, NONE);
    int enough = reach.wanted() - jokers;
    int line = -1;
    int best = NONE;
    for (int at = 0; at < reach.size(); at++) {
      if (reach.line(at) != line) {
        if (line >= 0) {
          into[line] = best;
        }
        line = reach.line(at);
        best = NONE;
      }
      int lacking = enough - matched(reach, at);
      if (lacking < best) {
        best = Math.min(best, Math.max(lacking, missing(reach, at)));
      }
    }
    if (line >= 0) {
      into[line] = best;
    }
  }

  /**
   * Finds the hands that are nearest, and those a little further, dead ones left out.
   *
   * @param reach the hands that stay possible
   * @param slack how much further than the nearest
   * @param found takes the result
   */
  public void nearest(Reach reach, int slack, NearHands found) {
    found.clear(reach.size());
    int best = NONE;
    int enough = reach.wanted() - jokers;
    boolean mayBeDead = mayBeDead(reach);
    for (int at = 0; at < reach.size(); at++) {
      int lacking = enough - matched(reach, at);
      if (lacking <= best + slack) {
        int away = Math.max(lacking, missing(reach, at));
        if (away <= best + slack && !(mayBeDead && dead(reach, at))) {
          found.add(at, away);
          best = Math.min(best, away);
        }
      }
    }
    found.keep(best, slack);
  }

  /**
   * Keeps of the nearest hands found before those that are alive and as near for the rack.
   *
   * @param reach the hands that stay possible
   * @param found what {@link #nearest} found for the same reach, when the rack held these tiles and
   *     perhaps more, and no less of any kind could be had; takes the result, which is that of
   *     {@link #nearest} with slack 0 if any hand is left
   * @return whether any is left
   */
  public boolean narrow(Reach reach, NearHands found) {
    boolean mayBeDead = mayBeDead(reach);
    int least = found.least();
    int count = found.count();
    found.clear(reach.size());
    for (int at = 0; at < count; at++) {
      int hand = found.hand(at);
      boolean near = found.away(at) == least && awayByRow(reach, hand) == least;
      if (near && !(mayBeDead && dead(reach, hand))) {
        found.add(hand, least);
      }
    }
    found.keep(least, 0);
    return found.count() > 0;
  }

  /** The same as {@link #away}, for one hand here and there. */
  private int awayByRow(Reach reach, int index) {
    long[] rows = reach.rows;
    int row = Reach.ROW * index;
    int matched =
        Long.bitCount(rows[row] & rack.w0)
            + Long.bitCount(rows[row + 1] & rack.w1)
            + Long.bitCount(rows[row + 2] & rack.w2);
    int missing =
        Long.bitCount(rows[row + 3] & ~rack.w0)
            + Long.bitCount(rows[row + 4] & ~rack.w1)
            + Long.bitCount(rows[row + 5] & ~rack.w2);
    return Math.max(missing, reach.wanted() - matched - jokers);
  }

  /**
   * The kinds that complete a rack that is one away.
   *
   * @param reach the hands that stay possible
   * @return a bit for each kind, bit 35 for the joker; 0 where the rack is not one away
   */
  public long waits(Reach reach) {
    long waits = 0;
    int enough = reach.wanted() - jokers;
    for (int at = 0; at < reach.size(); at++) {
      int lacking = enough - matched(reach, at);
      if (lacking <= 1) {
        int missing = missing(reach, at);
        if (Math.max(lacking, missing) == 1) {
          waits |= missing == 1 ? strictWait(reach, at) : openWait(reach, at);
        }
      }
    }
    return waits;
  }

  private long strictWait(Reach reach, int at) {
    return kinds(
        reach.strict0[at] & ~rack.w0, reach.strict1[at] & ~rack.w1, reach.strict2[at] & ~rack.w2);
  }

  private long openWait(Reach reach, int at) {
    long naturals =
        kinds(reach.need0[at] & ~rack.w0, reach.need1[at] & ~rack.w1, reach.need2[at] & ~rack.w2);
    return naturals | 1L << Tile.JOKER;
  }

  private static long kinds(long b0, long b1, long b2) {
    return kinds(0, b0) | kinds(1, b1) | kinds(2, b2);
  }

  private static long kinds(int word, long from) {
    long kinds = 0;
    for (long bits = from; bits != 0; bits &= bits - 1) {
      kinds |= 1L << TileBits.kind(word, Long.numberOfTrailingZeros(bits));
    }
    return kinds;
  }

  /**
   * The distances to all hands.
   *
   * @param reach the hands that stay possible
   * @return a fresh array, one distance a hand
   */
  public int[] all(Reach reach) {
    int[] away = new int[reach.size()];
    Arrays.setAll(away, at -> away(reach, at));
    return away;
  }
}
