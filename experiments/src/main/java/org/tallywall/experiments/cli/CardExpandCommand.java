package org.tallywall.experiments.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.tallywall.core.card.Card;
import org.tallywall.core.card.CardFile;
import org.tallywall.core.card.ConcreteHand;
import org.tallywall.core.card.Line;
import org.tallywall.experiments.words.Words;
import org.tallywall.reports.csv.CsvWriter;
import org.tallywall.reports.table.Cell;
import org.tallywall.reports.table.Column;
import org.tallywall.reports.table.Table;
import org.tallywall.reports.table.TableBuilder;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Lists every way to make every line of a card. */
@Command(name = "expand", description = "Lists every way to make every line of a card.")
final class CardExpandCommand implements Callable<Integer> {
  private final Console console;

  @Parameters(paramLabel = "FILE", description = "The card: a .json file, or a .csv file.")
  private Path file;

  @Option(names = "--csv", description = "Writes comma-separated values: line,hand.")
  private boolean csv;

  CardExpandCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    Card card = CardFile.read(file).orThrow();
    if (csv) {
      console.out().print(CsvWriter.text(table(card)));
    } else {
      card.lines().forEach(this::print);
    }
    return Program.DONE;
  }

  private static Table table(Card card) {
    TableBuilder table =
        Table.builder("hands", "Every way to make every line")
            .columns(
                Column.text("line", "The line's id."),
                Column.text("hand", "Fourteen tiles as words, groups first."));
    for (Line line : card.lines()) {
      for (ConcreteHand hand : line.hands()) {
        table.row(Cell.text(line.id()), Cell.text(hand.toString()));
      }
    }
    return table.build();
  }

  private void print(Line line) {
    String say = line.say().isEmpty() ? "" : "  " + Words.quoted(line.say());
    console.say(line.id() + say + "  " + Words.count(line.hands().size(), "way", "ways"));
    line.hands().forEach(hand -> console.say("    " + hand));
  }
}
