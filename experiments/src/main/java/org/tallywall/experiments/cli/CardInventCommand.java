package org.tallywall.experiments.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.tallywall.experiments.error.FailedException;
import org.tallywall.experiments.error.WrongInputException;
import org.tallywall.experiments.invent.BalancedCard;
import org.tallywall.experiments.invent.CardInventor;
import org.tallywall.experiments.invent.CardSheet;
import org.tallywall.experiments.invent.InventedCard;
import org.tallywall.experiments.store.WholeFile;
import org.tallywall.experiments.words.Words;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Draws a practice card at random. */
@Command(
    name = "invent",
    description =
        "Draws a practice card at random, which you may print and share freely. The same seed and"
            + " number of lines always give the same card.")
final class CardInventCommand implements Callable<Integer> {
  private static final int FULL_CARD = 54;

  private final Console console;

  @Option(
      names = "--lines",
      paramLabel = "NUMBER",
      description =
          "How many lines, 10 to 70; "
              + FULL_CARD
              + " unless given. Up to 20 give a card for beginners.")
  private Integer lines = FULL_CARD;

  @Option(names = "--seed", paramLabel = "NUMBER", description = "Which card; 1 unless given.")
  private Long seed = 1L;

  @Option(names = "--name", paramLabel = "TEXT", description = "What the card is called.")
  private String name;

  @Option(
      names = "--balance",
      description =
          "Tries one seed after another until no line has more than 10 of 100 wins, every"
              + " family has at least 2, and 8 to 35 of 100 games are wall games. Takes a while.")
  private boolean balance;

  @Option(
      names = "--out",
      paramLabel = "FILE",
      description =
          "Writes the card to a new file instead of the screen: a .json file, or a .csv file for a"
              + " spreadsheet.")
  private Path out;

  CardInventCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    if (lines < CardInventor.LEAST_LINES || lines > CardInventor.MOST_LINES) {
      throw new WrongInputException(
          "a card can be drawn with %s to %s lines, not %s"
              .formatted(CardInventor.LEAST_LINES, CardInventor.MOST_LINES, lines));
    }
    if (name != null && name.isBlank()) {
      throw new WrongInputException("the name is empty; write one, or leave --name out");
    }
    if (out != null && Files.exists(out)) {
      throw new WrongInputException("\"" + out + "\" exists already; name a new file");
    }
    boolean sheet = out != null && out.toString().toLowerCase(Locale.ROOT).endsWith(".csv");
    if (sheet && name != null) {
      throw new WrongInputException(
          "a card in a .csv file is called like its file; leave --name out, or name a .json file");
    }
    InventedCard card = draw(name == null ? "Practice card" : name.strip());
    if (out == null) {
      console.out().print(card.text());
    } else {
      WholeFile.write(out, sheet ? CardSheet.text(card.card()) : card.text());
      console.say(
          "wrote %s: %s, %s to make them, seed %s"
              .formatted(
                  out,
                  Words.count(card.card().lines().size(), "line", "lines"),
                  Words.count(ways(card), "way", "ways"),
                  card.seed()));
    }
    return Program.DONE;
  }

  private InventedCard draw(String title) {
    if (!balance) {
      return new CardInventor(seed, lines).draw(title);
    }
    InventedCard card = BalancedCard.find(seed, lines, title, console::complain);
    if (card == null) {
      throw new FailedException(
          "none of a thousand seeds gives a balanced card; try another number of lines");
    }
    return card;
  }

  private static long ways(InventedCard card) {
    return card.card().lines().stream().mapToLong(line -> line.hands().size()).sum();
  }
}
