package org.tallywall.experiments.cli;

import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.tallywall.core.card.Card;
import org.tallywall.core.card.CardFile;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.rules.TableRules;
import org.tallywall.core.sheet.PositionSheet;
import org.tallywall.experiments.error.WrongInputException;
import org.tallywall.experiments.study.RulesFile;
import org.tallywall.experiments.words.Words;

/**
 * Positions that were named on the command line, and their card.
 *
 * @param sheets the files; {@code -} is standard input
 * @param card the card that was named, or null
 * @param in standard input
 */
record SheetFiles(List<Path> sheets, Path card, InputStream in) {
  private static final Path STANDARD_INPUT = Path.of("-");
  private static final String CARD = "card.json";

  List<PositionSheet> read(TableSetup setup) {
    if (sheets.stream().filter(STANDARD_INPUT::equals).count() > 1) {
      throw new WrongInputException("- is standard input, which can be read once only");
    }
    sheets.forEach(SheetFiles::refuseRecords);
    return sheets.stream().map(sheet -> read(sheet, setup)).toList();
  }

  private static void refuseRecords(Path sheet) {
    if (sheet.toString().matches(".*\\.jsonl(\\.gz)?")) {
      throw new WrongInputException(
          "\"%s\" is a file of records, not a position; to go through a game of it: tallywall review %s --game 0 --seat 0"
              .formatted(sheet, Words.typed(sheet.toString())));
    }
  }

  private PositionSheet read(Path sheet, TableSetup setup) {
    return sheet.equals(STANDARD_INPUT)
        ? PositionSheet.read("standard input", in, setup)
        : PositionSheet.read(sheet, setup);
  }

  /** The table of the positions: the card, and the rules of a file, or the usual ones for null. */
  TableSetup setup(Path rules) {
    TableRules table = rules == null ? TableRules.STANDARD : RulesFile.read(rules);
    return new TableSetup(new ConcreteHands(readCard()), table);
  }

  /** The card that was named, or the one that lies beside the positions. */
  private Card readCard() {
    Path file = card == null ? beside() : card;
    MixedUp.wantsCard(file);
    return CardFile.read(file).orThrow();
  }

  private Path beside() {
    List<Path> beside =
        sheets.stream().map(sheet -> sheet.resolveSibling(CARD)).distinct().toList();
    if (beside.size() > 1 || !Files.isRegularFile(beside.get(0))) {
      throw new WrongInputException(
          "name the card, as in --card my-card.json; "
              + (beside.size() > 1
                  ? "the positions lie in several folders"
                  : "there is no " + CARD + " beside the position"));
    }
    return beside.get(0);
  }
}
