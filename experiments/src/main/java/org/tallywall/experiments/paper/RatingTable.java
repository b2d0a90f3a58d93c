package org.tallywall.experiments.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.tallywall.reports.results.Results;
import org.tallywall.reports.results.Sheet;
import org.tallywall.reports.table.Cell;
import org.tallywall.reports.table.Column;
import org.tallywall.reports.table.Table;
import org.tallywall.reports.table.TableBuilder;

/** Everyone against everyone, in words for readers. */
final class RatingTable {
  private static final String BELOW = "rating-below";

  private RatingTable() {}

  static Table of(Results results) {
    List<Sheet.Row> rows = results.rows("ratings");
    boolean never = rows.stream().anyMatch(row -> row.number(BELOW).isPresent());
    List<Pick> picks = new ArrayList<>();
    picks.add(Pick.words("arm", "What the study calls the player.").headed("way of playing"));
    picks.add(Pick.words("player", "The player and its settings."));
    picks.add(Pick.count("games", "games", "Games played."));
    picks.add(
        Pick.inHundred(
                "win-rate",
                "in 100 games",
                "Games won in 100, against whoever sat there.",
                row -> row.number("win-rate"))
            .headed("games won in 100"));
    picks.add(
        Pick.inHundred(
                "points",
                "points per 100 games",
                "Points gained or lost, against whoever sat there.",
                row -> row.number("points"))
            .headed("points per 100 games"));
    picks.add(
        new Pick(
            Column.decimalInterval(
                    "rating", "natural logarithm", "Strength beside the average of who won.")
                .headed("strength beside the average of who won"),
            row ->
                row.ranged("rating")
                    .map(ranged -> ranged.cell())
                    .orElse(Cell.decimal(row.number("rating")))));
    if (never) {
      picks.add(
          new Pick(
                  Column.decimal(BELOW, "natural logarithm", "Strength of one that never won.")
                      .shownTo(1),
                  row -> upwards(row.number(BELOW)))
              .headed("never won: strength below"));
    }
    picks.add(
        Pick.mean("times-average", "times", "Wins for one win of a player of strength 0.")
            .headed("wins for one win of a player of strength 0"));
    TableBuilder table = Pick.table("ratings", "Everyone against everyone", picks, rows);
    table.note(
        "Strength 0 is the average of the players that won; of two players that differ by 0.69 one"
            + " wins twice for the other's once. The strengths are those that make these wins"
            + " likeliest, with Firth's penalty (Biometrika 80, 1993), which comes to about half a"
            + " win for each player in all.");
    if (never) {
      table.note(
          "Who never won has no strength, only a limit: in no deal of so many was a game won, and"
              + " the exact range of that share (Clopper and Pearson) ends where the strength would"
              + " be this.");
    }
    String neighbors = new RatingNeighbors(results).sentences();
    if (!neighbors.isEmpty()) {
      table.note(neighbors);
    }
    return table
        .note(
            "What one habit is worth is said by comparisons on the same deals, not by this table.")
        .build();
  }

  /** Rounded up to a tenth, so that "below" stays true. */
  private static Cell upwards(OptionalDouble limit) {
    return limit.isPresent()
        ? Cell.decimal(Math.ceil(10 * limit.getAsDouble()) / 10)
        : Cell.empty();
  }
}
