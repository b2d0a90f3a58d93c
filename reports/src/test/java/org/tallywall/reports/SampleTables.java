package org.tallywall.reports;

import org.tallywall.reports.table.Cell;
import org.tallywall.reports.table.Column;
import org.tallywall.reports.table.Table;
import org.tallywall.reports.table.TableBuilder;

/** Invented tables for the golden files; the figures mean nothing. */
public final class SampleTables {
  private SampleTables() {}

  /** Every type of column, a row without values, and a row of extremes. */
  public static Table ways() {
    return Table.builder("ways", "How two ways of playing did")
        .columns(
            Column.text("way", "The way of playing.").headed("way of playing"),
            Column.integer("games", "games", "Games played to their end."),
            Column.rateInterval("win-rate", "share of games", "Games won, of all games.")
                .headed("wins"),
            Column.text("method", "How the interval was made."),
            Column.decimalInterval(
                    "points", "points per game", "Mean points won or lost in a game.")
                .headed("points per game"),
            Column.rate("jokerless", "share of wins", "Wins without a joker, of all wins."),
            Column.decimal("wall-left", "tiles", "Mean number of wall tiles left at a win.")
                .shownTo(1))
        .row(
            Cell.text("nearest"),
            Cell.whole(10_000),
            Cell.interval(0.2237, 0.2156393512, 0.2319728463),
            Cell.text("Wilson"),
            Cell.interval(-0.004, -0.41, 0.402),
            Cell.ratio(1, 3),
            Cell.decimal(34.25))
        .row(
            Cell.text("hold back, then play on"),
            Cell.whole(0),
            Cell.empty(),
            Cell.empty(),
            Cell.empty(),
            Cell.ratio(0, 0),
            Cell.empty())
        .row(
            Cell.text("random-legal"),
            Cell.whole(1_234_567),
            Cell.interval(0, 0, 0.0003),
            Cell.text("Wilson"),
            Cell.decimal(-1234.5),
            Cell.decimal(1),
            Cell.decimal(1e-7))
        .note("These are programmed players, one card and one set of table rules.")
        .note("Wilson: E. B. Wilson, Probable inference, 1927.")
        .build();
  }

  /** Texts that each format has to protect itself from. */
  public static Table awkward() {
    TableBuilder table =
        Table.builder("awkward", "Names | that *bite*")
            .columns(
                Column.text("name", "A name that somebody typed."),
                Column.integer("length", "letters", "How many letters the name has."))
            .note("1. A note <b>that</b> looks like a list.")
            .note("- So does this one.");
    for (String name : NAMES) {
      table.row(Cell.text(name), Cell.whole(name.length()));
    }
    return table.build();
  }

  private static final String[] NAMES = {
    "plain",
    "",
    "comma, and more",
    "the \"best\" line",
    "two\nlines",
    "carriage\rreturn",
    "=1+2",
    "#hash",
    "-5",
    " space around ",
    "a | b",
    "back\\slash \\| pipe",
    "<script>alert(1)</script>",
    "&lt; _under_ *star* `code` [link](x) ~~no~~",
    "Übung – Saltmarsh Quay ☂ 雀",
    "tab\there",
    "red\u001b[31m bell\u0007",
    "a longer name, well over thirty letters long, with no mark in need of care"
  };
}
