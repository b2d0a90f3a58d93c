package org.tallywall.core.random;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.function.IntUnaryOperator;
import java.util.function.ToIntFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tallywall.core.play.Deal;
import org.tallywall.core.tile.Tile;
import org.tallywall.core.tile.TileSet;

/**
 * Whether walls are shuffled evenly.
 *
 * <p>Hypothesis of every test: each order of the 152 tiles is equally likely, and walls of
 * different deals are independent. Seed {@value #SEED}, fixed. Each line would raise a false alarm
 * for one fresh seed in a million (critical values: {@link ChiSquare}; of means, 4.891638 standard
 * errors). A failure means that something changed: look for it, never for another seed.
 *
 * <p>Sources: Pearson (1900) for the fits; Knuth, The Art of Computer Programming 2, 3.3.2 and
 * 3.4.2; Levene and Wolfowitz, Ann. Math. Statist. 15 (1944) for runs up and down; Wald and
 * Wolfowitz's runs as in the NIST/SEMATECH e-Handbook, 1.3.5.13 (all from memory).
 */
class ShuffleTest {
  private static final long SEED = 8_215_201L;
  private static final int N = 100_000;
  private static final int PAIRS_N = 200_000;
  private static final int K = Walls.TILES;

  private static byte[][] walls;

  @BeforeAll
  static void shuffle() {
    walls = new byte[PAIRS_N][K];
    Walls source = new Walls(SEED);
    for (int deal = 0; deal < PAIRS_N; deal++) {
      int[] wall = source.wall(deal);
      for (int place = 0; place < K; place++) {
        walls[deal][place] = (byte) wall[place];
      }
    }
  }

  @AfterAll
  static void clear() {
    walls = null;
  }

  private static int id(int deal, int place) {
    return walls[deal][place] & 0xFF;
  }

  private static int kindAt(int deal, int place) {
    return Walls.kind(id(deal, place));
  }

  @Test
  void deals_areTheseWallsByKind() {
    for (int deal = 0; deal < 50; deal++) {
      Deal dealt = Deal.of(SEED, deal, TileSet.USUAL);
      for (int place = 0; place < K; place++) {
        assertThat(dealt.tile(place)).isEqualTo(kindAt(deal, place));
      }
    }
  }

  /**
   * S1: tile by place, n = 100,000 walls. Each wall is a whole permutation, so 151/152 of Pearson's
   * sum is chi-square with 151² = 22,801 degrees of freedom; two-sided bounds.
   */
  @Test
  void tileByPlace_s1_isEven() {
    double statistic = tileByPlace(N, IntUnaryOperator.identity());
    assertThat(statistic).isBetween(21771.65, 23860.92);
  }

  /** The same test finds the smallest of usual faults: a loop that leaves its last step out. */
  @Test
  void tileByPlace_ofALoopThatStopsOneStepEarly_isFound() {
    assertThat(tileByPlace(N, last -> last == 1 ? -1 : last)).isGreaterThan(23860.92);
  }

  /** Pearson's sum, times 151/152, of walls whose last steps may be left out. */
  private static double tileByPlace(int n, IntUnaryOperator step) {
    long[] counts = new long[K * K];
    RandomStream stream = new RandomStream(new StreamKey(SEED, 0, Purpose.WALL, 0, 0, 0));
    int[] wall = new int[K];
    for (int deal = 0; deal < n; deal++) {
      stream.begin(SEED, deal);
      for (int id = 0; id < K; id++) {
        wall[id] = id;
      }
      for (int last = K - 1; last > 0; last--) {
        if (step.applyAsInt(last) > 0) {
          int other = stream.below(last + 1);
          int kept = wall[last];
          wall[last] = wall[other];
          wall[other] = kept;
        }
      }
      for (int place = 0; place < K; place++) {
        counts[wall[place] * K + place]++;
      }
    }
    return ChiSquare.even(counts) * (K - 1) / K;
  }

  /** S2: the kind at one place, n = 200,000, 36 cells, df = 35. */
  @ParameterizedTest
  @ValueSource(ints = {1, 14, 53, 54, 152})
  void kindAtAPlace_s2_isEven(int place) {
    long[] counts = new long[Tile.KINDS];
    double[] chances = new double[Tile.KINDS];
    for (int kind = 0; kind < Tile.KINDS; kind++) {
      chances[kind] = TileSet.USUAL.copies(kind) / 152.0;
    }
    for (int deal = 0; deal < PAIRS_N; deal++) {
      counts[kindAt(deal, place - 1)]++;
    }
    assertThat(ChiSquare.statistic(counts, chances)).isLessThan(89.9467);
  }

