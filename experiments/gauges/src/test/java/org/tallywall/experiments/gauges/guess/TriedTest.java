package org.tallywall.experiments.gauges.guess;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class TriedTest {
  /**
   * Worked out by hand. Before: of the six pairs of one that was so and one that was not, four are
   * in the right order, one is even and one is wrong, which is 4.5 of 6; after, all six are right.
   */
  @Test
  void sayings_areScoredAsByHand() {
    Tried tried = new Tried();
    tried.note(0.5, 0.9, true);
    tried.note(0.2, 0.8, true);
    tried.note(0.5, 0.2, false);
    tried.note(0.1, 0.1, false);
    tried.note(0.1, 0.5, false);

    double before =
        -(Math.log(0.5) + Math.log(0.2) + Math.log(0.5) + Math.log(0.9) + Math.log(0.9)) / 5;
    double after =
        -(Math.log(0.9) + Math.log(0.8) + Math.log(0.8) + Math.log(0.9) + Math.log(0.5)) / 5;
    assertThat(tried)
        .hasToString(
            "5 seen, 2 so, said 1.4 and 2.5, log %.4f and %.4f, ranked right 0.750 and 1.000"
                .formatted(before, after));
  }
}
