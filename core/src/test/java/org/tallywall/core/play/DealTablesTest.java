package org.tallywall.core.play;

import static org.assertj.core.api.Assertions.assertThat;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tallywall.core.random.ChiSquare;
import org.tallywall.core.random.Exact;
import org.tallywall.core.tile.Tile;
import org.tallywall.core.tile.TileSet;

/**
 * Simulated deals against the exact chances of {@link DealTableExactTest}.
 *
 * <p>Hypothesis of every test: the tiles are dealt as 152 tiles in random order are. n = 1,000,000
 * deals, seed {@value #SEED}, fixed; each line would raise a false alarm for one fresh seed in a
 * million (fits: {@link ChiSquare}; means and shares: 4.891638 standard errors, the normal
 * distribution's two-sided 1e-6).
 */
@Tag("one-jdk")
class DealTablesTest {
  private static final long SEED = 31_415_926L;
  private static final int N = 1_000_000;
  private static final double Z = 4.891638476;
  private static final int SOUTH = 1;

  /** One number for all deals: how often each count of something came up, by seat. */
  private static final long[][] JOKERS = new long[4][9];

  private static final long[][] FLOWERS = new long[4][9];
  private static final long[][] COPIES = new long[4][5];
  private static final long[][] PAIRS = new long[2][15];
  private static final long[] FIRST_JOKER = new long[153];
  private static final long[][] FIRST_FLOWER = new long[9][100];
  private static final int FIVE_BAM = Tile.suited(0, 5);
  private static long distinctKinds;
  private static long allHaveJokers;
  private static long noneHasJokers;
  private static long productOfJokers;
  private static long unseenInWall;
  private static long unseenTotal;

  @BeforeAll
  static void deal() {
    int[][] held = new int[4][Tile.KINDS];
    for (int number = 0; number < N; number++) {
      Deal deal = Deal.of(SEED, number, TileSet.USUAL);
      for (int[] rack : held) {
        java.util.Arrays.fill(rack, 0);
      }
      for (int place = 0; place < Deal.DEALT; place++) {
        held[Deal.dealtTo(place)][deal.tile(place)]++;
      }
      count(held);
      countWaits(deal);
    }
  }

  private static void count(int[][] held) {
    int withJokers = 0;
    for (int seat = 0; seat < 4; seat++) {
      JOKERS[seat][held[seat][Tile.JOKER]]++;
      FLOWERS[seat][held[seat][Tile.FLOWER]]++;
      COPIES[seat][held[seat][FIVE_BAM]]++;
      withJokers += held[seat][Tile.JOKER] > 0 ? 1 : 0;
    }
    allHaveJokers += withJokers == 4 ? 1 : 0;
    noneHasJokers += withJokers == 0 ? 1 : 0;
    productOfJokers += held[1][Tile.JOKER] * held[2][Tile.JOKER];
    for (int seat = 0; seat < 2; seat++) {
      int pairs = 0;
      for (int kind = 0; kind < Tile.JOKER; kind++) {
        pairs += held[seat][kind] >= 2 ? 1 : 0;
        distinctKinds += seat == SOUTH && kind < Tile.FLOWER && held[seat][kind] > 0 ? 1 : 0;
      }
      PAIRS[seat][pairs]++;
    }
    if (held[SOUTH][FIVE_BAM] == 0) {
      unseenTotal += 4;
      unseenInWall += 4 - held[0][FIVE_BAM] - held[2][FIVE_BAM] - held[3][FIVE_BAM];
    }
  }

  private static void countWaits(Deal deal) {
    int firstJoker = 0;
    while (deal.tile(firstJoker) != Tile.JOKER) {
      firstJoker++;
    }
    FIRST_JOKER[firstJoker + 1]++;
    int flowers = 0;
    int first = 0;
    for (int place = deal.size() - 1; place >= Deal.DEALT; place--) {
      if (deal.tile(place) == Tile.FLOWER) {
        flowers++;
        first = place - Deal.DEALT + 1;
      }
    }
    FIRST_FLOWER[flowers][first]++;
  }