  /** S3: the ordered pair of kinds at two places, n = 200,000, 1,296 cells, df = 1,295. */
  @ParameterizedTest
  @CsvSource({"1,2", "13,14", "53,54", "151,152", "1,152"})
  void pairOfKinds_s3_isEven(int first, int second) {
    long[] counts = new long[Tile.KINDS * Tile.KINDS];
    double[] chances = new double[counts.length];
    for (int cell = 0; cell < counts.length; cell++) {
      int one = TileSet.USUAL.copies(cell / Tile.KINDS);
      int two = TileSet.USUAL.copies(cell % Tile.KINDS);
      boolean same = cell / Tile.KINDS == cell % Tile.KINDS;
      chances[cell] = one * (double) (same ? two - 1 : two) / (152 * 151);
    }
    for (int deal = 0; deal < PAIRS_N; deal++) {
      counts[kindAt(deal, first - 1) * Tile.KINDS + kindAt(deal, second - 1)]++;
    }
    assertThat(ChiSquare.statistic(counts, chances)).isLessThan(1551.4638);
  }

  /** S5: the order of the first five tiles by number, n = 120,000, 120 orders, df = 119. */
  @Test
  void orderOfTheFirstFive_s5_isEven() {
    long[] counts = new long[120];
    for (int deal = 0; deal < 120_000; deal++) {
      counts[order(deal)]++;
    }
    assertThat(ChiSquare.even(counts)).isLessThan(207.1986);
  }

  private static int order(int deal) {
    int order = 0;
    for (int at = 0; at < 5; at++) {
      int smaller = 0;
      for (int later = at + 1; later < 5; later++) {
        smaller += id(deal, later) < id(deal, at) ? 1 : 0;
      }
      order = order * (5 - at) + smaller;
    }
    return order;
  }

  private static double mean(ToIntFunction<Integer> value) {
    long sum = 0;
    for (int deal = 0; deal < N; deal++) {
      sum += value.applyAsInt(deal);
    }
    return sum / (double) N;
  }

  /** S6: runs up and down: mean (2·152 − 1)/3 = 101, variance (16·152 − 29)/90 = 26.7. */
  @Test
  void runsUpAndDown_s6_areAsManyAsExpected() {
    assertThat(mean(ShuffleTest::runsUpAndDown)).isBetween(100.920070, 101.079930);
  }

  private static int runsUpAndDown(int deal) {
    int runs = 1;
    for (int at = 2; at < K; at++) {
      boolean up = id(deal, at) > id(deal, at - 1);
      boolean upBefore = id(deal, at - 1) > id(deal, at - 2);
      runs += up == upBefore ? 0 : 1;
    }
    return runs;
  }

  /** S7: inversions: mean 152·151/4 = 5738, variance 152·151·309/72 = 295507/3. */
  @Test
  void inversions_s7_areAsManyAsExpected() {
    assertThat(mean(ShuffleTest::inversions)).isBetween(5733.145130, 5742.854870);
  }

  private static int inversions(int deal) {
    long[] seen = new long[3];
    int inversions = 0;
    for (int at = 0; at < K; at++) {
      int id = id(deal, at);
      inversions += Long.bitCount(seen[id >> 6] & (-2L << (id & 63)));
      for (int word = (id >> 6) + 1; word < 3; word++) {
        inversions += Long.bitCount(seen[word]);
      }
      seen[id >> 6] |= 1L << id;
    }
    return inversions;
  }

  /** S8: runs of joker and not joker: mean 1 + 2·8·144/152 = 307/19, variance 77472/54511. */
  @Test
  void jokerRuns_s8_areAsManyAsExpected() {
    assertThat(mean(ShuffleTest::jokerRuns)).isBetween(16.139454, 16.176336);
  }

  private static int jokerRuns(int deal) {
    int runs = 1;
    for (int at = 1; at < K; at++) {
      boolean joker = kindAt(deal, at) == Tile.JOKER;
      runs += joker == (kindAt(deal, at - 1) == Tile.JOKER) ? 0 : 1;
    }
    return runs;
  }

  /** S9: neighbors of one kind: mean 65/19, variance 3.3235860652. */
  @Test
  void equalNeighbors_s9_areAsManyAsExpected() {
    ToIntFunction<Integer> equal =
        deal ->
            (int)
                IntStream.range(1, K)
                    .filter(at -> kindAt(deal, at) == kindAt(deal, at - 1))
                    .count();
    assertThat(mean(equal)).isBetween(3.392852, 3.449253);
  }

  /** S10: tiles that lie where they lay before the shuffle: mean 1, variance 1. */
  @Test
  void fixedPoints_s10_areAsManyAsExpected() {
    ToIntFunction<Integer> fixed =
        deal -> (int) IntStream.range(0, K).filter(at -> id(deal, at) == at).count();
    assertThat(mean(fixed)).isBetween(0.984531, 1.015469);
  }

  /** S11: cycles: mean 1 + 1/2 + … + 1/152 = 5.6043820526, variance 3.9660053393. */
  @Test
  void cycles_s11_areAsManyAsExpected() {
    assertThat(mean(ShuffleTest::cycles)).isBetween(5.573576, 5.635188);
  }

  private static int cycles(int deal) {
    boolean[] seen = new boolean[K];
    int cycles = 0;
    for (int start = 0; start < K; start++) {
      cycles += seen[start] ? 0 : 1;
      for (int at = start; !seen[at]; at = id(deal, at)) {
        seen[at] = true;
      }
    }
    return cycles;
  }
}
