package org.tallywall.experiments.gauges.calibration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.tallywall.core.random.Purpose;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.random.StreamKey;

class BinsTest {
  @Test
  void bins_constructedDecisions_giveKnownRates() {
    Bins bins = new Bins(0, 0.25, 0.5);
    bins.note(0.1, 0.1, false);
    bins.note(0.25, 0.3, true);
    bins.note(0.49, 0.5, false);
    bins.endGame();
    bins.note(0.3, 0.4, true);
    bins.note(0.3, 0.4, true);
    bins.note(1, 1, true);
    bins.endGame();
    List<Bins.Row> rows = bins.rows();
    assertThat(rows).extracting(Bins.Row::count).containsExactly(1L, 4L, 1L);
    assertThat(rows).extracting(Bins.Row::happened).containsExactly(0.0, 0.75, 1.0);
    assertThat(rows.get(1).said()).isCloseTo(0.4, within(1e-15));
    assertThat(rows.get(1).to()).isEqualTo(0.5);
    assertThat(rows.get(2).to()).isEqualTo(1);
  }

  /** One game that met the bin, nothing happened: Wilson's upper limit is z² / (1 + z²). */
  @Test
  void bins_whatNeverHappened_countsGamesAsTrials() {
    Bins bins = new Bins(0, 0.5);
    for (int decision = 0; decision < 1_000; decision++) {
      bins.note(0.1, 0.1, false);
    }
    bins.endGame();
    bins.endGame();
    double z = 1.959963984540054;
    assertThat(bins.rows()).hasSize(1);
    assertThat(bins.rows().get(0).limits().low()).isZero();
    assertThat(bins.rows().get(0).limits().high()).isCloseTo(z * z / (1 + z * z), within(1e-9));
  }

  /**
   * Hypothesis: the interval of a bin holds the true share in 95 of 100 runs although all ten
   * decisions of a game share one outcome. 1,000 runs of 200 games with chance 0.3, seed fixed; the
   * number of runs that hold it lies within 4.891638 standard errors of 950 (normal quantile of a
   * two-sided 1e-6), so a fresh seed would raise a false alarm about once in a million. Decisions
   * taken as independent would hold it in some 46 of 100 runs.
   */
  @Test
  void intervals_decisionsOfOneGameAlike_holdTheTruthAsOftenAsTheySay() {
    int held = 0;
    for (int run = 0; run < 1_000; run++) {
      RandomStream random =
          new RandomStream(new StreamKey(61_803, run, Purpose.RESAMPLING, 0, 0, 0));
      Bins bins = new Bins(0, 0.5);
      for (int game = 0; game < 200; game++) {
        boolean came = random.below(10) < 3;
        for (int decision = 0; decision < 10; decision++) {
          bins.note(0.3, 0.3, came);
        }
        bins.endGame();
      }
      Bins.Row row = bins.rows().get(0);
      held += row.limits().low() <= 0.3 && 0.3 <= row.limits().high() ? 1 : 0;
    }
    double error = Math.sqrt(1_000 * 0.95 * 0.05);
    assertThat((double) held).isCloseTo(950, within(4.891638 * error));
  }
}
