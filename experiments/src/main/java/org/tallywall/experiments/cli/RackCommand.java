package org.tallywall.experiments.cli;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.tallywall.core.card.CardFile;
import org.tallywall.core.tile.NotationException;
import org.tallywall.experiments.error.WrongInputException;
import org.tallywall.experiments.rack.NearestLines;
import org.tallywall.experiments.rack.RackFile;
import org.tallywall.experiments.rack.RackQuestion;
import org.tallywall.experiments.words.Words;
import org.tallywall.reports.csv.CsvWriter;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Lists the lines of a card that are nearest to a rack. */
@Command(
    name = "rack",
    description =
        "Lists the lines of a card that a rack is closest to, and the tiles it still needs.",
    footer = {
      "Examples:",
      "  tallywall rack my-card.json \"113b 99d S FF RG 257c J\"",
      "  tallywall rack my-card.json \"113b 99d FF RG\" --exposed \"333cJ\""
    })
final class RackCommand implements Callable<Integer> {
  private static final int RACKS_AT_ONCE = 100;

  private final Console console;

  @Parameters(index = "0", paramLabel = "CARD", description = "The card file.")
  private Path card;

  @Parameters(
      index = "1",
      arity = "0..1",
      paramLabel = "TILES",
      description = "The rack, 13 or 14 tiles with its exposures: \"113b 99d S RG0 FF JJJ\".")
  private String tiles;

  @Option(
      names = "--exposed",
      paramLabel = "GROUPS",
      description = "Its exposures, naturals before jokers: \"333cJ 0000\".")
  private String exposed;

  @Option(
      names = "--from",
      paramLabel = "FILE",
      description = "Reads racks from a file, one on each line, exposures after a slash.")
  private Path file;

  @Option(
      names = "--csv",
      description =
          "Writes comma-separated values, every line of the card for every rack:"
              + " rack,line,away,ways,example,wants,by-joker.")
  private boolean csv;

  @Option(names = "--all", description = "Lists every line that is still possible.")
  private boolean all;

  RackCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    if (tiles != null && !Files.exists(card) && new File(tiles).isFile()) {
      throw new WrongInputException(
          "the card comes first; try: tallywall rack %s %s"
              .formatted(Words.typed(tiles), Words.typed(card.toString())));
    }
    MixedUp.wantsCard(card);
    List<RackQuestion> questions = questions();
    NearestLines nearest = new NearestLines(CardFile.read(card).orThrow());
    if (csv) {
      printCsv(questions, nearest);
    } else {
      RackListing listing = new RackListing(console, all);
      questions.forEach(question -> listing.print(question, nearest.sorted(question)));
    }
    return Program.DONE;
  }

  /** Writes some racks at a time, so that a long file of them needs little memory. */
  private void printCsv(List<RackQuestion> questions, NearestLines nearest) {
    for (int from = 0; from < questions.size(); from += RACKS_AT_ONCE) {
      int to = Math.min(questions.size(), from + RACKS_AT_ONCE);
      String text = CsvWriter.text(RackTable.of(questions.subList(from, to), nearest));
      console.out().print(from == 0 ? text : text.substring(text.indexOf('\n') + 1));
    }
  }

  private List<RackQuestion> questions() {
    if (file != null) {
      if (tiles != null || exposed != null) {
        throw new WrongInputException("type a rack, or name a file of racks with --from; not both");
      }
      return RackFile.read(file);
    } else if (tiles == null) {
      throw new WrongInputException(
          "type the rack between quotes, as in \"113b 99d S RG0 FF JJJ\", or name a file with --from");
    }
    try {
      return List.of(
          exposed == null ? RackQuestion.read(tiles) : RackQuestion.read(tiles, exposed));
    } catch (NotationException wrong) {
      throw new WrongInputException("the rack: " + wrong.getMessage());
    }
  }
}
