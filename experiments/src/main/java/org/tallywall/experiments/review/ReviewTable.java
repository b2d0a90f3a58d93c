package org.tallywall.experiments.review;

import org.tallywall.core.card.Card;
import org.tallywall.experiments.story.LineNames;
import org.tallywall.reports.table.Cell;
import org.tallywall.reports.table.Column;
import org.tallywall.reports.table.Table;
import org.tallywall.reports.table.TableBuilder;

/** The choices of a review as tables, for a console and for paper. */
public final class ReviewTable {
  private static final Column CHOICE = Column.text("choice", "The choice, as a sheet writes it.");

  private ReviewTable() {}

  /**
   * What each choice is worth.
   *
   * @param review the review
   * @param words its words
   * @return a row for every choice, the one that did best first
   */
  public static Table worth(Review review, ReviewWords words) {
    TableBuilder table =
        Table.builder("choices", words.title(review))
            .columns(
                CHOICE,
                Column.decimalInterval(
                        "points", "points per game", "Points per game of the seat that chooses.")
                    .shownTo(1)
                    .headed("points a game"),
                Column.decimalInterval(
                        "to-best",
                        "points per game",
                        "Points per game more than after the choice that did best, in the same"
                            + " guesses; empty for that one.")
                    .shownTo(1)
                    .headed("against the best"),
                Column.text("verdict", "How it compares with the best."));
    for (ChoiceResult one : review.choices()) {
      table.row(
          Cell.text(one.choice().text()),
          cell(one.points()),
          one == review.best() ? Cell.empty() : cell(one.toBest()),
          Cell.text(words.verdict(one)));
    }
    return table.build();
  }

  /**
   * How the games ended after each choice.
   *
   * @param review the review
   * @param card the card
   * @return a row for every choice, in the same order
   */
  public static Table endings(Review review, Card card) {
    TableBuilder table =
        Table.builder("endings", "How these games end for the seat that chooses")
            .columns(
                CHOICE,
                share("wins", "Share of games that the seat wins.").headed("wins"),
                share("throws", "Share of games in which the seat throws the winning tile.")
                    .headed("throws the winning tile"),
                share("wall-games", "Share of games that nobody wins.").headed("wall game"),
                Column.text("line", "The line that the seat won with most often.")
                    .headed("won most often with"),
                Column.integer("games", "games", "Games played after this choice."));
    for (ChoiceResult one : review.choices()) {
      table.row(
          Cell.text(one.choice().text()),
          cell(one.wins()),
          cell(one.throwsIt()),
          cell(one.wallGames()),
          one.line() == ChoiceResult.NO_LINE
              ? Cell.empty()
              : Cell.text(LineNames.of(card.lines().get(one.line()))),
          Cell.whole(one.games()));
    }
    return table.build();
  }

  private static Column share(String name, String meaning) {
    return Column.rateInterval(name, "share of games", meaning);
  }

  private static Cell cell(Ranged ranged) {
    return Cell.interval(ranged.value(), ranged.low(), ranged.high());
  }
}
