package org.tallywall.core.play;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigInteger;
import java.util.Arrays;
import java.util.function.IntPredicate;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tallywall.core.random.Exact;

/**
 * The exact chances of a deal that the simulated deals are held against, worked out here from
 * binomial coefficients in whole numbers and compared with figures found by two other means (exact
 * fractions in Python 3 and the hypergeometric distribution of Commons Math 3.6.1). The law is the
 * hypergeometric one of any textbook (Feller, An Introduction to Probability Theory 1, II.6, from
 * memory).
 */
class DealTableExactTest {
  private static final Offset<Double> TWELVE = within(1e-12);
  private static final BigInteger ONE = BigInteger.ONE;

  @Test
  void deals_ofThirteenAndFourteen_areThatMany() {
    assertThat(Exact.choose(152, 13)).isEqualTo(new BigInteger("2190038132512694800"));
    assertThat(Exact.choose(152, 14)).isEqualTo(new BigInteger("21743950029947469800"));
  }

  /** B1: jokers, or flowers, among 13 and among East's 14 tiles. */
  @ParameterizedTest
  @CsvSource({
    "0, 0.4804182869908, 0.4527683136388",
    "1, 0.3785113776291, 0.3870996269278",
    "2, 0.1195299087250, 0.1334320683729",
    "3, 0.0196243133728, 0.0240779672252",
    "4, 1.8170660530e-3, 2.4706869354e-3",
    "5, 9.6197614572e-5, 1.4641107765e-4",
    "6, 2.8086894766e-6, 4.8444841871e-6",
    "7, 4.0705644588e-8, 8.0825596448e-8",
    "8, 2.1963477296e-10, 5.1248113690e-10"
  })
  void jokersDealt_b1_haveTheseChances(int jokers, double thirteen, double fourteen) {
    assertThat(Exact.hypergeometric(152, 8, 13, jokers)).isCloseTo(thirteen, within(1e-13));
    assertThat(Exact.hypergeometric(152, 8, 14, jokers)).isCloseTo(fourteen, within(1e-13));
  }

  @Test
  void jokersDealt_b1_areTheseFractions() {
    BigInteger none = Exact.choose(144, 13).multiply(new BigInteger("308406729925"));
    assertThat(none).isEqualTo(Exact.choose(152, 13).multiply(new BigInteger("148164232887")));
    BigInteger eight = Exact.choose(144, 6).multiply(new BigInteger("837103981225"));
    assertThat(eight).isEqualTo(Exact.choose(152, 14).multiply(BigInteger.valueOf(429)));
  }

  @Test
  void jokersDealt_b1_haveThisMeanAndVariance() {
    assertThat(mean(13)).isCloseTo(13.0 / 19, TWELVE);
    assertThat(mean(14)).isCloseTo(14.0 / 19, TWELVE);
    assertThat(variance(13)).isCloseTo(32526.0 / 54511, TWELVE);
    assertThat(variance(14)).isCloseTo(34776.0 / 54511, TWELVE);
  }

  private static double mean(int tiles) {
    double mean = 0;
    for (int jokers = 0; jokers <= 8; jokers++) {
      mean += jokers * Exact.hypergeometric(152, 8, tiles, jokers);
    }
    return mean;
  }

  private static double variance(int tiles) {
    double square = 0;
    for (int jokers = 0; jokers <= 8; jokers++) {
      square += jokers * jokers * Exact.hypergeometric(152, 8, tiles, jokers);
    }
    return square - mean(tiles) * mean(tiles);
  }

  @Test
  void jokersOfTheTable_b1_haveTheseChances() {
    assertThat(Exact.hypergeometric(152, 8, 53, 0)).isCloseTo(0.0292165211, within(5e-11));
    assertThat(Exact.hypergeometric(152, 16, 13, 0)).isCloseTo(0.2208977775, within(5e-11));
    assertThat(Exact.hypergeometric(152, 16, 14, 0)).isCloseTo(0.1954706952, within(5e-11));
    assertThat(DealChances.everySeatHasAJoker()).isCloseTo(0.0496, within(5e-5));
  }

  /** B2: copies of one kind of four copies. */
  @ParameterizedTest
  @CsvSource({
    "0, 0.696715222431, 0.676665863512",
    "1, 0.266391114459, 0.280691024864",
    "2, 0.035000292411, 0.040246139595",
    "3, 0.001859918920, 0.002350139538",
    "4, 3.345177914e-5, 4.683249080e-5"
  })
  void copiesOfAKind_b2_haveTheseChances(int copies, double thirteen, double fourteen) {
    assertThat(Exact.hypergeometric(152, 4, 13, copies)).isCloseTo(thirteen, within(6e-13));
    assertThat(Exact.hypergeometric(152, 4, 14, copies)).isCloseTo(fourteen, within(6e-13));
  }

