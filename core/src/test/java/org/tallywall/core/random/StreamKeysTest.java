package org.tallywall.core.random;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Whether neighboring keys have unrelated numbers.
 *
 * <p>Hypothesis of every test: the numbers of different keys are independent and even. Seed {@value
 * #SEED}, fixed; each line would raise a false alarm for one fresh seed in a million. Critical
 * values: {@link ChiSquare}, and the normal distribution with Bonferroni's correction where many
 * counts are looked at. K4, K6 and K8 are classical tests of balance, matches (Montmort) and serial
 * correlation; K1 is the avalanche criterion (all from memory).
 */
class StreamKeysTest {
  private static final long SEED = 5_402_937L;
  private static final double CRITICAL_255 = 377.0781;

  private final RandomStream stream = new RandomStream(key(0));

  private static StreamKey key(long deal) {
    return new StreamKey(SEED, deal, Purpose.WALL, 0, 0, 0);
  }

  private long first(long seed, long deal) {
    stream.begin(seed, deal);
    stream.turnTo(Purpose.WALL, 0, 0, 0);
    return stream.nextLong();
  }

  /**
   * K1: flip one bit of the deal or of the seed: each bit of the first number changes in half of
   * 20,000 random keys. 4,096 counts each, within 6.3306436 standard errors of 10,000.
   */
  @Test
  void flippedBit_k1_changesEveryBitInHalfOfAllKeys() {
    UniformRandomProvider keys = RandomSource.SPLIT_MIX_64.create(SEED);
    long[] byDeal = new long[64 * 64];
    long[] bySeed = new long[64 * 64];
    for (int sample = 0; sample < 20_000; sample++) {
      long seed = keys.nextLong();
      long deal = keys.nextLong();
      long before = first(seed, deal);
      for (int bit = 0; bit < 64; bit++) {
        count(before ^ first(seed, deal ^ 1L << bit), byDeal, 64 * bit);
        count(before ^ first(seed ^ 1L << bit, deal), bySeed, 64 * bit);
      }
    }
    assertThat(Arrays.stream(byDeal)).allMatch(count -> Math.abs(count - 10_000) <= 447.644);
    assertThat(Arrays.stream(bySeed)).allMatch(count -> Math.abs(count - 10_000) <= 447.644);
  }

  private static void count(long bits, long[] counts, int from) {
    for (int bit = 0; bit < 64; bit++) {
      counts[from + bit] += bits >>> bit & 1;
    }
  }

  /** K2: the top four bits of deals 2i and 2i + 1, 1,000,000 pairs, 256 cells, df = 255. */
  @Test
  void consecutiveDeals_k2_areIndependent() {
    long[] cells = new long[256];
    for (long pair = 0; pair < 1_000_000; pair++) {
      int one = (int) (first(SEED, 2 * pair) >>> 60);
      int two = (int) (first(SEED, 2 * pair + 1) >>> 60);
      cells[one << 4 | two]++;
    }
    assertThat(ChiSquare.even(cells)).isLessThan(CRITICAL_255);
  }

  /** K3: the top four bits of two lanes of one deal, 1,000,000 deals, every pair of lanes. */
  @Test
  void lanesOfADeal_k3_areIndependent() {
    List<StreamKey> lanes = new ArrayList<>();
    for (Purpose purpose : Purpose.values()) {
      lanes.add(new StreamKey(SEED, 0, purpose, 0, 0, 0));
    }
    lanes.add(new StreamKey(SEED, 0, Purpose.DECISION, 1, 0, 0));
    lanes.add(new StreamKey(SEED, 0, Purpose.DECISION, 0, 0, 1));
    lanes.add(new StreamKey(SEED, 0, Purpose.ROLLOUT, 0, 1, 0));
    int count = lanes.size();
    long[][] cells = new long[count * count][256];
    int[] top = new int[count];
    for (long deal = 0; deal < 1_000_000; deal++) {
      stream.begin(SEED, deal);
      for (int lane = 0; lane < count; lane++) {
        StreamKey key = lanes.get(lane);
        stream.turnTo(key.purpose(), key.seat(), key.sample(), key.decision());
        top[lane] = (int) (stream.nextLong() >>> 60);
        for (int other = 0; other < lane; other++) {
          cells[lane * count + other][top[lane] << 4 | top[other]]++;
        }
      }
    }
    for (int lane = 0; lane < count; lane++) {
      for (int other = 0; other < lane; other++) {
        assertThat(ChiSquare.even(cells[lane * count + other]))
            .as("lanes %s and %s", lanes.get(lane), lanes.get(other))
            .isLessThan(CRITICAL_255);
      }
    }
  }

  /** K4: each bit of the first number is set in half of 1,000,000 deals (z = 5.6545556). */
  @Test
  void bitsOfTheFirstNumber_k4_areBalanced() {
    long[] ones = new long[64];
    for (long deal = 0; deal < 1_000_000; deal++) {
      count(first(SEED, deal), ones, 0);
    }
    assertThat(Arrays.stream(ones)).allMatch(count -> count >= 497_173 && count <= 502_827);
  }

  /** K5: pairs of 2^20 deals with the same top 32 bits: Poisson(127.99988), 77 to 187. */
  @Test
  void collisions_k5_areAsManyAsExpected() {
    int[] tops = new int[1 << 20];
    for (int deal = 0; deal < tops.length; deal++) {
      tops[deal] = (int) (first(SEED, deal) >>> 32);
    }
    Arrays.sort(tops);
    int pairs = 0;
    int equal = 0;
    for (int at = 1; at < tops.length; at++) {
      equal = tops[at] == tops[at - 1] ? equal + 1 : 0;
      pairs += equal;
    }
    assertThat(pairs).isBetween(77, 187);
  }

  /**
   * K6: tiles in the same place in deals 2i and 2i + 1, 100,000 pairs: mean 1, and the numbers 0,
   * 1, … 5 and more as in Montmort's game of matches, df = 5.
   */
  @Test
  void matchesOfConsecutiveDeals_k6_areAsManyAsExpected() {
    double[] chances = {
      0.367879441171, 0.367879441171, 0.183939720586, 0.061313240195, 0.015328310049, 0.003659846828
    };
    long[] counts = new long[6];
    long sum = 0;
    Walls one = new Walls(SEED);
    Walls two = new Walls(SEED);
    for (long pair = 0; pair < 100_000; pair++) {
      int[] first = one.wall(2 * pair);
      int[] second = two.wall(2 * pair + 1);
      int matches = 0;
      for (int place = 0; place < first.length; place++) {
        matches += first[place] == second[place] ? 1 : 0;
      }
      sum += matches;
      counts[Math.min(5, matches)]++;
    }
    assertThat(sum / 100_000.0).isBetween(0.984531, 1.015469);
    assertThat(ChiSquare.statistic(counts, chances)).isLessThan(35.8882);
  }

  /** K7, a sample: for each word of the key but the third, neighbors share no number. */
  @Test
  void neighboringKeys_k7_shareNoNumber() {
    shareNoNumber(300);
  }

  /** K7 in full: 10,000 pairs for each word, 1,000 numbers each. */
  @Test
  @Tag("long")
  void neighboringKeys_k7InFull_shareNoNumber() {
    shareNoNumber(10_000);
  }

  private static void shareNoNumber(int pairs) {
    UniformRandomProvider keys = RandomSource.SPLIT_MIX_64.create(SEED);
    for (int pair = 0; pair < pairs; pair++) {
      long[] words = {keys.nextLong(), 1, 0, keys.nextInt(), keys.nextInt(1 << 20), keys.nextInt()};
      for (int word = 0; word < 6; word++) {
        if (word != 2) {
          long[] neighbor = words.clone();
          neighbor[word]++;
          assertThat(shared(words, neighbor)).as("word %d of %s", word, words).isZero();
        }
      }
    }
  }

  /** A third word other than 0 would do just that: the streams overlap four numbers on. */
  @Test
  void thirdWord_ofNeighbors_wouldShareNumbers() {
    long[] words = {SEED, 1, 0, 7, 1, 0};
    long[] neighbor = {SEED, 1, 1, 7, 1, 0};
    assertThat(shared(words, neighbor)).isEqualTo(996);
  }

  private static int shared(long[] one, long[] two) {
    long[] numbers = new long[2000];
    UniformRandomProvider first = RandomSource.PHILOX_4X64.create(one);
    UniformRandomProvider second = RandomSource.PHILOX_4X64.create(two);
    for (int at = 0; at < 1000; at++) {
      numbers[at] = first.nextLong();
      numbers[1000 + at] = second.nextLong();
    }
    Arrays.sort(numbers);
    int shared = 0;
    for (int at = 1; at < numbers.length; at++) {
      shared += numbers[at] == numbers[at - 1] ? 1 : 0;
    }
    return shared;
  }

  /**
   * K8: jokers among the 53 tiles dealt, deal g and deal g + 1, 200,000 deals: the correlation lies
   * within 4.891638 / √200,000 of 0. (With the deal as third word of the key it was 0.11.)
   */
  @Test
  void jokersDealt_k8_areUncorrelatedFromDealToDeal() {
    int n = 200_000;
    Walls walls = new Walls(SEED);
    double[] jokers = new double[n + 1];
    double mean = 0;
    for (int deal = 0; deal <= n; deal++) {
      int[] wall = walls.wall(deal);
      for (int place = 0; place < 53; place++) {
        jokers[deal] += wall[place] >= 144 ? 1 : 0;
      }
      mean += jokers[deal] / (n + 1);
    }
    double product = 0;
    double square = 0;
    for (int deal = 0; deal < n; deal++) {
      product += (jokers[deal] - mean) * (jokers[deal + 1] - mean);
      square += (jokers[deal] - mean) * (jokers[deal] - mean);
    }
    assertThat(product / square).isBetween(-0.0110, 0.0110);
  }
}
