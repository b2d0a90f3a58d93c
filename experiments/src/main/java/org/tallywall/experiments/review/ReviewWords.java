package org.tallywall.experiments.review;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.tallywall.experiments.words.Words;
import org.tallywall.reports.table.Rounding;
import org.tallywall.reports.words.Listed;

/** What is said of a review, on the console and on paper: every sentence once. */
public final class ReviewWords {
  private static final int PLACES = 1;
  private static final int HUNDRED = 100;

  /** Choices named in a sentence. */
  private static final int NAMED = 3;

  private ReviewWords() {}

  /**
   * What stands above the choices.
   *
   * @param review the review
   * @return a title
   */
  public static String title(Review review) {
    return "What each choice is worth, by "
        + Words.count(review.games(), "game", "games")
        + " played on";
  }

  /**
   * The verdict on one choice.
   *
   * @param one the choice
   * @return as in {@code costs 3.1 (2.2 to 4.0) points a game}
   */
  public static String verdict(ChoiceResult one) {
    return switch (one.verdict()) {
      case BEST -> "best";
      case AHEAD -> "did best, but not clearly";
      case TIED -> "cannot be told apart from the best";
      case BEHIND -> "costs " + ranged(one.cost()) + " points a game";
    };
  }

  /**
   * The same for a narrow column whose heading says what is counted.
   *
   * @param one the choice
   * @return as in {@code costs 3.1 (2.2 to 4.0)}
   */
  static String shortly(ChoiceResult one) {
    return switch (one.verdict()) {
      case BEST -> "best";
      case AHEAD, TIED -> "not told apart";
      case BEHIND -> "costs " + ranged(one.cost());
    };
  }

  /**
   * The verdict on the position.
   *
   * @param review the review
   * @return a sentence or two
   */
  public static String headline(Review review) {
    ChoiceResult best = review.best();
    String name = best.choice().text();
    if (review.choices().size() == 1) {
      return "There is one choice to look at: " + name + ".";
    } else if (best.verdict() == Verdict.BEST) {
      ChoiceResult next = review.choices().get(1);
      return "Best: %s. The next, %s, %s.".formatted(name, next.choice().text(), verdict(next));
    }
    return ("No single best choice: %s did best in these games, but %s cannot be told apart from it."
            + " Taking %s may cost up to %s points a game.")
        .formatted(name, ties(review), name, up(best.cost().high()));
  }

  /** Few are named; of many, the number says more. */
  private static String ties(Review review) {
    List<String> ties = names(review, Verdict.TIED);
    if (ties.size() <= NAMED) {
      return Listed.and(ties);
    }
    return (ties.size() == review.choices().size() - 1 ? "the other " : "")
        + ties.size()
        + (ties.size() == review.choices().size() - 1 ? "" : " others");
  }

  static List<String> names(Review review, Verdict verdict) {
    return review.choices().stream()
        .filter(one -> one.verdict() == verdict)
        .map(one -> one.choice().text())
        .toList();
  }

  /**
   * What a sheet leaves out.
   *
   * @param discards how many discards, 1 or more
   * @return a sentence
   */
  public static String leftOut(int discards) {
    return "The sheet leaves out "
        + Words.count(discards, "discard", "discards")
        + "; they are taken for unseen.";
  }

  /**
   * What the numbers hold for.
   *
   * @param review the review
   * @return a few sentences
   */
  public static String holdsFor(Review review) {
    boolean dropped = review.choices().stream().anyMatch(ChoiceResult::droppedOut);
    return "This holds if "
        + players(review.players())
        + " play on; it says nothing about people. The points are those of this card, not stakes."
        + " What this seat cannot see was guessed in "
        + Words.count(review.worlds(), "way", "ways")
        + (dropped
            ? "; a choice that was dropped for being clearly behind met the first of them alone, and"
                + " differences are counted in those that both choices met, so they are not those of"
                + " the points a game."
            : ", the same for every choice.");
  }

  /**
   * What the ranges promise.
   *
   * @param confidence their level
   * @return a sentence
   */
  public static String rangesHold(double confidence) {
    return ("In %s of 100 reviews a range in parentheses holds the true number, whenever you stop; for"
            + " the verdicts and the differences from the best, all of them together do.")
        .formatted(Math.round(confidence * HUNDRED));
  }

