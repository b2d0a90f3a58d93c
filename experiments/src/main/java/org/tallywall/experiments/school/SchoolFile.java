package org.tallywall.experiments.school;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.reports.csv.CsvWriter;
import org.tallywall.reports.table.Cell;
import org.tallywall.reports.table.Column;
import org.tallywall.reports.table.Table;
import org.tallywall.reports.table.TableBuilder;

/**
 * The file of decisions: a line for each, in the order of their numbers, written as soon as it is
 * known, so that whatever ends the program leaves what was found.
 */
public final class SchoolFile {
  private static final List<Column> COLUMNS =
      List.of(
          Column.integer("number", "decision", "The number of the decision, from 0."),
          Column.text("kind", "The kind of decision."),
          Column.integer("deal", "deal", "The deal of its game."),
          Column.integer("seat", "seat", "Who decided, 0 (East) to 3."),
          Column.integer("wall", "tiles", "Tiles left in the wall."),
          Column.text("moment", "The question, in the words of a position sheet."),
          Column.text("made", "The choice made."),
          Column.integer("choices", "choices", "How many choices were looked at."),
          Column.text("other", "The choice that did best of the others."),
          Column.integer("first", "games", "Games each before it was decided which is better."),
          Column.integer("first-sum", "points", "Points that the other brought more in these."),
          Column.integer("first-squares", "points squared", "The sum of their squares."),
          Column.integer(
              "second", "games", "Fresh games each, to measure; 0 where it was not ahead."),
          Column.integer("second-sum", "points", "Points that the other brought more in these."),
          Column.integer("second-squares", "points squared", "The sum of their squares."));

  private SchoolFile() {}

  /**
   * The line of headings.
   *
   * @return with its end
   */
  public static String head() {
    return CsvWriter.text(table(List.of()));
  }

  /**
   * The line of a decision.
   *
   * @param one the decision
   * @return with its end
   */
  public static String line(Judged one) {
    String text = CsvWriter.text(table(List.of(one)));
    return text.substring(text.indexOf('\n') + 1);
  }

  private static Table table(List<Judged> all) {
    TableBuilder table = Table.builder("school", "Decisions looked at").columns(COLUMNS);
    for (Judged one : all) {
      table.row(
          Cell.whole(one.number()),
          Cell.text(one.kind().id()),
          Cell.whole(one.deal()),
          Cell.whole(one.seat()),
          Cell.whole(one.wall()),
          Cell.text(one.moment()),
          Cell.text(one.made()),
          Cell.whole(one.choices()),
          Cell.text(one.other()),
          Cell.whole(one.first().worlds()),
          Cell.whole(one.first().sum()),
          Cell.whole(one.first().squares()),
          Cell.whole(one.second().worlds()),
          Cell.whole(one.second().sum()),
          Cell.whole(one.second().squares()));
    }
    return table.build();
  }

  /**
   * Reads the whole lines of a file; what comes after a line that is not whole is left out.
   *
   * @param text the file
   * @return the decisions in their order; none where the headings are other ones
   */
  public static List<Judged> read(String text) {
    List<Judged> all = new ArrayList<>();
    if (!text.startsWith(head())) {
      return all;
    }
    int from = head().length();
    for (int end = text.indexOf('\n', from); end >= 0; end = text.indexOf('\n', from)) {
      Judged one = decision(text.substring(from, end), all.size());
      if (one == null) {
        return all;
      }
      all.add(one);
      from = end + 1;
    }
    return all;
  }

  /** A line; null where it is none, or not the one that is due. */
  private static Judged decision(String line, int number) {
    String[] cells = line.split(",", -1);
    Kind kind = cells.length == COLUMNS.size() ? Kind.of(cells[1]).orElse(null) : null;
    if (kind == null) {
      return null;
    }
    try {
      Judged one =
          new Judged(
              Integer.parseInt(cells[0]),
              kind,
              Integer.parseInt(cells[2]),
              Integer.parseInt(cells[3]),
              Integer.parseInt(cells[4]),
              cells[5],
              cells[6],
              Integer.parseInt(cells[7]),
              cells[8],
              met(cells, 9),
              met(cells, 12));
      return one.number() == number && line(one).equals(line + "\n") ? one : null;
    } catch (NumberFormatException no) {
      return null;
    }
  }

  /** How two choices met; a sum that its squares cannot have is no number of games played. */
  private static Met met(String[] cells, int at) {
    Met met =
        new Met(
            Integer.parseInt(cells[at]),
            Long.parseLong(cells[at + 1]),
            Long.parseLong(cells[at + 2]));
    if (met.worlds() < 0
        || met.worlds() * (double) met.squares() < (double) met.sum() * met.sum()) {
      throw new NumberFormatException("no games");
    }
    return met;
  }
}
