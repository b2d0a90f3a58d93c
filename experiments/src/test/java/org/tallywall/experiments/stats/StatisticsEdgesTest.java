package org.tallywall.experiments.stats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigInteger;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Edges and units at which a line of these statistics could break unnoticed.
 *
 * <p>Some lines can be changed without any change of a result, so no test can tell: the ends of the
 * bisections in {@link AlwaysValid} and {@link FewDeals} (a value hit exactly is within their
 * tolerance), the two edges in the correlation of {@link PairedProportions} (both sides give 0
 * there), the edges of {@link Interval#withinZeroAndOne} (0 stays 0, 1 stays 1), the number of
 * deals without a difference in the sign test of {@link RareDifference} (the test does not look at
 * it), who is present in {@link TopOneRatings} (whoever holds no place has a chance of 0), and the
 * last line of its climb as well as the loop of {@link Quantile}, which guard against rounding:
 * Fisher's steps lead up in every table that could be made, and the library's rank is the smallest.
 */
class StatisticsEdgesTest {
  private static final double LEVEL = 0.95;

  @ParameterizedTest
  @CsvSource({
    "9, 100, true",
    "10, 100, false",
    "9, 18, false",
    "9, 19, true",
    "1, 2, false",
    "1, 3, true"
  })
  void fewDeals_areFewerThanTenAndFewerThanHalf(long differing, long deals, boolean few) {
    assertThat(FewDeals.are(differing, deals)).isEqualTo(few);
  }

  /** Two seats, 50 deals: sizes -2, 1 and 2 in one, two and three of them. */
  @Test
  void fewDeals_ofTwoSeats_addUpTheLimitsOfEachSize() {
    long[] sizes = {1, 0, 44, 2, 3};
    Estimate estimate = new FewDeals(50, 2, size -> sizes[size + 2]).estimate(LEVEL);
    double each = 1 - 0.05 / 4;
    Interval one = new Proportion(5, 50).clopperPearson(each);
    Interval two = new Proportion(3, 50).clopperPearson(each);
    Interval less = new Proportion(1, 50).clopperPearson(each);

    assertThat(estimate.value()).isCloseTo((-2 + 2 + 6) / 100.0, within(1e-15));
    assertThat(estimate.interval().orElseThrow().low())
        .isCloseTo((one.low() + two.low() - 2 * less.high()) / 2, within(1e-12));
    assertThat(estimate.interval().orElseThrow().high())
        .isCloseTo((one.high() + two.high() - 2 * less.low()) / 2, within(1e-12));
  }

  /** The t quantile for one degree of freedom, 12.7062, is in every printed table. */
  @Test
  void twoDeals_haveARangeAlready_andOneHasNone() {
    Interval mean = Moments.of(1, 3).estimate(LEVEL, 1).interval().orElseThrow();
    Interval ratio = pair(2, 4, 2, 10, 4, 2).estimate(LEVEL).interval().orElseThrow();

    assertThat(mean.high()).isCloseTo(2 + 12.7062047, within(1e-6));
    assertThat(ratio.high()).isCloseTo(2 + 12.7062047, within(1e-6));
    assertThat(pair(1, 4, 2, 16, 8, 4).estimate(LEVEL))
        .isEqualTo(new Estimate(2, java.util.Optional.empty(), Method.RATIO_OVER_DEALS));
  }

  private static PairMoments pair(long n, long x, long y, long xx, long xy, long yy) {
    return new PairMoments(
        n,
        BigInteger.valueOf(x),
        BigInteger.valueOf(y),
        BigInteger.valueOf(xx),
        BigInteger.valueOf(xy),
        BigInteger.valueOf(yy));
  }

  @ParameterizedTest
  @CsvSource({
    "-0.1, 1.2, 0, 1",
    "0.2, 0.8, 0.2, 0.8",
    "1.1, 1.3, 1, 1",
    "-2, -1, 0, 0",
    "-0.1, 0.3, 0, 0.3"
  })
  void limits_beyondAShare_areCutOff(double low, double high, double cutLow, double cutHigh) {
    assertThat(new Interval(low, high).withinZeroAndOne()).isEqualTo(new Interval(cutLow, cutHigh));
  }

  /** 1.959964 + 1.281552 standard errors, and the second of them beyond a half-width. */
  @Test
  void smallestDifference_isInTheUnitOfTheError() {
    assertThat(SampleSize.detectable(2, 0.05, 0.9)).isCloseTo(2 * 3.2415155501, within(1e-8));
    assertThat(SampleSize.detectableBeyond(5, 2, 0.9))
        .isCloseTo(5 + 2 * 1.2815515655, within(1e-8));
  }

  /** Square-and-add by hand: limits of 7 and 2 of 50, with the correlation of the trinomial. */
  @Test
  void rareDifference_isPutTogetherWithTheCorrelationOfItsShares() {
    Interval up = new Proportion(7, 50).clopperPearson(LEVEL);
    Interval down = new Proportion(2, 50).clopperPearson(LEVEL);
    double r = -Math.sqrt(0.14 * 0.04 / (0.86 * 0.96));
    double a = 0.14 - up.low();
    double b = down.high() - 0.04;

    assertThat(new RareDifference(7, 2, 50).interval(LEVEL).low())
        .isCloseTo(0.1 - Math.sqrt(a * a + b * b - 2 * r * a * b), within(1e-12));
  }

  @Test
  void counts_thatFillAllDeals_areTaken_andOneMoreIsNot() {
    assertThatCode(() -> new RareDifference(20, 20, 40)).doesNotThrowAnyException();
    assertThatThrownBy(() -> new RareDifference(21, 20, 40))
        .isInstanceOf(IllegalArgumentException.class);
    assertThat(new PairedProportions(1, 0, 0, 0).deals()).isEqualTo(1);
    assertThat(new PairedProportions(0, 1, 1, 0).deals()).isEqualTo(2);
    assertThat(new PairedProportions(0, 0, 1, 1).deals()).isEqualTo(2);
    assertThat(new Proportion(1, 1).share()).isEqualTo(1);
    assertThat(new Proportion(0, Integer.MAX_VALUE).share()).isZero();
    assertThatThrownBy(() -> new Proportion(0, 1L << 31))
        .isInstanceOf(IllegalArgumentException.class);
    assertThat(new Quantile(new long[] {0, 1}, LEVEL).median().value()).isEqualTo(1);
    assertThatThrownBy(() -> new Quantile(new long[] {1L << 31}, LEVEL))
        .isInstanceOf(IllegalArgumentException.class);
  }

  /** One deal each way: 1 less half of the chance, one half, that it falls out so. */
  @Test
  void midP_asManyOnBothSides_isOneLessHalfThePoint() {
    assertThat(new PairedProportions(5, 1, 1, 5).midPTest()).isEqualTo(0.75);
  }

  /**
   * Sum and point of the binomial distribution are rounded apart, so their difference may be −0.
   */
  @Test
  void midP_ofOneSidedDifferences_isNeverBelowZero() {
    for (int more = 1; more <= 3_000; more++) {
      for (int fewer : new int[] {0, 1, 40}) {
        assertThat(new PairedProportions(0, more, fewer, 0).midPTest()).isBetween(0.0, 1.0);
      }
    }
  }

  @Test
  void chances_areStrengthsTimesPlaces() {
    TopOneRatings fit =
        TopOneRatings.likeliest(
            2, List.of(new TopOneRatings.Contests(new int[] {1, 1}, new long[] {3, 1})));

    assertThat(fit.chances(new int[] {1, 1}))
        .containsExactly(new double[] {0.75, 0.25}, within(1e-9));
    assertThat(fit.chances(new int[] {1, 3}))
        .containsExactly(new double[] {0.5, 0.5}, within(1e-9));
  }

  @Test
  void jointTest_ofThreePlaces_hasTwiceTheDegreesOfItsNumbers() {
    double[][] one = {{1, 0}, {0, 1}};
    double[] same = {2, 5};
    Sameness test = Sameness.of(List.of(same, same, same), List.of(one, one, one));

    assertThat(test.degrees()).isEqualTo(4);
    assertThat(test.statistic()).isCloseTo(0, within(1e-12));
    assertThat(test.p()).isEqualTo(1);
  }
}
