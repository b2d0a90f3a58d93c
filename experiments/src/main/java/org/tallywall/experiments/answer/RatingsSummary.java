package org.tallywall.experiments.answer;

import org.tallywall.experiments.study.Design;
import org.tallywall.reports.table.Column;
import org.tallywall.reports.table.Table;
import org.tallywall.reports.table.TableBuilder;

/** What a person reads when everyone played everyone. */
final class RatingsSummary {
  private static final int PLAYER = 0;
  private static final int GAMES = 3;
  private static final int WIN_RATE = 5;
  private static final int POINTS = 6;
  private static final int RATING = 7;
  private static final int BELOW = 8;

  private RatingsSummary() {}

  static Table of(StudyAnswer answer, Design.RoundRobin design) {
    Table full = Ratings.of(answer.study(), design, answer.tally());
    TableBuilder table =
        Table.builder("ladder", "Everyone against everyone, strongest first")
            .columns(
                Column.text("player", "The player."),
                Column.integer("games", "games", "Games played."),
                Column.rate("games-won", "share of games", "Games won."),
                Column.decimal("points", "points per game", "Points a game.")
                    .headed("points a game"),
                Column.decimalInterval("rating", "logarithm", "Strength beside the average.")
                    .headed("strength beside the average"),
                Column.decimal("below", "logarithm", "Strength is below, of one that never won.")
                    .headed("never won: below"));
    for (var row : full.rows()) {
      table.row(
          row.get(PLAYER),
          row.get(GAMES),
          row.get(WIN_RATE),
          row.get(POINTS),
          row.get(RATING),
          row.get(BELOW));
    }
    return table
        .note(
            "Strength 0 is the average of the players that won; of two players that differ by 0.69"
                + " one wins twice for the other's once. A rating sums up who won; whether two"
                + " players can be told apart stands in rating-differences.csv, not in whether"
                + " ranges overlap. Claims about one habit rest on comparisons on the same deals,"
                + " not on ratings.")
        .note(Summary.CAUTION)
        .build();
  }
}
