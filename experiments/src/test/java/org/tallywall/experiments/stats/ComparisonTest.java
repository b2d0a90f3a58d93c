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
    "20, 12, 2, 16, 0.0561564248, 0.3292069954, 0.0611124062, 0.3447087483",
    "1, 1, 7, 12, -0.5069202267, -0.0255591242, -0.5172322764, -0.0260030325",
    "59, 6, 16, 80, -0.1186211956, -0.0046251139, -0.1240234325, -0.0054333957",
    "4, 9, 3, 16, -0.0273480821, 0.3806715782, -0.0270904645, 0.3896974871",
    "53, 16, 8, 9, -0.0201040769, 0.2039158353, -0.0196589227, 0.2069107706",
    "1450, 302, 227, 5474, 0.0040127832, 0.0161221682, 0.0040289378, 0.0161542861"
  })
  void pairedIntervals_publishedExamples_agree(
      long e, long f, long g, long h, double nl, double nh, double tl, double th) {
    PairedProportions pairs = new PairedProportions(e, f, g, h);

    assertThat(pairs.newcombe(LEVEL).low()).isCloseTo(nl, within(1e-9));
    assertThat(pairs.newcombe(LEVEL).high()).isCloseTo(nh, within(1e-9));
    assertThat(pairs.tango(LEVEL).low()).isCloseTo(tl, within(1e-9));
    assertThat(pairs.tango(LEVEL).high()).isCloseTo(th, within(1e-9));
  }

  /** The p-values of the third row are published to six places; the others are second programs'. */
  @ParameterizedTest
  @CsvSource({
    "20, 12, 2, 16, 0.0129394531, 0.0073852539, 0.0075263152",
    "1, 1, 7, 12, 0.0703125, 0.0390625, 0.0338948535",
    "59, 6, 16, 80, 0.0524787903, 0.0346896648, 0.0330062577",
    "4, 9, 3, 16, 0.1459960938, 0.0922851562, 0.0832645167",
    "43, 0, 1, 0, 1, 0.5, 0.3173105079",
    "53, 16, 8, 9, 0.1515896320, 0.1077521443, 0.1024704349"
  })
  void pairedTests_publishedExamples_agree(
      long e, long f, long g, long h, double exact, double midP, double asymptotic) {
    PairedProportions pairs = new PairedProportions(e, f, g, h);

    assertThat(pairs.exactTest()).isCloseTo(exact, within(1e-10));
    assertThat(pairs.midPTest()).isCloseTo(midP, within(1e-10));
    assertThat(pairs.asymptoticTest()).isCloseTo(asymptotic, within(1e-10));
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

  /** The fifteen p-values of Benjamini and Hochberg, JRSS B 57 (1995) 289–300: 4 and 3 findings. */
  @Test
  void corrections_publishedExample_agrees() {
    double[] p = {
      0.0001, 0.0004, 0.0019, 0.0095, 0.0201, 0.0278, 0.0298, 0.0344, 0.0459, 0.3240, 0.4262,
      0.5719, 0.6528, 0.7590, 1.0000
    };
    double[] holm = Corrections.holm(p);
    double[] share = Corrections.benjaminiHochberg(p);

    assertThat(holm)
        .containsExactly(
            new double[] {
              0.0015, 0.0056, 0.0247, 0.1140, 0.2211, 0.2780, 0.2780, 0.2780, 0.3213, 1, 1, 1, 1, 1,
              1
            },
            within(1e-12));
    assertThat(share[3]).isCloseTo(0.035625, within(1e-12));
    assertThat(share[5]).isEqualTo(share[6]).isCloseTo(0.063857143, within(1e-9));
    assertThat(share[12]).isCloseTo(0.753230769, within(1e-9));
    assertThat(java.util.Arrays.stream(holm).filter(one -> one <= 0.05)).hasSize(3);
    assertThat(java.util.Arrays.stream(share).filter(one -> one <= 0.05)).hasSize(4);
  }

  @Test
  void corrections_inAnyOrder_belongToTheirComparison() {
    assertThat(Corrections.holm(0.04, 0.01, 0.01)).containsExactly(0.04, 0.03, 0.03);
    assertThat(Corrections.benjaminiHochberg(0.04, 0.01, 0.02))
        .containsExactly(new double[] {0.04, 0.03, 0.03}, within(1e-15));
  }

  /** Connor's formula; the first row is a manual's example (22), the rest second programs'. */
  @Test
  void sampleSizes_knownExamples_agree() {
    assertThat(SampleSize.pairs(0.50, 0.40, 0.05, 0.8)).isCloseTo(22.0113, within(5e-5));
    assertThat(SampleSize.pairs(0.0709629371, 0.01, 0.05, 0.9)).isCloseTo(7452.221, within(0.01));
    assertThat(SampleSize.unpaired(0.50, 0.75, 0.05, 0.9)).isCloseTo(76.7069, within(5e-5));
    assertThat(SampleSize.unpaired(0.225, 0.235, 0.05, 0.9)).isCloseTo(37215.215, within(0.01));
    assertThat(SampleSize.deals(40, 1, 0.05, 0.9)).isCloseTo(16_811.877, within(0.01));
    assertThat(SampleSize.detectable(1, 0.05, 0.9)).isCloseTo(3.2415155501, within(1e-9));
  }
}
