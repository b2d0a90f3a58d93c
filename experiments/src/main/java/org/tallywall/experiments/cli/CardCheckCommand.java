package org.tallywall.experiments.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.tallywall.core.card.Card;
import org.tallywall.core.card.CardFile;
import org.tallywall.core.card.CardReading;
import org.tallywall.core.card.Family;
import org.tallywall.core.text.Fault;
import org.tallywall.experiments.words.Words;
import org.tallywall.reports.table.Cell;
import org.tallywall.reports.table.Column;
import org.tallywall.reports.table.Table;
import org.tallywall.reports.table.TableBuilder;
import org.tallywall.reports.text.Lettering;
import org.tallywall.reports.text.TextTable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Says whether a card file is good, and if not, everything that is wrong with it. */
@Command(
    name = "check",
    description = "Checks a card that you typed, and names every mistake with its place.")
final class CardCheckCommand implements Callable<Integer> {
  private final Console console;

  @Parameters(paramLabel = "FILE", description = "The card: a .json file, or a .csv file.")
  private Path file;

  CardCheckCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    CardReading reading = CardFile.read(file);
    if (!reading.faults().isEmpty()) {
      reading.faults().forEach(fault -> console.complain(fault.text(reading.file())));
      reading.warnings().forEach(warning -> console.complain(warning(reading, warning)));
      if (reading.faultCount() > 1) {
        console.complain(Words.count(reading.faultCount(), "fault", "faults"));
      }
      return Program.WRONG_INPUT;
    }
    Card card = reading.card();
    console.say("ok: " + Words.quoted(card.name()) + edition(card));
    console.say(card.digest());
    console.say("");
    console.out().print(TextTable.text(families(card), console.width(), Lettering.UNICODE));
    if (!reading.warnings().isEmpty()) {
      console.say("");
      console.say(
          Words.count(reading.warnings().size(), "warning", "warnings")
              + " (the card can be played all the same):");
      reading.warnings().forEach(warning -> console.say(warning(reading, warning)));
    }
    return Program.DONE;
  }

  private static String edition(Card card) {
    return card.edition().isEmpty() ? "" : " (" + card.edition() + ")";
  }

  private static String warning(CardReading reading, Fault warning) {
    return "warning: " + warning.text(reading.file());
  }

  private static Table families(Card card) {
    TableBuilder table =
        Table.builder("families", totals(card))
            .columns(
                Column.text("family", "The family."),
                Column.integer("lines", "lines", "Lines of the family."),
                Column.integer("concealed", "lines", "Concealed lines among them."),
                Column.integer("ways", "hands", "Ways to make them."));
    for (Family family : card.families()) {
      table.row(
          Cell.text(family.name()),
          Cell.whole(family.lines().size()),
          Cell.whole(family.lines().stream().filter(line -> line.concealed()).count()),
          Cell.whole(family.lines().stream().mapToLong(line -> line.hands().size()).sum()));
    }
    return table.build();
  }

  private static String totals(Card card) {
    long ways = card.lines().stream().mapToLong(line -> line.hands().size()).sum();
    return Words.count(card.lines().size(), "line", "lines")
        + " in "
        + Words.count(card.families().size(), "family", "families")
        + ", "
        + Words.count(ways, "way", "ways")
        + " to make them";
  }
}