  /**
   * Why no more was played.
   *
   * @param review the review
   * @return a sentence, or nothing where there is nothing to say
   */
  public static String ended(Review review) {
    return switch (review.ended()) {
      case NOT_YET, ONE_CHOICE -> "";
      case DECIDED ->
          "It ended because every choice is clearly behind the best or within a point a game of it.";
      case GAMES -> "It ended with the last of the games that it was given.";
      case TIME -> "It ended because its time was up; more time makes the ranges narrower.";
      case STOPPED -> "It was stopped; this is what was known by then.";
    };
  }

  /**
   * Where it stands, in one line.
   *
   * @param review the review
   * @return as in {@code 2,304 games: discard E did best, 2 of 4 others are clearly behind}
   */
  public static String standing(Review review) {
    String games = Words.count(review.games(), "game", "games");
    int others = review.choices().size() - 1;
    if (others == 0) {
      return games + " played";
    }
    int behind = names(review, Verdict.BEHIND).size();
    String name = review.best().choice().text();
    return games
        + ": "
        + (behind == others
            ? name + " is best"
            : name + " did best so far, " + behind + " of " + others + " others clearly behind");
  }

  /**
   * Whether the verdict depends on who plays.
   *
   * @param among the reviews at several tables
   * @return a sentence
   */
  public static String depends(AmongTables among) {
    List<String> good = among.goodEverywhere();
    List<String> firsts =
        among.reviews().stream().map(review -> review.best().choice().text()).distinct().toList();
    if (good.isEmpty()) {
      return "The verdict depends on who plays on: every choice is clearly behind at one of these"
          + " tables or another.";
    } else if (firsts.size() == 1
        && among.reviews().stream().allMatch(one -> one.best().verdict() == Verdict.BEST)) {
      return "The verdict does not depend on which of these players play on: "
          + firsts.get(0)
          + ".";
    }
    return "At none of these tables "
        + (good.size() == 1 ? "is " : "are ")
        + Listed.and(good)
        + " clearly behind; by that, the verdict does not depend on who plays on.";
  }

  /**
   * The players at a table.
   *
   * @param players four names, East's first
   * @return as in {@code four players of the kind "watchful"}, or how many of which kind
   */
  public static String players(List<String> players) {
    Map<String, Integer> counts = new LinkedHashMap<>();
    players.forEach(name -> counts.merge(name, 1, Integer::sum));
    if (counts.size() == 1) {
      return "four programmed players of the kind \"" + players.get(0) + "\"";
    }
    List<String> kinds = new ArrayList<>();
    counts.forEach((name, count) -> kinds.add(Words.spelled(count) + " \"" + name + "\""));
    return "programmed players (" + Listed.and(kinds) + ")";
  }

  /**
   * A number with its range.
   *
   * @param number the number
   * @return as in {@code 3.1 (2.2 to 4.0)}, limits rounded outward
   */
  public static String ranged(Ranged number) {
    return ranged(number.value(), number.low(), number.high());
  }

  /**
   * A share with its range.
   *
   * @param share 0 to 1
   * @return in 100 games, as in {@code 34.1 (31.0 to 37.3)}
   */
  public static String share(Ranged share) {
    return ranged(HUNDRED * share.value(), HUNDRED * share.low(), HUNDRED * share.high());
  }

  /** With a tenth, and more where a limit would be 0 that is not. */
  private static String ranged(double value, double low, double high) {
    int places = PLACES;
    while (places < 2 * PLACES + 1 && low > 0 && floor(low, places).signum() == 0) {
      places++;
    }
    return "%s (%s to %s)"
        .formatted(
            Rounding.nearest(value, places).toPlainString(),
            floor(low, places).toPlainString(),
            ceiling(high, places).toPlainString());
  }

  private static BigDecimal floor(double number, int places) {
    return new BigDecimal(number).setScale(places, RoundingMode.FLOOR);
  }

  private static BigDecimal ceiling(double number, int places) {
    return new BigDecimal(number).setScale(places, RoundingMode.CEILING);
  }

  /** Rounded up, for what is said to be the most. */
  static String up(double number) {
    return ceiling(number, PLACES).toPlainString();
  }
}
