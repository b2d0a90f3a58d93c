package org.tallywall.experiments.cli;

import java.util.List;
import org.tallywall.experiments.rack.LineDistance;
import org.tallywall.experiments.rack.NearestLines;
import org.tallywall.experiments.rack.RackQuestion;
import org.tallywall.experiments.story.NeedWords;
import org.tallywall.reports.table.Cell;
import org.tallywall.reports.table.Column;
import org.tallywall.reports.table.Table;
import org.tallywall.reports.table.TableBuilder;

/** Racks and their distances to every line of a card, as a table. */
final class RackTable {
  private RackTable() {}

  static Table of(List<RackQuestion> questions, NearestLines nearest) {
    TableBuilder table =
        Table.builder("racks", "How far racks are from the lines of a card")
            .columns(
                Column.text("rack", "The rack as given."),
                Column.text("line", "The line's id."),
                Column.integer(
                    "away",
                    "tiles",
                    "Tiles away from the line; empty where the exposures rule it out."),
                Column.integer("ways", "hands", "Hands of the line that are that near."),
                Column.text("example", "The first of these hands."),
                Column.text(
                    "wants",
                    "The tiles that bring the rack closer to the example; with jokers on the rack there"
                        + " can be more of them than it is away."),
                Column.integer(
                    "by-joker", "tiles", "How many of these tiles its jokers stand for."));
    for (RackQuestion question : questions) {
      nearest.all(question).forEach(distance -> table.row(row(question, distance)));
    }
    return table.build();
  }

  private static List<Cell> row(RackQuestion question, LineDistance distance) {
    Cell rack = Cell.text(question.text());
    Cell line = Cell.text(distance.line().id());
    return distance
        .nearest()
        .map(
            found ->
                List.of(
                    rack,
                    line,
                    Cell.whole(found.away()),
                    Cell.whole(found.ways()),
                    Cell.text(found.example().toString()),
                    Cell.text(NeedWords.rack(found.missing().tiles()).toString()),
                    Cell.whole(found.missing().filled())))
        .orElse(
            List.of(
                rack, line, Cell.empty(), Cell.empty(), Cell.empty(), Cell.empty(), Cell.empty()));
  }
}
