package org.tallywall.experiments.paper;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.reports.results.Results;
import org.tallywall.reports.table.Cell;
import org.tallywall.reports.table.Column;
import org.tallywall.reports.table.Table;

/** Everyone against everyone, in words for readers. */
final class RatingTable {
  private RatingTable() {}

  static Table of(Results results) {
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
                    "rating", "natural logarithm", "Strength beside the average of these players.")
                .headed("strength beside the average"),
            row ->
                row.ranged("rating")
                    .map(ranged -> ranged.cell())
                    .orElse(Cell.decimal(row.number("rating")))));
    picks.add(
        Pick.mean("times-average", "times", "Wins for one win of an average player.")
            .headed("wins for one win of an average player"));
    return Pick.table("ratings", "Everyone against everyone", picks, results.rows("ratings"))
        .note(
            "Strength 0 is the average of these players, 0.69 wins twice as often. Where ranges"
                + " overlap, the order is not told. What one habit is worth is said by comparisons"
                + " on the same deals, not by this table.")
        .build();
  }
}
