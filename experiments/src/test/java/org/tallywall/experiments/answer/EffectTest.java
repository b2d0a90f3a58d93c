package org.tallywall.experiments.answer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.apache.commons.math3.distribution.TDistribution;
import org.junit.jupiter.api.Test;
import org.tallywall.experiments.stats.Interval;
import org.tallywall.experiments.study.Measure;
import org.tallywall.experiments.tally.FiringTally;

/** Ranges of effects: as many degrees of freedom as deals that tell, and never without width. */
class EffectTest {
  private static final Certainty SURE = new Certainty(0.95, true);

  private static FiringTally tally(int unreached, long... differences) {
    FiringTally tally = new FiringTally(1);
    for (long difference : differences) {
      tally.addDeal(4, 1, 30, new long[] {difference});
    }
    for (int deal = 0; deal < unreached; deal++) {
      tally.addDeal(4, 0, 0, new long[] {0});
    }
    return tally;
  }

  private static Interval range(FiringTally tally, Measure measure) {
    return Effect.of(tally, 0, measure, SURE).estimate().interval().orElseThrow();
  }

  /** The mean, its standard error and t with 30 degrees of freedom, worked out the plain way. */
  @Test
  void points_ofThirtyOneDealsReached_takeTheirDegreesOfFreedom() {
    long[] values = new long[31];
    double sum = 0;
    double squares = 0;
    for (int at = 0; at < values.length; at++) {
      values[at] = at % 3 == 0 ? 25L * at : -10L * at;
      sum += values[at];
      squares += (double) values[at] * values[at];
    }
    double mean = sum / 31;
    double error = Math.sqrt((squares - 31 * mean * mean) / 30 / 31);
    double t = new TDistribution(null, 30).inverseCumulativeProbability(0.975);

    Effect effect = Effect.of(tally(969, values), 0, Measure.POINTS, SURE);

    Interval range = effect.estimate().interval().orElseThrow();
    assertThat(range.low()).isEqualTo(mean - t * error, within(1e-6));
    assertThat(range.high()).isEqualTo(mean + t * error, within(1e-6));
    double cubes = 0;
    for (long value : values) {
      cubes += Math.pow(value - mean, 3) / 31;
    }
    double ratio = mean / error / Math.sqrt(31);
    double skewness = cubes / Math.pow(error * Math.sqrt(30), 3);
    double straight =
        ratio
            + skewness * ratio * ratio / 3
            + skewness * skewness * Math.pow(ratio, 3) / 27
            + skewness / 6 / 31;
    TDistribution curve = new TDistribution(null, 30);
    double plain = 2 * curve.cumulativeProbability(-Math.abs(mean) / error);
    double turned = 2 * curve.cumulativeProbability(-Math.abs(straight) * Math.sqrt(31));
    assertThat(effect.p().getAsDouble()).isEqualTo(Math.max(plain, turned), within(1e-9));
    assertThat(Math.abs(plain - turned)).isGreaterThan(1e-4);
  }

  /** 1 − 0.025^(1/31) each way: "0 (0 to 0)" would claim to know. */
  @Test
  void rate_thatNeverDiffered_hasTheExactLimitsOfNoEvent() {
    Interval range = range(tally(969, new long[31]), Measure.WALL_GAMES);

    assertThat(range.high()).isEqualTo(1 - Math.pow(0.025, 1 / 31.0), within(1e-12));
    assertThat(range.low()).isEqualTo(-range.high());
  }

  @Test
  void points_thatNeverDiffered_haveNoRange() {
    Effect effect = Effect.of(tally(969, new long[31]), 0, Measure.POINTS, SURE);

    assertThat(effect.estimate().interval()).isEmpty();
    assertThat(effect.method().toString()).contains("no spread");
    assertThat(effect.p()).hasValue(1);
  }

  /** All differ, and all the same way: no spread to make a t of, yet no certainty either. */
  @Test
  void rate_thatAlwaysDiffered_hasWidthToo() {
    long[] ones = new long[35];
    java.util.Arrays.fill(ones, 1);
    Interval range = range(tally(0, ones), Measure.WIN_RATE);

    assertThat(range.high()).isEqualTo(1);
    assertThat(range.low()).isLessThan(0.95);
  }

  /**
   * Rates in 40 deals with one to three games each, of which 3 in 100 come out one more and 1 in
   * 100 one fewer. Hypothesis: 5 in 100 ranges or fewer miss the 0.02. With 2,000 studies more than
   * 137 misses have a chance below 1e-4 (binomial distribution: 100 expected, spread 9.7).
   */
  @Test
  void rareRates_areMissedNoMoreOftenThanTheLevelSays() {
    SplittableRandom random = new SplittableRandom(1130);
    int missed = 0;
    for (int study = 0; study < 2_000; study++) {
      FiringTally tally = new FiringTally(1);
      for (int deal = 0; deal < 40; deal++) {
        int games = 1 + random.nextInt(3);
        long sum = 0;
        for (int game = 0; game < games; game++) {
          int dice = random.nextInt(100);
          sum += dice < 3 ? 1 : dice < 4 ? -1 : 0;
        }
        tally.addDeal(4, games, 30, new long[] {sum});
      }
      Interval range = range(tally, Measure.WIN_RATE);
      missed += range.low() > 0.02 || range.high() < 0.02 ? 1 : 0;
    }
    assertThat(missed).isLessThanOrEqualTo(137);
  }
}
