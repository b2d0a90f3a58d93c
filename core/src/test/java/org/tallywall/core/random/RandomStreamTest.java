package org.tallywall.core.random;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigInteger;
import java.util.Arrays;
import java.util.stream.IntStream;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;
import org.junit.jupiter.api.Test;

/** Keys become words, words become numbers, numbers become bounded numbers and shuffles. */
class RandomStreamTest {
  private static final StreamKey KEY =
      new StreamKey(20261125L, 7, Purpose.DECISION, 3, 5, 16 * 40 + 11);

  @Test
  void key_asWords_isSeedVersionZeroDealLaneDecision() {
    assertThat(KEY.words()).containsExactly(20261125L, 1, 0, 7, 4 + (3L << 8) + (5L << 32), 651);
  }

  @Test
  void keyWords_ofAnyPart_leaveTheThirdWordAtZero() {
    for (Purpose purpose : Purpose.values()) {
      long[] words = new StreamKey(-1, -1, purpose, 3, Integer.MAX_VALUE, -1).words();
      assertThat(words[2]).isZero();
    }
  }

  @Test
  void purposes_haveTheNumbersThatResultsDependOn() {
    assertThat(Arrays.stream(Purpose.values()).map(Purpose::number))
        .containsExactly(1, 2, 3, 4, 5, 6, 7);
    assertThat(Purpose.WALL.number()).isEqualTo(1);
    assertThat(Purpose.DICE.number()).isEqualTo(2);
    assertThat(Purpose.BLIND_PASS.number()).isEqualTo(3);
    assertThat(Purpose.DECISION.number()).isEqualTo(4);
    assertThat(Purpose.ROLLOUT.number()).isEqualTo(5);
    assertThat(Purpose.RESAMPLING.number()).isEqualTo(6);
    assertThat(Purpose.CARD.number()).isEqualTo(7);
  }

  @Test
  void stream_ofAKey_isTheLibrarysGeneratorWithTheDocumentedWords() {
    UniformRandomProvider library =
        RandomSource.PHILOX_4X64.create(
            new long[] {20261125L, 1, 0, 7, 4 + (3L << 8) + (5L << 32), 651});
    RandomStream stream = new RandomStream(KEY);
    for (int at = 0; at < 1000; at++) {
      assertThat(stream.nextLong()).isEqualTo(library.nextLong());
    }
  }

  /** The library's generator counts its blocks from the word given and begins one further on. */
  @Test
  void stream_ofAKey_isTheFunctionOfThePaper() {
    RandomStream stream = new RandomStream(KEY);
    long[] words = KEY.words();
    for (long count = 1; count <= 250; count++) {
      long[] counter = {count, words[3], words[4], words[5]};
      long[] block = PlainPhilox.block(new long[] {words[0], words[1]}, counter);
      for (long number : block) {
        assertThat(stream.nextLong()).isEqualTo(number);
      }
    }
  }

  @Test
  void stream_turnedTo_isAsOneMadeForTheKey() {
    RandomStream turned = new RandomStream(new StreamKey(1, 2, Purpose.WALL, 0, 0, 0));
    turned.nextLong();
    turned.begin(KEY.seed(), KEY.deal());
    turned.turnTo(KEY.purpose(), KEY.seat(), KEY.sample(), KEY.decision());
    RandomStream made = new RandomStream(KEY);
    for (int at = 0; at < 20; at++) {
      assertThat(turned.nextLong()).isEqualTo(made.nextLong());
    }
  }

  @Test
  void stream_turnedToTheSamePiece_beginsAnew() {
    RandomStream stream = new RandomStream(KEY);
    long first = stream.nextLong();
    stream.nextLong();
    stream.turnTo(KEY.purpose(), KEY.seat(), KEY.sample(), KEY.decision());
    assertThat(stream.nextLong()).isEqualTo(first);
  }

  @Test
  void below_manyBounds_isMultiplyAndReject() {
    for (int bound : new int[] {1, 2, 3, 6, 7, 152, 1000, 65537, 1 << 30, 2_000_000_011}) {
      RandomStream raw = new RandomStream(KEY);
      RandomStream stream = new RandomStream(KEY);
      for (int at = 0; at < 2000; at++) {
        assertThat(stream.below(bound)).isEqualTo(plainBelow(raw, bound));
      }
      assertThat(stream.nextLong()).as("as many numbers used").isEqualTo(raw.nextLong());
    }
  }

