package org.tallywall.experiments.school;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.distribution.BinomialDistribution;
import org.apache.commons.math3.distribution.TDistribution;
import org.apache.commons.math3.random.Well19937c;
import org.apache.commons.math3.stat.descriptive.SummaryStatistics;
import org.junit.jupiter.api.Test;
import org.tallywall.experiments.stats.Interval;

/** What decisions lose on average, and how sure that is. */
class LostTest {
  private static final int WORLDS = 1_000_000;

  private static Judged decision(int number, long sum, boolean ahead) {
    Met met = ahead ? new Met(WORLDS, sum, sum * sum) : Met.NEVER;
    return new Judged(number, Kind.STOP, number, 0, 99, "stop", "go on", 2, "stop", Met.NEVER, met);
  }

  /** Student's range, by the library's own sums: 40 decisions, 20 measured. */
  @Test
  void manyMeasured_rangeIsStudents() {
    List<Judged> all = new ArrayList<>();
    SummaryStatistics sums = new SummaryStatistics();
    for (int at = 0; at < 40; at++) {
      long sum = at % 2 == 0 ? 500_000L * at - 1_000_000 : 0;
      all.add(decision(at, sum, at % 2 == 0));
      sums.addValue(sum / (double) WORLDS);
    }
    Lost lost = Lost.of(all, 0.95);
    double half =
        new TDistribution(39).inverseCumulativeProbability(0.975)
            * sums.getStandardDeviation()
            / Math.sqrt(40);

    assertThat(lost.mean()).isCloseTo(sums.getMean(), within(1e-12));
    assertThat(lost.range().orElseThrow().low()).isCloseTo(sums.getMean() - half, within(1e-9));
    assertThat(lost.range().orElseThrow().high()).isCloseTo(sums.getMean() + half, within(1e-9));
    assertThat(lost.variance()).isCloseTo(sums.getVariance() / 40, within(1e-12));
  }

  @Test
  void hardlyAnyMeasured_haveNoRange() {
    Lost none = Lost.of(List.of(decision(0, 0, false), decision(1, 0, false)), 0.95);
    List<Judged> three = new ArrayList<>();
    for (int at = 0; at < 12; at++) {
      three.add(decision(at, 2_000_000L + at, at < 3));
    }

    assertThat(none.mean()).isZero();
    assertThat(none.range()).isEmpty();
    assertThat(Lost.of(three, 0.95).mean()).isCloseTo(0.5, within(1e-6));
    assertThat(Lost.of(three, 0.95).range()).isEmpty();
    three.add(decision(12, 2_000_000L, true));
    assertThat(Lost.of(three, 0.95).range()).isPresent();
  }

  /**
   * With few measured the range still holds at its level: 40 decisions, one in ten measured, what
   * is lost there exponential with mean 4 and luck of 5 points around it, 2,000 streams. Of those
   * with four to nine measured at most one in 20 may leave out the truth 0.4; the window of the
   * exact binomial distribution at 0.05 leaves out 5e-7. Student's alone leaves it out far more
   * often.
   */
  @Test
  void fewMeasured_rangeHoldsTheTruth() {
    Well19937c random = new Well19937c(20261201);
    int streams = 0;
    int out = 0;
    for (int stream = 0; stream < 2_000; stream++) {
      List<Judged> all = new ArrayList<>();
      int measured = 0;
      for (int at = 0; at < 40; at++) {
        boolean ahead = random.nextDouble() < 0.1;
        double lost = 0 - 4 * Math.log(1 - random.nextDouble()) + 5 * random.nextGaussian();
        all.add(decision(at, Math.round(lost * WORLDS), ahead));
        measured += ahead ? 1 : 0;
      }
      if (measured >= Lost.LEAST && measured < 10) {
        streams++;
        Interval range = Lost.of(all, 0.95).range().orElseThrow();
        out += range.low() <= 0.4 && 0.4 <= range.high() ? 0 : 1;
      }
    }
    BinomialDistribution allowed = new BinomialDistribution(null, streams, 0.05);
    assertThat(streams).isGreaterThan(1_000);
    assertThat(out).isLessThanOrEqualTo(allowed.inverseCumulativeProbability(1 - 5e-7));
  }
}
