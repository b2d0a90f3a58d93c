package org.tallywall.experiments.invent;

import org.tallywall.core.card.Card;
import org.tallywall.core.card.Line;
import org.tallywall.core.card.Slide;
import org.tallywall.core.card.SuitChoice;
import org.tallywall.reports.csv.CsvWriter;
import org.tallywall.reports.table.Cell;
import org.tallywall.reports.table.Column;
import org.tallywall.reports.table.Table;
import org.tallywall.reports.table.TableBuilder;

/** Writes a card as the comma-separated values that a spreadsheet opens and a card file may be. */
public final class CardSheet {
  private CardSheet() {}

  /**
   * The card as a sheet.
   *
   * @param card a card; its name and edition have no place on a sheet
   * @return a row for the columns, then one for each line; cells are empty where a line is as usual
   */
  public static String text(Card card) {
    TableBuilder table =
        Table.builder("card", card.name())
            .columns(
                Column.text("family", "The section of the card."),
                Column.text("id", "The line's id."),
                Column.text("tiles", "One hand, or several with | between."),
                Column.text("slide", "How its digits move."),
                Column.text("where", "What its letters may be."),
                Column.text("suits", "How its suit letters may be read."),
                Column.integer("value", "points", "What it pays."),
                Column.text("concealed", "yes where nothing may be exposed."),
                Column.text("jokers", "no where they are forbidden."),
                Column.text("jokerless", "Whether a hand without jokers is doubled."),
                Column.text("say", "A nickname."));
    card.lines().forEach(line -> row(line, table));
    return CsvWriter.text(table.build());
  }

  private static void row(Line line, TableBuilder table) {
    Slide slide = line.printed().slide();
    SuitChoice suits = line.printed().suits();
    boolean jokerless = line.terms().jokerless();
    table.row(
        Cell.text(line.family()),
        Cell.text(line.id()),
        Cell.text(String.join(" | ", line.printed().tiles())),
        Cell.text(slide == Slide.NONE ? "" : slide.text()),
        Cell.text(line.printed().where().toString()),
        Cell.text(suits == SuitChoice.AS_WRITTEN ? "" : suits.text()),
        Cell.whole(line.value()),
        Cell.text(line.concealed() ? "yes" : ""),
        Cell.text(line.terms().jokers() ? "" : "no"),
        Cell.text(jokerless == line.hasLargeGroup() ? "" : jokerless ? "yes" : "no"),
        Cell.text(line.say()));
  }
}