  /**
   * The definition without its shortcut: the upper 32 bits times the bound, split at 2^32; of the
   * 2^32 lower parts, the first 2^32 mod bound are refused, so that every answer has equally many.
   */
  private static int plainBelow(RandomStream raw, int bound) {
    BigInteger two32 = BigInteger.ONE.shiftLeft(32);
    BigInteger refused = two32.mod(BigInteger.valueOf(bound));
    while (true) {
      BigInteger product =
          BigInteger.valueOf(raw.nextLong() >>> 32).multiply(BigInteger.valueOf(bound));
      BigInteger[] parts = product.divideAndRemainder(two32);
      if (parts[1].compareTo(refused) >= 0) {
        return parts[0].intValueExact();
      }
    }
  }

  /** With a bound of 2^30 + 2^29, a third of all numbers is refused: the rejection does happen. */
  @Test
  void below_aBoundThatDividesBadly_refusesSomeNumbers() {
    int bound = 1_610_612_736;
    RandomStream raw = new RandomStream(KEY);
    RandomStream stream = new RandomStream(KEY);
    int used = 0;
    long next = raw.nextLong();
    for (int at = 0; at < 300; at++) {
      stream.below(bound);
    }
    long after = stream.nextLong();
    while (next != after && used < 10_000) {
      next = raw.nextLong();
      used++;
    }
    assertThat(used).isBetween(301, 600);
  }

  @Test
  void below_one_isZero() {
    assertThat(new RandomStream(KEY).below(1)).isZero();
  }

  @Test
  void below_lessThanOne_isRefused() {
    RandomStream stream = new RandomStream(KEY);
    assertThatThrownBy(() -> stream.below(0)).hasMessageContaining("1 or more, not 0");
    assertThatThrownBy(() -> stream.below(-3)).hasMessageContaining("1 or more, not -3");
  }

  @Test
  void happens_atTheEnds_drawsNothing() {
    RandomStream stream = new RandomStream(KEY);
    assertThat(stream.happens(0)).isFalse();
    assertThat(stream.happens(1)).isTrue();
    assertThat(stream.nextLong()).isEqualTo(new RandomStream(KEY).nextLong());
  }

  @Test
  void happens_withAChance_comparesTheUpper53Bits() {
    RandomStream raw = new RandomStream(KEY);
    RandomStream stream = new RandomStream(KEY);
    for (int at = 0; at < 1000; at++) {
      double number = (double) (raw.nextLong() >>> 11) / (1L << 53);
      assertThat(stream.happens(0.3)).isEqualTo(number < 0.3);
    }
  }

  @Test
  void shuffle_isTheDescendingExchangeOfTheTextbook() {
    int[] shuffled = IntStream.range(0, 152).toArray();
    new RandomStream(KEY).shuffle(shuffled, 152);
    RandomStream raw = new RandomStream(KEY);
    int[] plain = IntStream.range(0, 152).toArray();
    for (int place = 152; place >= 2; place--) {
      int drawn = plainBelow(raw, place) + 1;
      int kept = plain[drawn - 1];
      plain[drawn - 1] = plain[place - 1];
      plain[place - 1] = kept;
    }
    assertThat(shuffled).containsExactly(plain);
  }

  @Test
  void shuffle_ofAPart_leavesTheRestWhereItIs() {
    int[] values = IntStream.range(0, 20).toArray();
    new RandomStream(KEY).shuffle(values, 12);
    assertThat(Arrays.copyOf(values, 12))
        .containsExactlyInAnyOrder(IntStream.range(0, 12).toArray())
        .isNotEqualTo(IntStream.range(0, 12).toArray());
    assertThat(Arrays.copyOfRange(values, 12, 20))
        .containsExactly(IntStream.range(12, 20).toArray());
  }

  @Test
  void shuffle_ofOneOrNone_drawsNothing() {
    RandomStream stream = new RandomStream(KEY);
    stream.shuffle(new int[] {5}, 1);
    stream.shuffle(new int[0], 0);
    assertThat(stream.nextLong()).isEqualTo(new RandomStream(KEY).nextLong());
  }
}
