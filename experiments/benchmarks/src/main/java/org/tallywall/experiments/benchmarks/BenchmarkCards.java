package org.tallywall.experiments.benchmarks;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.tallywall.core.card.Card;
import org.tallywall.core.card.CardFile;
import org.tallywall.core.card.Family;
import org.tallywall.core.card.Line;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.experiments.invent.CardInventor;

/** Invented cards of a wanted number of concrete hands, always the same ones. */
final class BenchmarkCards {
  private static final int LINES = 54;

  private static final String DEMO = "saltmarsh-quay.json";

  private BenchmarkCards() {}

  /**
   * The practice card of the demo studies.
   *
   * @return its hands
   */
  static ConcreteHands demo() {
    try (InputStream in = BenchmarkCards.class.getResourceAsStream("/" + DEMO)) {
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      return new ConcreteHands(CardFile.json(DEMO, text).orThrow());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * The lines of invented cards, one card after the other, until there are enough hands.
   *
   * @param hands the least number of concrete hands; 0 for the card of the demo studies
   * @return a card with at least that many; at most a line more
   */
  static ConcreteHands of(int hands) {
    if (hands == 0) {
      return demo();
    }
    List<Line> lines = new ArrayList<>();
    int count = 0;
    for (long seed = 1; count < hands; seed++) {
      for (Line line : new CardInventor(seed, LINES).draw("drawn").card().lines()) {
        if (count < hands) {
          count += line.hands().size();
          lines.add(named(line, "B" + (lines.size() + 1)));
        }
      }
    }
    return new ConcreteHands(
        new Card("drawn for benchmarks", "", List.of(new Family("All", lines))));
  }

  private static Line named(Line line, String id) {
    return new Line(
        id, "All", line.say(), line.printed(), line.terms(), line.patterns(), line.hands());
  }
}
