package org.tallywall.strategies.guess;

import java.util.Arrays;
import org.tallywall.core.hand.Lack;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;

/**
 * Counts and draws racks of so many natural tiles out of those left, of which just so many serve a
 * hand: a tile serves it as long as the hand wants more of its kind. Counting goes kind by kind;
 * every tile is told from every other, so that all arrangements counted are equally likely where
 * tiles are dealt at random.
 */
final class Arrangements {
  private static final int MOST = 14;
  private static final int MOST_KINDS = Tile.NATURALS + 1;
  private static final int MOST_COPIES = 16;
  private static final int MOST_TILES = 160;
  private static final double[][] CHOOSE = choose();

  /** By kind of the hand, tiles that serve, and tiles held: ways for this kind and all after it. */
  private final double[][][] ways = new double[MOST_KINDS][MOST + 1][MOST + 1];

  private final int[] kind = new int[MOST_KINDS];
  private final int[] wanted = new int[MOST_KINDS];
  private final int[] copies = new int[MOST_KINDS];

  /** By kind of the hand: least and most tiles that may serve among it and all after it. */
  private final int[] least = new int[MOST_KINDS];

  private final int[] most = new int[MOST_KINDS];
  private int kinds;
  private int others;
  private int serving;
  private int size;

  private static double[][] choose() {
    double[][] table = new double[MOST_TILES + 1][MOST_COPIES + 1];
    for (int from = 0; from <= MOST_TILES; from++) {
      table[from][0] = 1;
      for (int take = 1; take <= MOST_COPIES && take <= from; take++) {
        table[from][take] = table[from - 1][take - 1] + table[from - 1][take];
      }
    }
    return table;
  }

  /**
   * How many ways there are to take tiles.
   *
   * @param from tiles there are, 0 to 160
   * @param take tiles taken, 0 to 16
   * @return 0 where there are too few
   */
  static double choose(int from, int take) {
    return from < 0 || take < 0 || take > from ? 0 : CHOOSE[from][take];
  }

  /**
   * Counts.
   *
   * @param hand what the hand wants of an empty rack
   * @param left tiles left, by kind
   * @param naturals natural tiles among them
   * @param serve how many are to serve the hand, 0 to 14
   * @param number how many natural tiles the rack is to hold, 0 to 14
   * @return how many arrangements there are
   */
  double count(Lack hand, int[] left, int naturals, int serve, int number) {
    kinds = hand.kinds();
    serving = serve;
    size = number;
    others = naturals;
    for (int at = 0; at < kinds; at++) {
      kind[at] = hand.kind(at);
      wanted[at] = hand.natural(at) + hand.open(at);
      copies[at] = left[kind[at]];
      others -= copies[at];
    }
    if (serve < 0 || serve > number || !reachable()) {
      return 0;
    }
    Arrays.fill(ways[kinds][0], 0, size + 1, 0);
    ways[kinds][0][0] = 1;
    for (int at = kinds - 1; at >= 0; at--) {
      addKind(at);
    }
    double sum = 0;
    for (int held = serve; held <= number; held++) {
      sum += ways[0][serve][held] * choose(others, number - held);
    }
    return sum;
  }

  /** Finds how many may serve by each kind and all after it; false where there are too few. */
  private boolean reachable() {
    most[kinds] = 0;
    for (int at = kinds - 1; at >= 0; at--) {
      most[at] = most[at + 1] + Math.min(copies[at], wanted[at]);
    }
    int all = most[0];
    for (int at = 0; at <= kinds; at++) {
      least[at] = Math.max(0, serving - (all - most[at]));
      most[at] = Math.min(serving, most[at]);
    }
    return all >= serving;
  }

  private void addKind(int at) {
    double[][] next = ways[at + 1];
    double[][] now = ways[at];
    for (int serve = least[at]; serve <= most[at]; serve++) {
      Arrays.fill(now[serve], 0, size + 1, 0);
    }
    int takes = Math.min(copies[at], size);
    for (int take = 0; take <= takes; take++) {
      int serve = Math.min(take, wanted[at]);
      double times = choose(copies[at], take);
      int from = Math.max(least[at + 1], least[at] - serve);
      int to = Math.min(most[at + 1], most[at] - serve);
      for (int before = from; before <= to; before++) {
        double[] later = next[before];
        double[] into = now[before + serve];
        for (int held = before; held + take <= size; held++) {
          into[held + take] += times * later[held];
        }
      }
    }
  }

  /**
   * Draws one of the arrangements that were counted last; there must be one.
   *
   * @param random draws it
   * @param left tiles left, as they were counted; those drawn are taken out
   * @param into takes the tiles
   */
  void draw(RandomStream random, int[] left, Rack into) {
    int held = drawHeld(random);
    int serve = serving;
    int rest = size - held;
    for (int at = 0; at < kinds; at++) {
      int take = drawKind(random, at, serve, held);
      into.add(kind[at], take);
      left[kind[at]] -= take;
      serve -= Math.min(take, wanted[at]);
      held -= take;
    }
    drawOthers(random, left, rest, into);
  }

  private int drawHeld(RandomStream random) {
    double sum = 0;
    for (int held = serving; held <= size; held++) {
      sum += ways[0][serving][held] * choose(others, size - held);
    }
    double place = unit(random) * sum;
    int found = -1;
    for (int held = serving; held <= size && place >= 0; held++) {
      double weight = ways[0][serving][held] * choose(others, size - held);
      if (weight > 0) {
        found = held;
        place -= weight;
      }
    }
    return found;
  }

  private int drawKind(RandomStream random, int at, int serve, int held) {
    double place = unit(random) * ways[at][serve][held];
    int found = 0;
    for (int take = 0; take <= Math.min(copies[at], held) && place >= 0; take++) {
      int left = serve - Math.min(take, wanted[at]);
      boolean may = left >= least[at + 1] && left <= most[at + 1];
      double weight = !may ? 0 : choose(copies[at], take) * ways[at + 1][left][held - take];
      if (weight > 0) {
        found = take;
        place -= weight;
      }
    }
    return found;
  }

  /** Tiles that the hand does not want at all. */
  private void drawOthers(RandomStream random, int[] left, int number, Rack into) {
    long hers = 0;
    for (int at = 0; at < kinds; at++) {
      hers |= 1L << kind[at];
    }
    for (int tile = 0; tile < number; tile++) {
      int place = random.below(others - tile);
      int other = 0;
      while ((hers >>> other & 1) != 0 || place >= left[other]) {
        place -= (hers >>> other & 1) != 0 ? 0 : left[other];
        other++;
      }
      left[other]--;
      into.add(other);
    }
  }

  private static double unit(RandomStream random) {
    return (random.nextLong() >>> 11) * 0x1.0p-53;
  }
}
