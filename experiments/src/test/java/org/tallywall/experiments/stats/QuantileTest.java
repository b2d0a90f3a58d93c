package org.tallywall.experiments.stats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Medians of counted numbers, with intervals that hold whatever the distribution. */
class QuantileTest {
  /**
   * Ranks of the order statistics at 95 %, from the sums of binomial chances with p one half: n 10
   * gives 2 and 9 (97.9 %), n 20 gives 6 and 15 (95.9 %), n 5 none but the whole range (93.8 %), as
   * the tables of handbooks have them (from memory); the sums were done again by hand.
   */
  @ParameterizedTest
  @CsvSource({"5, 1", "6, 1", "8, 1", "9, 2", "10, 2", "15, 4", "20, 6", "30, 10", "100, 40"})
  void median_ofDifferentNumbers_liesBetweenTheOrderStatisticsOfTheTable(int n, int rank) {
    long[] each = new long[n + 1];
    Arrays.fill(each, 1, n + 1, 1);
    Estimate median = new Quantile(each, 0.95).median();

    assertThat(median.interval().orElseThrow()).isEqualTo(new Interval(rank, n + 1.0 - rank));
    assertThat(median.value()).isEqualTo(n + 1.0 - (n + 1) / 2);
  }

  @Test
  void median_ofOneNumberOnly_isThatNumber() {
    Estimate median = new Quantile(new long[] {0, 0, 7}, 0.99).median();
    assertThat(median.value()).isEqualTo(2);
    assertThat(median.interval()).contains(new Interval(2, 2));
  }

  @Test
  void median_ofTies_countsFromTheTop() {
    // 3 3 3 1 0: half of five, rounded up, are the three largest
    Estimate median = new Quantile(new long[] {1, 1, 0, 3}, 0.5).median();
    assertThat(median.value()).isEqualTo(3);
  }

  @Test
  void median_ofNothing_isRefused() {
    assertThatThrownBy(() -> new Quantile(new long[4], 0.95))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
