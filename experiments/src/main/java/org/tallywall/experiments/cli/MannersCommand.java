package org.tallywall.experiments.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.tallywall.core.card.CardFile;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.record.CheckedRecords;
import org.tallywall.core.record.GameRecord;
import org.tallywall.experiments.error.WrongInputException;
import org.tallywall.experiments.manners.FoundSlip;
import org.tallywall.experiments.manners.MannersPaper;
import org.tallywall.experiments.manners.SlipCount;
import org.tallywall.experiments.manners.SlipFinder;
import org.tallywall.reports.console.ConsoleWriter;
import org.tallywall.reports.csv.CsvWriter;
import org.tallywall.reports.text.Lettering;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Counts decisions that a teacher would not show. */
@Command(
    name = "manners",
    description =
        "Counts decisions in recorded games that no teacher would show: pairs passed, calls for"
            + " nothing, hot tiles thrown beside cold ones.",
    footer = {
      "Example:",
      "  tallywall manners results/my-study/records.jsonl.gz --places 5",
      "A place is looked at with replay: --game, --step and --asked write it as a position."
    })
final class MannersCommand implements Callable<Integer> {
  private static final int MOST_PLACES = 1_000;

  private final Console console;

  @Parameters(paramLabel = "FILE", description = "The records, .jsonl or .jsonl.gz.")
  private Path file;

  @Option(
      names = "--card",
      paramLabel = "FILE",
      description = "The card; unless given, the one that study.json beside the records names.")
  private Path card;

  @Option(
      names = "--places",
      paramLabel = "NUMBER",
      defaultValue = "3",
      description = "How many places of each kind are named; ${DEFAULT-VALUE} unless given.")
  private int places;

  @Option(
      names = "--csv",
      paramLabel = "FILE",
      description = "Writes the numbers for a spreadsheet, too, with every digit.")
  private Path csv;

  MannersCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    if (places < 0 || places > MOST_PLACES) {
      throw new WrongInputException("--places takes a number from 0 to 1,000, not " + places);
    } else if (!Files.isRegularFile(file)) {
      throw new WrongInputException("\"" + file + "\" is no file; name a file of records");
    }
    if (csv != null) {
      NewFile.refuseExisting(csv);
    }
    ConcreteHands hands =
        new ConcreteHands(CardFile.read(card == null ? RecordCard.of(file) : card).orThrow());
    SlipCount count = count(hands);
    if (count.any().games() == 0) {
      throw new WrongInputException("\"" + file + "\" holds no games");
    }
    MannersPaper paper = new MannersPaper(count);
    String text =
        ConsoleWriter.text(
            paper.document(), none -> Optional.empty(), console.width(), Lettering.UNICODE);
    console.out().print(console.called().in(text));
    if (csv != null) {
      console.say("");
      NewFile.write(csv, CsvWriter.text(paper.table()), console);
    }
    return Program.DONE;
  }

  private SlipCount count(ConcreteHands hands) {
    SlipCount count = new SlipCount(places);
    SlipFinder finder = new SlipFinder();
    try (CheckedRecords records = CheckedRecords.open(file, hands)) {
      for (GameRecord game = records.next(); game != null; game = records.next()) {
        Optional<List<FoundSlip>> found = finder.find(game, hands);
        if (found.isEmpty()) {
          throw new WrongInputException(
              "game %s of \"%s\": %s"
                  .formatted(game.header().game(), file, SheetOfStep.OTHER_LUCK));
        }
        count.add(game, found.get());
      }
    } catch (IOException broken) {
      throw new WrongInputException(
          "\"" + file + "\" cannot be read to its end; it breaks off or is damaged");
    }
    return count;
  }
}