  /** B1 and S4: jokers dealt to a seat: 0, 1, 2, 3, 4, 5 and more; df = 5. */
  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2, 3})
  void jokersDealt_b1s4_fitTheLaw(int seat) {
    fitsTheLaw(JOKERS[seat], seat);
  }

  /** B1: flowers follow the same law. */
  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2, 3})
  void flowersDealt_b1_fitTheLaw(int seat) {
    fitsTheLaw(FLOWERS[seat], seat);
  }

  private static void fitsTheLaw(long[] counts, int seat) {
    double[] chances = Exact.hypergeometricUpTo(5, 152, 8, seat == 0 ? 14 : 13);
    assertThat(ChiSquare.statistic(upTo(5, counts), chances)).isLessThan(35.8882);
  }

  private static long[] upTo(int last, long[] counts) {
    long[] cells = new long[last + 1];
    for (int count = 0; count < counts.length; count++) {
      cells[Math.min(last, count)] += counts[count];
    }
    return cells;
  }

  /** B1: the shares of deals in which every seat, and in which no seat, has a joker. */
  @Test
  void jokersAtTheTable_b1_comeAsOftenAsExpected() {
    assertShare(allHaveJokers, DealChances.everySeatHasAJoker());
    assertShare(noneHasJokers, Exact.hypergeometric(152, 8, 53, 0));
  }

  private static void assertShare(long count, double chance) {
    double error = Z * Math.sqrt(chance * (1 - chance) / N);
    assertThat(count / (double) N).isCloseTo(chance, Offset.offset(error));
  }

  /** B1: the covariance of the jokers of two hands of 13 is −3042/54511. */
  @Test
  void jokersOfTwoHands_b1_areCorrelatedAsExpected() {
    double mean = 13.0 / 19;
    double product = 0;
    double square = 0;
    for (int one = 0; one <= 8; one++) {
      for (int two = 0; two <= 8 - one; two++) {
        double chance = DealChances.jokersOfTwoHands(one, two);
        product += one * two * chance;
        square += one * one * two * two * chance;
      }
    }
    assertThat(product - mean * mean).isCloseTo(-3042.0 / 54511, Offset.offset(1e-12));
    double error = Z * Math.sqrt((square - product * product) / N);
    assertThat(productOfJokers / (double) N).isCloseTo(product, Offset.offset(error));
  }

  /** B2: copies of one kind: 0, 1, 2, 3, 4; df = 4. */
  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2, 3})
  void copiesOfAKind_b2_fitTheLaw(int seat) {
    double[] chances = Exact.hypergeometricUpTo(3, 152, 4, seat == 0 ? 14 : 13);
    assertThat(ChiSquare.statistic(upTo(3, COPIES[seat]), chances)).isLessThan(30.664850);
  }

  /** B3: how many plain kinds a hand of 13 holds, on average. */
  @Test
  void distinctKinds_b3_areAsManyAsExpected() {
    double error = Z * Math.sqrt(DealChances.varianceOfKinds(13, 1) / N);
    assertThat(distinctKinds / (double) N)
        .isCloseTo(DealChances.kinds(13, 1), Offset.offset(error));
  }

  /** B3: how many kinds, flowers included, are held twice or more: 0 to 4, 5 and more; df = 5. */
  @ParameterizedTest
  @ValueSource(ints = {0, 1})
  void pairsInAHand_b3_fitTheLaw(int seat) {
    double[] all = DealChances.kindsHeld(seat == 0 ? 14 : 13, copies -> copies >= 2, true);
    double[] chances = java.util.Arrays.copyOf(all, 6);
    for (int more = 6; more < all.length; more++) {
      chances[5] += all[more];
    }
    assertThat(ChiSquare.statistic(upTo(5, PAIRS[seat]), chances)).isLessThan(35.8882);
  }

  /**
   * B4: of the tiles that South does not hold, 99 in 139 lie in the wall. Taken over deals in which
   * South holds no 5b; the four copies of a deal count as one, with the variance of one (an upper
   * bound for their mean, as copies in the wall exclude one another).
   */
  @Test
  void unseenTile_b4_liesInTheWallAsOftenAsExpected() {
    double chance = 99.0 / 139;
    double error = Z * Math.sqrt(chance * (1 - chance) / (unseenTotal / 4.0));
    assertThat(unseenInWall / (double) unseenTotal).isCloseTo(chance, Offset.offset(error));
  }

  /** B6: the place of the first of 8 jokers among 152 tiles: 1 to 40, 41 to 60, beyond; df = 41. */
  @Test
  void firstJoker_b6_comesWhenExpected() {
    double[] chances = new double[42];
    long[] counts = new long[42];
    for (int place = 1; place <= 145; place++) {
      int cell = place <= 40 ? place - 1 : place <= 60 ? 40 : 41;
      chances[cell] += DealChances.firstOutAt(152, 8, place);
      counts[cell] += FIRST_JOKER[place];
    }
    assertThat(ChiSquare.statistic(counts, chances)).isLessThan(99.1739);
  }

  /**
   * B6: the wait for the first flower in the wall of 99, for each number m of flowers that the deal
   * left there: mean 100/(m + 1), variance m(99 − m)100/((m + 1)²(m + 2)).
   */
  @ParameterizedTest
  @ValueSource(ints = {2, 3, 4, 5, 6, 7, 8})
  void firstFlower_b6_comesWhenExpected(int flowers) {
    long deals = 0;
    double sum = 0;
    for (int wait = 1; wait <= 99; wait++) {
      deals += FIRST_FLOWER[flowers][wait];
      sum += wait * (double) FIRST_FLOWER[flowers][wait];
    }
    double m = flowers;
    double variance = m * (99 - m) * 100 / ((m + 1) * (m + 1) * (m + 2));
    assertThat(deals).isGreaterThan(1000);
    assertThat(sum / deals)
        .isCloseTo(100 / (m + 1), Offset.offset(Z * Math.sqrt(variance / deals)));
  }
}