  /** B3: expected numbers of kinds in a hand. */
  @ParameterizedTest
  @CsvSource({
    "13, 10.311682437348, 1.581246617277, 1.254384545746, 0.825114873855",
    "14, 10.993360640590, 1.707232648188, 1.449865795205, 0.919744321440"
  })
  void kindsInAHand_b3_haveTheseMoments(
      int tiles, double distinct, double variance, double twice, double varianceOfTwice) {
    assertThat(DealChances.kinds(tiles, 1)).isCloseTo(distinct, within(6e-13));
    assertThat(DealChances.varianceOfKinds(tiles, 1)).isCloseTo(variance, within(1e-11));
    assertThat(DealChances.kinds(tiles, 2)).isCloseTo(twice, within(6e-13));
    assertThat(DealChances.varianceOfKinds(tiles, 2)).isCloseTo(varianceOfTwice, within(1e-11));
  }

  /** B3: the chance of at least one natural pair, triple, four (34 kinds of four copies). */
  @ParameterizedTest
  @CsvSource({
    "13, 2, 0.789289162675",
    "14, 2, 0.840555249320",
    "13, 3, 0.063453998101",
    "14, 3, 0.079905958018",
    "13, 4, 0.001137237276",
    "14, 4, 0.001592017188"
  })
  void groupInAHand_b3_hasThisChance(int tiles, int size, double chance) {
    double[] kinds = DealChances.kindsHeld(tiles, copies -> copies >= size, false);
    assertThat(1 - kinds[0]).isCloseTo(chance, within(6e-13));
  }

  /** How many kinds, flowers included, a hand holds at least twice: none, one, two, three, more. */
  @ParameterizedTest
  @CsvSource({
    "13, 0.1672, 0.4009, 0.3159, 0.1018, 0.0142",
    "14, 0.1211, 0.3543, 0.3493, 0.1464, 0.0290"
  })
  void pairsInAHand_flowersIncluded_haveTheseChances(
      int tiles, double none, double one, double two, double three, double more) {
    IntPredicate twice = copies -> copies >= 2;
    double[] kinds = DealChances.kindsHeld(tiles, twice, true);
    assertThat(Arrays.copyOf(kinds, 4))
        .containsExactly(new double[] {none, one, two, three}, within(5e-5));
    assertThat(1 - kinds[0] - kinds[1] - kinds[2] - kinds[3]).isCloseTo(more, within(5.1e-5));
  }

  /** B6: the wait for the first of m outs among N unseen tiles. */
  @ParameterizedTest
  @CsvSource({
    "60, 1, 30.500000, 0.0833333333, 0.3333333333",
    "60, 4, 12.200000, 0.3005936817, 0.8125852328",
    "60, 8, 6.777778, 0.5241317789, 0.9699429147",
    "80, 2, 27.000000, 0.1218354430, 0.4398734177",
    "80, 5, 13.500000, 0.2820558023, 0.7728157918",
    "99, 1, 50.000000, 0.0505050505, 0.2020202020",
    "99, 4, 20.000000, 0.1899053123, 0.6008631975",
    "99, 8, 11.111111, 0.3497984652, 0.8476130142"
  })
  void waitForAnOut_b6_hasTheseChances(int unseen, int outs, double mean, double in5, double in20) {
    double expected = 0;
    double within5 = 0;
    double within20 = 0;
    for (int wait = 1; wait <= unseen - outs + 1; wait++) {
      double chance = DealChances.firstOutAt(unseen, outs, wait);
      expected += wait * chance;
      within5 += wait <= 5 ? chance : 0;
      within20 += wait <= 20 ? chance : 0;
    }
    assertThat(expected).isCloseTo(mean, within(5.1e-7));
    assertThat(expected).isCloseTo((unseen + 1.0) / (outs + 1), TWELVE);
    assertThat(within5).isCloseTo(in5, within(5.1e-11));
    assertThat(within20).isCloseTo(in20, within(5.1e-11));
  }

  /** B7: at least one of m wanted tiles among three drawn from N. */
  @ParameterizedTest
  @CsvSource({
    "1, 0.0215827338, 0.0229007634",
    "4, 0.0844633084, 0.0895000615",
    "8, 0.1640315168, 0.1734941075",
    "12, 0.2388507474, 0.2521569324"
  })
  void randomPass_b7_hasTheseChances(int wanted, double of139, double of131) {
    assertThat(1 - Exact.hypergeometric(139, wanted, 3, 0)).isCloseTo(of139, within(5.1e-11));
    assertThat(1 - Exact.hypergeometric(131, wanted, 3, 0)).isCloseTo(of131, within(5.1e-11));
  }

  @Test
  void choose_ofSmallNumbers_isPascalsTriangle() {
    assertThat(Exact.choose(5, 3)).isEqualTo(BigInteger.TEN);
    assertThat(Exact.choose(5, 0)).isEqualTo(ONE);
    assertThat(Exact.choose(5, 6)).isZero();
    assertThat(Exact.choose(5, -1)).isZero();
  }
}
