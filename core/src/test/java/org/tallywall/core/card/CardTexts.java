package org.tallywall.core.card;

import java.util.List;
import java.util.stream.Collectors;
import org.tallywall.core.text.Fault;

/** Card files for tests, laid out so that places can be counted by eye. */
final class CardTexts {
  private CardTexts() {}

  /** A JSON card with one family; the first line stands in row 2 at column 1. */
  static String json(String... lines) {
    return "{ \"card\": \"Probe\", \"families\": [ { \"family\": \"Ladders\", \"lines\": [\n"
        + String.join(",\n", lines)
        + "\n] } ] }";
  }

  /** The JSON card of {@link #json} as read. */
  static CardReading read(String... lines) {
    return CardFile.json("probe.json", json(lines));
  }

  /** The only line of a good card that has the given fields. */
  static Line line(String fields) {
    return read("{ " + fields + " }").orThrow().lines().get(0);
  }

  /** The only line of a good card with one hand. */
  static Line line(String tiles, String slide) {
    return line("\"tiles\": \"%s\", \"slide\": \"%s\", \"value\": 25".formatted(tiles, slide));
  }

  /** The hands of a line as words, in order. */
  static List<String> words(Line line) {
    return line.hands().stream().map(ConcreteHand::toString).toList();
  }

  /** Faults as lines of text. */
  static String text(List<Fault> faults) {
    return faults.stream().map(fault -> fault.text("f")).collect(Collectors.joining("\n"));
  }
}
