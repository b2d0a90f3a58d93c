package org.tallywall.experiments.gauges.review;

import java.util.List;
import org.tallywall.core.sheet.Move;
import org.tallywall.experiments.review.ChoiceResult;
import org.tallywall.experiments.review.Review;
import org.tallywall.experiments.review.Verdict;

/**
 * A short review of a position beside a long one of the same choices with luck of its own.
 *
 * @param quick the short review
 * @param thorough the long one
 */
record Compared(Review quick, Review thorough) {
  /** Whether the long review tells its best choice from the next. */
  boolean differs() {
    return thorough.choices().size() > 1 && thorough.best().verdict() == Verdict.BEST;
  }

  /**
   * What the short review's best choice is worth less than the long one's, by the long one.
   *
   * @return points a game, 0 or more but for rounding
   */
  double loss() {
    return 0 - in(thorough, quick.best().choice().moves()).toBest().value();
  }

  boolean sameBest() {
    return loss() == 0;
  }

  /** Choices that the short review says are clearly behind, though the long one finds them best. */
  long wronglyBehind() {
    return quick.choices().stream()
        .filter(one -> one.verdict() == Verdict.BEHIND)
        .filter(one -> in(thorough, one.choice().moves()).verdict() == Verdict.BEST)
        .count();
  }

  /** Choices of which the two ranges of points do not overlap. */
  long apart() {
    return quick.choices().stream().filter(this::apart).count();
  }

  private boolean apart(ChoiceResult one) {
    ChoiceResult other = in(thorough, one.choice().moves());
    return one.points().low() > other.points().high() || one.points().high() < other.points().low();
  }

  private static ChoiceResult in(Review review, List<Move> moves) {
    return review.choices().stream()
        .filter(one -> one.choice().moves().equals(moves))
        .findFirst()
        .orElseThrow();
  }
}
