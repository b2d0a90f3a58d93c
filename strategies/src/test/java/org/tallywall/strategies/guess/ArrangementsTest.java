package org.tallywall.strategies.guess;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.tallywall.core.hand.HandMeter;
import org.tallywall.core.hand.Lack;
import org.tallywall.core.hand.Reach;
import org.tallywall.core.random.Purpose;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.random.StreamKey;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;
import org.tallywall.core.tile.TileText;
import org.tallywall.strategies.TestTable;

/** Against counting every set of tiles one by one. */
class ArrangementsTest {
  private static final Reach HAND =
      TestTable.card("{ \"tiles\": \"111b 22b 333c 44d FFFF\", \"value\": 25 }").closed();

  private static Lack wanted() {
    Lack lack = new Lack();
    HandMeter meter = new HandMeter();
    meter.hold(new Rack());
    meter.lack(HAND, 0, lack);
    return lack;
  }

  /** Sets of some size of the tiles, by how many of them serve the hand and which they are. */
  private static Map<String, Integer> sets(int[] tiles, int size, int serving) {
    Map<String, Integer> sets = new TreeMap<>();
    for (int set = 0; set < 1 << tiles.length; set++) {
      Rack rack = new Rack();
      for (int at = 0; at < tiles.length; at++) {
        if ((set >> at & 1) != 0) {
          rack.add(tiles[at]);
        }
      }
      if (rack.total() == size && serve(rack) == serving) {
        sets.merge(rack.toString(), 1, Integer::sum);
      }
    }
    return sets;
  }

  private static int serve(Rack rack) {
    int serve = 0;
    for (int kind = 0; kind < Tile.NATURALS; kind++) {
      serve += Math.min(rack.held(kind), HAND.hand(0).total(kind));
    }
    return serve;
  }

  private static int[] counts(int[] tiles) {
    int[] counts = new int[Tile.KINDS];
    for (int tile : tiles) {
      counts[tile]++;
    }
    return counts;
  }

  @Test
  void counts_areThoseOfCountingOneByOne() {
    int[] tiles = TileText.rack("1111b 222b 3c 4d 99d EE FF").tiles();
    Arrangements arrangements = new Arrangements();
    for (int size = 0; size <= 6; size++) {
      for (int serving = 0; serving <= size + 1; serving++) {
        int expected = sets(tiles, size, serving).values().stream().mapToInt(n -> n).sum();
        double count = arrangements.count(wanted(), counts(tiles), tiles.length, serving, size);
        assertThat(count).as("%d of %d", serving, size).isEqualTo(expected);
      }
    }
  }

  /**
   * All arrangements are equally likely: 20,000 draws, chi-square with one degree of freedom for
   * each set of tiles less one, at 1e-6 (critical values by Wilson and Hilferty's cube, from
   * memory, which is a little too large there); a fresh seed would fail once in a million.
   */
  @Test
  void draws_areAsLikelyAsTheyAreMany() {
    int[] tiles = TileText.rack("111b 222b 3c 4d 9d EE F").tiles();
    int draws = 20_000;
    Map<String, Integer> sets = sets(tiles, 5, 3);
    int all = sets.values().stream().mapToInt(n -> n).sum();
    Map<String, Integer> drawn = new TreeMap<>();
    Arrangements arrangements = new Arrangements();
    RandomStream random = new RandomStream(new StreamKey(1, 2, Purpose.ROLLOUT, 0, 0, 3));
    for (int draw = 0; draw < draws; draw++) {
      Rack rack = new Rack();
      int[] left = counts(tiles);
      arrangements.count(wanted(), left, tiles.length, 3, 5);
      arrangements.draw(random, left, rack);
      drawn.merge(rack.toString(), 1, Integer::sum);
      for (int kind = 0; kind < Tile.KINDS; kind++) {
        assertThat(left[kind] + rack.held(kind)).isEqualTo(counts(tiles)[kind]);
      }
    }
    assertThat(drawn.keySet()).isEqualTo(sets.keySet());
    double square = 0;
    for (Map.Entry<String, Integer> set : sets.entrySet()) {
      double expected = draws * set.getValue() / (double) all;
      square += Math.pow(drawn.get(set.getKey()) - expected, 2) / expected;
    }
    double freedom = sets.size() - 1.0;
    double third = 2 / (9 * freedom);
    double critical = freedom * Math.pow(1 - third + 4.753424 * Math.sqrt(third), 3);
    assertThat(square).isLessThan(critical);
    assertThat(Arrangements.choose(52, 5)).isCloseTo(2_598_960, within(0.0));
  }
}
