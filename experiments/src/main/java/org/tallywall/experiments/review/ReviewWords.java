package org.tallywall.experiments.review;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.tallywall.experiments.words.Words;
import org.tallywall.reports.table.Rounding;

/** What is said of a review, on the console and on paper. */
public final class ReviewWords {
  private static final int PLACES = 1;
  private static final int HUNDRED = 100;
  private static final List<String> NUMBERS = List.of("no", "one", "two", "three", "four");

  /** The words. */
  public ReviewWords() {}

  /**
   * What stands above the choices.
   *
   * @param review the review
   * @return a title
   */
  public String title(Review review) {
    return "What each choice is worth, in "
        + Words.count(review.games(), "game", "games")
        + " played on";
  }

  /**
   * The verdict on one choice.
   *
   * @param one the choice
   * @return as in {@code costs 3.1 (2.2 to 4.0) points a game}
   */
  public String verdict(ChoiceResult one) {
    return switch (one.verdict()) {
      case BEST -> "best";
      case AHEAD -> "did best, but not clearly";
      case TIED -> "cannot be told apart from the best";
      case BEHIND -> "costs " + ranged(one.cost()) + " points a game";
    };
  }

  /**
   * The verdict on the position.
   *
   * @param review the review
   * @return a sentence or two
   */
  public String headline(Review review) {
    ChoiceResult best = review.best();
    String name = best.choice().text();
    if (review.choices().size() == 1) {
      return "There is only one choice to look at: " + name + ".";
    } else if (best.verdict() == Verdict.BEST) {
      return "Best: " + name + "." + second(review);
    }
    List<String> ties = names(review, Verdict.TIED);
    return "No single best choice: %s did best, but %s cannot be told apart from it. %s"
        .formatted(name, listed(ties), atMost(best));
  }

  private String second(Review review) {
    ChoiceResult next = review.choices().get(1);
    return " The next, %s, %s.".formatted(next.choice().text(), verdict(next));
  }

  private String atMost(ChoiceResult best) {
    return "If another is better than %s after all, then by at most %s points a game."
        .formatted(best.choice().text(), up(best.cost().high()));
  }

  private static List<String> names(Review review, Verdict verdict) {
    return review.choices().stream()
        .filter(one -> one.verdict() == verdict)
        .map(one -> one.choice().text())
        .toList();
  }

  /**
   * What the numbers hold for.
   *
   * @param review the review
   * @return sentences
   */
  public List<String> holdsFor(Review review) {
    List<String> sentences = new ArrayList<>();
    sentences.add(
        "This holds for "
            + players(review.players())
            + " who play on, not for people; for points on this card, not for stakes; and for "
            + Words.count(review.worlds(), "guess", "different guesses")
            + " at the tiles that this seat cannot see.");
    sentences.add(
        "Each range holds in "
            + Math.round(review.confidence() * HUNDRED)
            + " of 100 reviews, however early or late you stop one; the differences and verdicts all"
            + " together.");
    return sentences;
  }

  /**
   * Why no more was played.
   *
   * @param review the review
   * @return a sentence, or nothing where there is nothing to say
   */
  public String ended(Review review) {
    return switch (review.ended()) {
      case NOT_YET, ONE_CHOICE -> "";
      case DECIDED ->
          "It ended because every choice is either clearly behind or within a point a game of the"
              + " best.";
      case GAMES -> "It ended because all the games that it was given are played.";
      case TIME -> "It ended because its time was over; with more time the ranges get narrower.";
      case STOPPED -> "It was stopped; this is what was known by then.";
    };
  }

  /**
   * Where it stands, in one line.
   *
   * @param review the review
   * @return as in {@code 2,304 games: discard E did best (2 of 5 choices are clearly behind)}
   */
  public String standing(Review review) {
    long behind = names(review, Verdict.BEHIND).size();
    ChoiceResult best = review.best();
    return Words.count(review.games(), "game", "games")
        + ": "
        + best.choice().text()
        + (best.verdict() == Verdict.BEST ? " is best" : " is ahead, not clearly")
        + " ("
        + behind
        + " of "
        + (review.choices().size() - 1)
        + " others clearly behind)";
  }

  /**
   * The players at a table.
   *
   * @param players four names, East's first
   * @return as in {@code four players like watchful}, or who sits where
   */
  public static String players(List<String> players) {
    Map<String, Integer> counts = new LinkedHashMap<>();
    players.forEach(name -> counts.merge(name, 1, Integer::sum));
    if (counts.size() == 1) {
      return "four programmed players of the kind \"" + players.get(0) + "\"";
    }
    List<String> kinds = new ArrayList<>();
    counts.forEach((name, count) -> kinds.add(NUMBERS.get(count) + " \"" + name + "\""));
    return "programmed players (" + listed(kinds) + ")";
  }

  static String listed(List<String> words) {
    if (words.size() < 2) {
      return String.join("", words);
    }
    int last = words.size() - 1;
    return String.join(", ", words.subList(0, last))
        + (last > 1 ? ", and " : " and ")
        + words.get(last);
  }

  /**
   * A number with its range.
   *
   * @param number the number
   * @return as in {@code 3.1 (2.2 to 4.0)}, rounded outward
   */
  public static String ranged(Ranged number) {
    Rounding.Rounded shown =
        Rounding.interval(number.value(), number.low(), number.high(), PLACES);
    return "%s (%s to %s)"
        .formatted(plain(shown.estimate()), plain(shown.low()), plain(shown.high()));
  }

  private static String plain(BigDecimal number) {
    return number.toPlainString();
  }

  private static String up(double number) {
    return plain(new BigDecimal(number).setScale(PLACES, java.math.RoundingMode.CEILING));
  }
}
