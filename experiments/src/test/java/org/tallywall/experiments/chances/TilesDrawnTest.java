package org.tallywall.experiments.chances;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.apache.commons.math3.fraction.BigFraction;
import org.assertj.core.data.Offset;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Wanted tiles among those drawn, against textbooks and exact fractions. */
class TilesDrawnTest {
  private static final Fractions EXACT = new Fractions();

  /**
   * D. C. Montgomery and G. C. Runger, Applied Statistics and Probability for Engineers, 3rd
   * edition, section 3-8: examples 3-26 (50 of 850 parts, 2 drawn) and 3-27 (100 of 300 parts, 4
   * drawn), as printed there to three or four places.
   */
  @ParameterizedTest
  @CsvSource({
    "850, 50, 2, 0, 0.886, 3",
    "850, 50, 2, 1, 0.111, 3",
    "850, 50, 2, 2, 0.003, 3",
    "300, 100, 4, 2, 0.298, 3",
    "300, 100, 4, 3, 0.098, 3",
    "300, 100, 4, 4, 0.0119, 4"
  })
  void exactly_examplesOfATextbook_agree(
      int unseen, int wanted, int draws, int count, double printed, int places) {
    assertThat(new TilesDrawn(unseen, wanted, draws).exactly(count))
        .isCloseTo(printed, Offset.offset(0.5 * Math.pow(10, -places)));
  }

  /**
   * The same book, examples 3-27 (one or more: 0.804; two or more: 0.408, which adds up terms that
   * were rounded before, so that a thousandth is forgiven) and 3-28 (mean 1.33).
   */
  @Test
  void atLeastAndAverage_examplesOfATextbook_agree() {
    TilesDrawn parts = new TilesDrawn(300, 100, 4);
    assertThat(parts.atLeast(2)).isCloseTo(0.408, Offset.offset(0.001));
    assertThat(parts.atLeast(1)).isCloseTo(0.804, Offset.offset(0.0005));
    assertThat(parts.average()).isCloseTo(1.33, Offset.offset(0.005));
  }

  /**
   * OpenStax, Introductory Statistics, section 4.5: a committee of 4 out of 6 men and 5 women has 2
   * men with a chance of 0.4545, and 2.18 men on average.
   */
  @Test
  void committee_ofATextbook_agrees() {
    TilesDrawn committee = new TilesDrawn(11, 6, 4);
    assertThat(committee.exactly(2)).isCloseTo(0.4545, Offset.offset(0.00005));
    assertThat(committee.average()).isCloseTo(2.18, Offset.offset(0.005));
  }

  /** Every sum of that many tiles, each count, against exact fractions. */
  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 7, 19, 40})
  void everySum_ofFewTiles_isTheExactFraction(int unseen) {
    for (int wanted = 0; wanted <= unseen; wanted++) {
      for (int draws = 0; draws <= unseen; draws++) {
        compare(unseen, wanted, draws);
      }
    }
  }

  /** Sums as teachers ask them, up to the largest set and beyond. */
  @ParameterizedTest
  @ValueSource(ints = {60, 99, 131, 139, 152, 164, 200})
  void sums_ofManyTiles_areTheExactFractions(int unseen) {
    for (int wanted : new int[] {1, 2, 3, 4, 8, 12, 16, 24, unseen / 2, unseen - 1}) {
      for (int draws : new int[] {1, 3, 5, 10, 13, 14, 20, 25, 53, unseen - 1, unseen}) {
        compare(unseen, wanted, draws);
      }
    }
  }

  private static void compare(int unseen, int wanted, int draws) {
    TilesDrawn sum = new TilesDrawn(unseen, wanted, draws);
    Percentage near = Percentage.withPercentage(100 * TilesDrawn.PRECISION);
    BigFraction tail = BigFraction.ZERO;
    for (int k = sum.most(); k >= sum.least(); k--) {
      BigFraction exact = EXACT.exactly(unseen, wanted, draws, k);
      tail = tail.add(exact);
      assertThat(sum.exactly(k)).isCloseTo(Fractions.number(exact), near);
      assertThat(sum.atLeast(k)).isCloseTo(Fractions.number(tail), near).isLessThanOrEqualTo(1);
    }
    assertThat(tail).isEqualTo(BigFraction.ONE);
    assertThat(sum.exactly(sum.least() - 1) + sum.exactly(sum.most() + 1)).isZero();
    assertThat(sum.atLeast(sum.least())).isEqualTo(1);
    assertThat(sum.atLeast(sum.most() + 1)).isZero();
    double mean = (double) draws * wanted / unseen;
    assertThat(sum.average()).isCloseTo(mean, Offset.offset(1e-12));
  }

  /** Jokers among 13 and 14 of 152 tiles, from their fractions in lowest terms. */
  @Test
  void jokers_inADeal_areTheirFractions() {
    assertThat(EXACT.exactly(152, 8, 13, 0).toString()).isEqualTo("148164232887 / 308406729925");
    assertThat(EXACT.exactly(152, 8, 14, 1).toString()).isEqualTo("17054875728 / 44058104275");
    assertThat(EXACT.exactly(152, 8, 13, 8).toString()).isEqualTo("1287 / 5859727868575");
    Offset<Double> digits = Offset.offset(5e-11);
    assertThat(new TilesDrawn(152, 8, 13).atLeast(1)).isCloseTo(0.5195817130, digits);
    assertThat(new TilesDrawn(152, 8, 14).atLeast(1)).isCloseTo(0.5472316864, digits);
    assertThat(new TilesDrawn(152, 8, 13).atLeast(2)).isCloseTo(0.1410703354, digits);
    assertThat(new TilesDrawn(152, 8, 13).average()).isCloseTo(13.0 / 19, digits);
  }

  @ParameterizedTest
  @CsvSource({"0, 0, 0", "5, 6, 1", "5, 1, 6", "5, -1, 1", "5, 1, -1"})
  void numbers_thatDoNotFit_areRefused(int unseen, int wanted, int draws) {
    assertThatThrownBy(() -> new TilesDrawn(unseen, wanted, draws))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
