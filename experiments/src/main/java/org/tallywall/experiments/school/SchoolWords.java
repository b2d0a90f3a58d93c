package org.tallywall.experiments.school;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.tallywall.experiments.review.ReviewWords;
import org.tallywall.experiments.review.Seated;
import org.tallywall.experiments.stats.Interval;
import org.tallywall.experiments.words.Words;
import org.tallywall.reports.table.Rounding;

/** What is said of the players' school, on the console and on paper: every sentence once. */
public final class SchoolWords {
  private static final int PLACES = 2;

  private SchoolWords() {}

  /**
   * Who plays.
   *
   * @param question the question
   * @return as in {@code four programmed players of the kind "watchful"}
   */
  public static String players(SchoolQuestion question) {
    return ReviewWords.players(question.players().stream().map(Seated::name).toList());
  }

  /**
   * What stands above everything.
   *
   * @param question the question
   * @return a title
   */
  public static String title(SchoolQuestion question) {
    return "Where points are lost by " + players(question);
  }

  /**
   * What came out.
   *
   * @param result the result
   * @return a sentence or two
   */
  public static String headline(SchoolResult result) {
    List<String> clear = new ArrayList<>();
    result.kinds().stream()
        .filter(KindResult::clear)
        .sorted(Comparator.comparingDouble(one -> 0 - one.lostPerGame()))
        .forEach(
            one ->
                clear.add(
                    one.kind().words() + ", " + ranged(one.lostPerGame(), one.lostPerGameRange())));
    String all =
        "In all, the choices found here would bring one player %s points a game more"
            .formatted(ranged(result.lostPerGame(), result.lostPerGameRange()));
    if (clear.isEmpty()) {
      return all + "; no kind of decision is clearly a losing one by itself.";
    }
    return all
        + ". "
        + (clear.size() == 1 ? "One kind of decision clearly loses" : "These clearly lose")
        + " (points a game): "
        + String.join("; ", clear)
        + ".";
  }

  /**
   * How far it came.
   *
   * @param result a result that is not complete
   * @return a sentence
   */
  public static String notComplete(SchoolResult result) {
    return "Not complete: %s of %s were looked at."
        .formatted(
            Words.grouped(result.judged().size()),
            Words.count(result.planned(), "decision", "decisions"));
  }

  /**
   * What is counted, how, and what it holds for.
   *
   * @param result the result
   * @return paragraphs
   */
  public static List<String> notes(SchoolResult result) {
    SchoolQuestion question = result.question();
    List<String> notes = new ArrayList<>();
    notes.add(
        "What a decision loses is what another choice brings more than the one made. That choice is"
            + " the one that did best of those a sound player might consider; it is picked in some"
            + " games, and only where it is ahead there by more than a standard error is it"
            + " counted, in fresh games that had no part in picking it, with the same luck for"
            + " both. So luck in picking adds nothing: players whose choices are all worth the same"
            + " come out at 0, give or take the range. What is found is less than what is lost, on"
            + " average: a better choice that nobody thought of, or that was not ahead, counts as"
            + " nothing.");
    notes.add(
        "Each decision is judged by what the player knew then: what it could not see was guessed,"
            + " and "
            + players(question)
            + " played on. It says nothing about people. The points are those of this card, not"
            + " stakes. Each loss is that of one decision if all others stay as they are; the sum"
            + " adds these up, and nobody gains all of it at once.");
    notes.add(
        "Decisions were drawn at random from %s, as many of each kind, no two of a kind from one game; how many of a kind one player makes in a game was counted in the same games. %s What is said to lose clearly does so even with the allowance shared by all kinds. Where another choice was ahead in fewer than four decisions, that is too few for a range. The upper end of the sum allows for one more decision of each kind that nobody looked at and that loses as much as those counted."
            .formatted(Words.count(question.games(), "game", "games"), rangesHold()));
    long out = result.kinds().stream().mapToLong(KindResult::leftOut).sum();
    if (out > 0) {
      notes.add(
          Words.count(out, "decision was", "decisions were")
              + " left out, because games cannot be played on from there.");
    }
    return notes;
  }

  /**
   * The kinds with their numbers, for those who cannot see the picture.
   *
   * @param result the result
   * @return sentences
   */
  public static String described(SchoolResult result) {
    List<String> all = new ArrayList<>();
    result
        .kinds()
        .forEach(
            one ->
                all.add(
                    one.kind().words() + " " + ranged(one.lostPerGame(), one.lostPerGameRange())));
    return "Points lost in a game by one player: %s; all %s."
        .formatted(String.join("; ", all), ranged(result.lostPerGame(), result.lostPerGameRange()));
  }

  /**
   * What the ranges promise.
   *
   * @return a sentence
   */
  public static String rangesHold() {
    return "In 95 of 100 such runs a range holds the true number, for each kind by itself.";
  }

  /**
   * Where the numbers come from, for a picture that stands alone.
   *
   * @param result the result
   * @return sentences
   */
  public static List<String> source(SchoolResult result) {
    return List.of(
        "%s of %s on the card “%s”; points, not stakes; nothing about people."
            .formatted(
                Words.count(result.judged().size(), "decision", "decisions"),
                players(result.question()),
                result.question().setup().hands().card().name()));
  }

  /**
   * In how many guesses choices met.
   *
   * @param question the question
   * @return as in "256, and 512 fresh ones"
   */
  public static String worlds(SchoolQuestion question) {
    return "%s, and %s fresh ones"
        .formatted(
            Words.grouped(question.worlds()),
            Words.grouped((long) Examiner.SECOND * question.worlds()));
  }

  /**
   * What stands above the lines of a dearest decision's sheet.
   *
   * @param one the decision
   * @return lines of comments, each with its end
   */
  public static String above(Judged one) {
    return "// %s. Made: %s. Ahead of it: %s.\n// Seemed to lose %s points a game; lost %s in fresh games.\n"
        .formatted(
            one.kind().words(),
            one.made(),
            one.other(),
            Rounding.nearest(one.first().mean(), 1).toPlainString(),
            ranged(one.second().mean(), one.second().range()));
  }

  /**
   * How the dearest decisions were picked.
   *
   * @return sentences
   */
  public static String dearest() {
    return "Picked by what they seemed to lose when the other choice was found, less the standard"
        + " error. The dearest of many always look dearer than they are, so what they lose was"
        + " counted in fresh games: some turn out to have lost nothing.";
  }

  /**
   * A number with its range.
   *
   * @param value the number
   * @param range its range, or none
   * @return as in {@code 0.5 (0.1 to 1.0)}, limits rounded outward
   */
  static String ranged(double value, Optional<Interval> range) {
    if (range.isEmpty()) {
      return Rounding.nearest(value, PLACES).toPlainString();
    }
    Rounding.Rounded shown =
        Rounding.interval(value, range.get().low(), range.get().high(), PLACES);
    return "%s (%s to %s)"
        .formatted(
            shown.estimate().toPlainString(),
            shown.low().toPlainString(),
            shown.high().toPlainString());
  }
}
