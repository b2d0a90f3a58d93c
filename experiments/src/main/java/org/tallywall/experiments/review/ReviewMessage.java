package org.tallywall.experiments.review;

import java.util.List;
import org.tallywall.experiments.words.Words;
import org.tallywall.reports.words.Listed;

/** A review in three sentences, to paste into a message. */
public final class ReviewMessage {
  private ReviewMessage() {}

  /**
   * The message.
   *
   * @param review the review
   * @param card the name of the card
   * @return three sentences
   */
  public static List<String> of(Review review, String card) {
    return List.of(verdict(review), ends(review.best()), holdsFor(review, card));
  }

  private static String verdict(Review review) {
    ChoiceResult best = review.best();
    String name = best.choice().text();
    if (review.choices().size() == 1) {
      return "There is one choice to look at, %s: it scores %s points a game."
          .formatted(name, ReviewWords.ranged(best.points()));
    } else if (best.verdict() == Verdict.BEST) {
      ChoiceResult next = review.choices().get(1);
      return "Best is %s; the next, %s, %s."
          .formatted(name, next.choice().text(), ReviewWords.verdict(next));
    }
    return "No single best choice: %s did best in these games, but %s cannot be told apart from it."
        .formatted(name, Listed.and(ReviewWords.names(review, Verdict.TIED)));
  }

  private static String ends(ChoiceResult best) {
    return ("After %s, this seat wins %s of 100 games and throws the winning tile in %s.")
        .formatted(
            best.choice().text(),
            ReviewWords.share(best.wins()),
            ReviewWords.share(best.throwsIt()));
  }

  private static String holdsFor(Review review, String card) {
    return "Counted in %s of %s on the card \u201c%s\u201d: it says nothing about people or stakes."
        .formatted(
            Words.count(review.games(), "game", "games"),
            ReviewWords.players(review.players()),
            card);
  }
}
