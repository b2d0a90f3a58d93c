package org.tallywall.experiments.review;

import java.util.List;
import org.tallywall.experiments.words.Words;

/** What is said of the decisions of a game, on the console and on paper. */
public final class GameReviewWords {

  private GameReviewWords() {}

  /**
   * What came out.
   *
   * @param review the review
   * @param who whose decisions they are
   * @return a sentence
   */
  public static String headline(GameReview review, String who) {
    int closely = review.closely().size();
    if (closely == 0) {
      return review.stopped()
          ? "It was stopped before any decision was looked at closely."
          : "In no decision of %s (%s looked at) did another choice seem to do better than the one made."
              .formatted(who, Words.grouped(review.looked()));
    }
    long costs = review.closely().stream().filter(GameReview.Close::costs).count();
    String looked =
        "Of %s by %s, %s looked at closely; "
            .formatted(
                Words.count(review.looked(), "decision", "decisions"),
                who,
                closely == 1 ? "one was" : Words.spelled(closely) + " were");
    if (costs == 0) {
      return looked
          + (closely == 1 ? "it is" : "none of them is")
          + " clearly worse than the best choice.";
    }
    return looked
        + (closely == 1
            ? "it is"
            : costs == 1 ? "one of them is" : Words.spelled(costs) + " of them are")
        + " clearly worse than the best choice.";
  }

  /**
   * How the decisions were picked.
   *
   * @param review the review
   * @return a few sentences
   */
  public static String picked(GameReview review) {
    String all =
        "A quick look at every decision only picked those in which the choice made seemed to cost"
            + " most. The dearest of many looks dearer than it is, so its figures are not shown:"
            + " those here come from other games, in which the choice made meets those that did best"
            + " at the quick look. Each decision was judged by what this player knew"
            + " then, with the other racks closed.";
    if (review.closely().isEmpty()) {
      all = "Each decision was judged by what this player knew then, with the other racks closed.";
    }
    return review.leftOut() == 0
        ? all
        : all
            + " "
            + Words.count(review.leftOut(), "decision was", "decisions were")
            + " left out, because the record does not say enough or games cannot be played on from"
            + " there.";
  }

  /**
   * The verdict on a decision, to stand beside it among a player's reasons.
   *
   * @param close the decision
   * @return words without a full stop
   */
  public static String beside(GameReview.Close close) {
    String made = close.made().choice().text();
    String verdict = verdict(close);
    return close.made() == close.review().best()
        ? "by the review, %s: %s".formatted(made, verdict)
        : "by the review, %s %s; %s did best".formatted(made, verdict, best(close));
  }

  /**
   * How the choice made compares, with what it can cost at most where that is not clear.
   *
   * @param close the decision
   * @return as in {@code cannot be told apart from the best; may cost up to 2.4 points a game}
   */
  public static String verdict(GameReview.Close close) {
    String verdict = ReviewWords.verdict(close.made());
    boolean open = !close.costs() && close.made().verdict() != Verdict.BEST;
    return open
        ? verdict
            + "; may cost up to "
            + ReviewWords.up(close.made().cost().high())
            + " points a game"
        : verdict;
  }

  /**
   * The choice that did best.
   *
   * @param close the decision
   * @return its words
   */
  public static String best(GameReview.Close close) {
    return close.review().best().choice().text();
  }

  /**
   * What the figures hold for.
   *
   * @param closely the decisions looked at closely, at least one
   * @return sentences
   */
  public static String holdsFor(List<GameReview.Close> closely) {
    Review first = closely.get(0).review();
    long games = closely.stream().mapToLong(one -> one.review().games()).sum();
    return "Counted in %s. This holds if %s play on; it says nothing about people. %s %s"
        .formatted(
            Words.count(games, "game", "games"),
            ReviewWords.players(first.players()),
            "The points are those of this card, not stakes.",
            "For each of these decisions by itself: "
                + ReviewWords.rangesHold(first.confidence()).replaceFirst("^In", "in"));
  }
}
