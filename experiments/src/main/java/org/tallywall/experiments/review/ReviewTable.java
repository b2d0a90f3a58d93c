package org.tallywall.experiments.review;

import java.util.ArrayList;
import java.util.List;
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
   * @return a row for every choice, the one that did best first
   */
  public static Table worth(Review review) {
    TableBuilder table =
        Table.builder("choices", ReviewWords.title(review))
            .columns(
                CHOICE,
                Column.text("points", "Points a game of the seat that chooses, with the range.")
                    .headed("points a game"),
                Column.text(
                        "to-best",
                        "Points a game more than after the choice that did best, in the same"
                            + " guesses, with the range.")
                    .headed("against the best"),
                Column.text("verdict", "How it compares with the best."));
    for (ChoiceResult one : review.choices()) {
      table.row(
          Cell.text(one.choice().text()),
          Cell.text(ReviewWords.ranged(one.points())),
          one == review.best() ? Cell.empty() : Cell.text(ReviewWords.ranged(one.toBest())),
          Cell.text(ReviewWords.verdict(one)));
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
        Table.builder("endings", "How these games end for the seat that chooses, in 100 games")
            .columns(
                CHOICE,
                Column.text("wins", "Games in 100 that the seat wins.").headed("wins"),
                Column.text("throws", "Games in 100 in which the seat throws the winning tile.")
                    .headed("throws the winning tile"),
                Column.text("wall-games", "Games in 100 that nobody wins.").headed("wall game"),
                Column.text("line", "The line that the seat won with most often.")
                    .headed("wins most often with"),
                Column.integer("games", "games", "Games played after this choice.")
                    .headed("games played"));
    for (ChoiceResult one : review.choices()) {
      table.row(
          Cell.text(one.choice().text()),
          Cell.text(ReviewWords.share(one.wins())),
          Cell.text(ReviewWords.share(one.throwsIt())),
          Cell.text(ReviewWords.share(one.wallGames())),
          one.line() == ChoiceResult.NO_LINE
              ? Cell.empty()
              : Cell.text(LineNames.of(card.lines().get(one.line()))),
          Cell.whole(one.games()));
    }
    return table.build();
  }

  /**
   * The verdicts at several tables, side by side.
   *
   * @param among the reviews
   * @return a row for every choice, in the order of the first table
   */
  public static Table sideBySide(AmongTables among) {
    List<Column> columns = new ArrayList<>(List.of(CHOICE));
    for (int at = 0; at < among.reviews().size(); at++) {
      columns.add(
          Column.text("table-" + (at + 1), "How the choice compares with the best there.")
              .headed("among " + among.names().get(at)));
    }
    TableBuilder table =
        Table.builder("among", "The verdict, by who plays on (points a game)").columns(columns);
    for (ChoiceResult one : among.reviews().get(0).choices()) {
      List<Cell> row = new ArrayList<>(List.of(Cell.text(one.choice().text())));
      for (Review review : among.reviews()) {
        row.add(Cell.text(ReviewWords.shortly(AmongTables.of(review, one.choice()))));
      }
      table.row(row);
    }
    return table.build();
  }
}
