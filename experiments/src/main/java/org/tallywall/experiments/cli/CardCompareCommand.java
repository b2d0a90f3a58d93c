package org.tallywall.experiments.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.tallywall.core.card.Card;
import org.tallywall.core.card.CardDifference;
import org.tallywall.core.card.CardFile;
import org.tallywall.experiments.words.Words;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Compares two typings of one card. */
@Command(
    name = "compare",
    description =
        "Lists the lines where two typed copies of a card differ: in their hands, value, concealed,"
            + " jokers or jokerless. Names and nicknames do not count.",
    footer = "Exit codes: 0 the same, 1 different.")
final class CardCompareCommand implements Callable<Integer> {
  private final Console console;

  @Parameters(index = "0", paramLabel = "FIRST", description = "One typed copy of the card.")
  private Path first;

  @Parameters(index = "1", paramLabel = "SECOND", description = "Another copy of it.")
  private Path second;

  CardCompareCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    Card a = CardFile.read(first).orThrow();
    Card b = CardFile.read(second).orThrow();
    List<CardDifference> differences = CardDifference.between(a, b);
    if (differences.isEmpty()) {
      console.say("the same: " + Words.count(a.lines().size(), "line", "lines"));
      return Program.DONE;
    }
    differences.forEach(this::print);
    console.say(Words.count(differences.size(), "line differs", "lines differ"));
    return Program.FAILED;
  }

  private void print(CardDifference difference) {
    String a = difference.first();
    String b = difference.second();
    console.say(a.isEmpty() ? b : b.isEmpty() || a.equals(b) ? a : a + " (second: " + b + ")");
    difference.what().forEach(what -> console.say("    " + what));
  }
}
