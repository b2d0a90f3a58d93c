package org.tallywall.experiments.gauges.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.tallywall.core.sheet.Move;
import org.tallywall.experiments.review.ChoiceResult;
import org.tallywall.experiments.review.Considered;
import org.tallywall.experiments.review.Ranged;
import org.tallywall.experiments.review.Review;
import org.tallywall.experiments.review.Verdict;

/** What a short review is found to be worth by a long one, on figures made up. */
class ComparedTest {
  private static ChoiceResult discard(int tile, double points, double behind, Verdict verdict) {
    Ranged none = new Ranged(0, 0, 0);
    return new ChoiceResult(
        new Considered(List.of(new Move.Discard(tile)), List.of()),
        100,
        new Ranged(points, points - 1, points + 1),
        none,
        none,
        none,
        new Ranged(-behind, -behind - 1, -behind + 1),
        none,
        verdict,
        ChoiceResult.NO_LINE,
        0,
        false);
  }

  private static Review review(ChoiceResult... choices) {
    return new Review(List.of("a"), 1, 100, 200, 0.95, List.of(choices), Review.Ended.GAMES);
  }

  private static final Review LONG =
      review(
          discard(3, 20, 0, Verdict.BEST),
          discard(4, 17.5, 2.5, Verdict.BEHIND),
          discard(5, 12, 8, Verdict.BEHIND));

  @Test
  void sameBest_losesNothing() {
    Compared one =
        new Compared(
            review(discard(3, 19, 0, Verdict.AHEAD), discard(4, 18, 1, Verdict.TIED)), LONG);
    assertThat(one.differs()).isTrue();
    assertThat(one.sameBest()).isTrue();
    assertThat(one.loss()).isZero();
    assertThat(one.apart()).isZero();
    assertThat(one.wronglyBehind()).isZero();
  }

  @Test
  void otherBest_losesWhatTheLongReviewSays() {
    Compared one =
        new Compared(
            review(discard(4, 22, 0, Verdict.BEST), discard(3, 16, 6, Verdict.BEHIND)), LONG);
    assertThat(one.loss()).isEqualTo(2.5);
    assertThat(one.sameBest()).isFalse();
    assertThat(one.apart())
        .as("21 to 23 beside 16.5 to 18.5, 15 to 17 beside 19 to 21")
        .isEqualTo(2);
    assertThat(one.wronglyBehind()).isEqualTo(1);
  }

  @Test
  void longReviewThatTellsNothingApart_doesNotDiffer() {
    Review tied = review(discard(3, 20, 0, Verdict.AHEAD), discard(4, 19.9, 0.1, Verdict.TIED));
    assertThat(new Compared(LONG, tied).differs()).isFalse();
  }
}
