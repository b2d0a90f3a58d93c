package org.tallywall.experiments.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.tallywall.core.card.Card;
import org.tallywall.core.card.CardFile;
import org.tallywall.core.card.CardReading;
import org.tallywall.core.card.CardSentence;
import org.tallywall.core.card.Family;
import org.tallywall.core.card.Line;
import org.tallywall.core.card.Printed;
import org.tallywall.core.card.Slide;
import org.tallywall.core.card.SuitChoice;
import org.tallywall.core.text.Shown;
import org.tallywall.experiments.words.Words;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Reads a card back in sentences: a proof sheet to lay beside the paper. */
@Command(
    name = "read",
    description =
        "Reads every line back as a sentence, with its number of ways, one example and whatever"
            + " looks odd: a proof sheet to lay beside the paper.")
final class CardReadCommand implements Callable<Integer> {
  private static final String INDENT = "      ";

  private final Console console;
  private CardReading reading;

  @Parameters(paramLabel = "FILE", description = "The card: a .json file, or a .csv file.")
  private Path file;

  CardReadCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    reading = CardFile.read(file);
    Card card = reading.orThrow();
    console.say(card.name() + (card.edition().isEmpty() ? "" : ", " + card.edition()));
    for (Family family : card.families()) {
      console.say("");
      console.say(family.name());
      family.lines().forEach(this::print);
    }
    return Program.DONE;
  }

  private void print(Line line) {
    console.say("");
    console.say("  " + line.id() + (line.say().isEmpty() ? "" : "  " + Words.quoted(line.say())));
    wrap(typed(line.printed()));
    wrap(CardSentence.of(line));
    wrap(Words.count(line.hands().size(), "way", "ways") + ", for example " + line.example());
    reading.warnings().stream()
        .filter(warning -> warning.id().equals(Shown.word(line.id())))
        .forEach(warning -> wrap("warning: " + warning.message()));
  }

  private void wrap(String text) {
    Words.wrapped(text, INDENT, console.width()).forEach(console::say);
  }

  private static String typed(Printed printed) {
    StringBuilder text = new StringBuilder(String.join(" or ", printed.tiles()));
    if (printed.slide() != Slide.NONE) {
      text.append(", slide ").append(printed.slide().text());
    }
    if (!printed.where().letters().isEmpty()) {
      text.append(", where ").append(printed.where());
    }
    if (printed.suits() != SuitChoice.AS_WRITTEN) {
      text.append(", suits ").append(printed.suits().text());
    }
    return text.toString();
  }
}
