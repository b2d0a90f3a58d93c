package org.tallywall.experiments.stats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Comparisons of shares and means against published worked examples. */
class ComparisonTest {
  private static final double LEVEL = 0.95;

  /**
   * Newcombe, Statistics in Medicine 17 (1998) 2635–2650 (first row); Fagerland, Lydersen and
   * Laake, Statistics in Medicine 2014 (second); Tango, ibid. 17 (1998) 891–908 (fourth); Agresti
   * and Min 2005 (sixth). Published to three or four places; the further places were worked out by
   * a second program.
   */
  @ParameterizedTest
  @CsvSource({
    "20, 12, 2, 16, 0.0561564248, 0.3292069954",
    "1, 1, 7, 12, -0.5069202267, -0.0255591242",
    "59, 6, 16, 80, -0.1186211956, -0.0046251139",
    "4, 9, 3, 16, -0.0273480821, 0.3806715782",
    "53, 16, 8, 9, -0.0201040769, 0.2039158353",
    "1450, 302, 227, 5474, 0.0040127832, 0.0161221682"
  })
  void pairedIntervals_publishedExamples_agree(
      long e, long f, long g, long h, double nl, double nh) {
    PairedProportions pairs = new PairedProportions(e, f, g, h);

    assertThat(pairs.newcombe(LEVEL).low()).isCloseTo(nl, within(1e-9));
    assertThat(pairs.newcombe(LEVEL).high()).isCloseTo(nh, within(1e-9));
  }

  /** The p-values of the third row are published to six places; the others are second programs'. */
  @ParameterizedTest
  @CsvSource({
    "20, 12, 2, 16, 0.0129394531, 0.0073852539",
    "1, 1, 7, 12, 0.0703125, 0.0390625",
    "59, 6, 16, 80, 0.0524787903, 0.0346896648",
    "4, 9, 3, 16, 0.1459960938, 0.0922851562",
    "43, 0, 1, 0, 1, 0.5",
    "53, 16, 8, 9, 0.1515896320, 0.1077521443"
  })
  void pairedTests_publishedExamples_agree(
      long e, long f, long g, long h, double exact, double midP) {
    PairedProportions pairs = new PairedProportions(e, f, g, h);

    assertThat(pairs.exactTest()).isCloseTo(exact, within(1e-10));
    assertThat(pairs.midPTest()).isCloseTo(midP, within(1e-10));
  }

  @Test
  void pairs_withoutDiscordantDeals_tellNothing() {
    PairedProportions pairs = new PairedProportions(7, 0, 0, 13);

    assertThat(pairs.exactTest()).isEqualTo(1);
    assertThat(pairs.midPTest()).isEqualTo(1);
    assertThat(pairs.newcombe(LEVEL).low()).isLessThanOrEqualTo(0);
    assertThat(pairs.newcombe(LEVEL).high()).isGreaterThanOrEqualTo(0);
    assertThatThrownBy(() -> new PairedProportions(0, 0, 0, 0))
        .isInstanceOf(IllegalArgumentException.class);
  }

  /** The fifteen p-values of Benjamini and Hochberg, JRSS B 57 (1995) 289–300: Holm finds three. */
  @Test
  void corrections_publishedExample_agrees() {
    double[] p = {
      0.0001, 0.0004, 0.0019, 0.0095, 0.0201, 0.0278, 0.0298, 0.0344, 0.0459, 0.3240, 0.4262,
      0.5719, 0.6528, 0.7590, 1.0000
    };
    double[] holm = Corrections.holm(p);

    assertThat(holm)
        .containsExactly(
            new double[] {
              0.0015, 0.0056, 0.0247, 0.1140, 0.2211, 0.2780, 0.2780, 0.2780, 0.3213, 1, 1, 1, 1, 1,
              1
            },
            within(1e-12));
    assertThat(java.util.Arrays.stream(holm).filter(one -> one <= 0.05)).hasSize(3);
  }

  @Test
  void corrections_inAnyOrder_belongToTheirComparison() {
    assertThat(Corrections.holm(0.04, 0.01, 0.01)).containsExactly(0.04, 0.03, 0.03);
  }

  /** Worked out by second programs. */
  @Test
  void sampleSizes_knownExamples_agree() {
    assertThat(SampleSize.unpaired(0.50, 0.75, 0.05, 0.9)).isCloseTo(76.7069, within(5e-5));
    assertThat(SampleSize.unpaired(0.225, 0.235, 0.05, 0.9)).isCloseTo(37215.215, within(0.01));
    assertThat(SampleSize.detectable(1, 0.05, 0.9)).isCloseTo(3.2415155501, within(1e-9));
  }
}
