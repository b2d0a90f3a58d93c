package org.tallywall.experiments.benchmarks;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.core.card.Card;
import org.tallywall.core.card.Family;
import org.tallywall.core.card.Line;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.experiments.invent.CardInventor;

/** Invented cards of a wanted number of concrete hands, always the same ones. */
final class BenchmarkCards {
  private static final int LINES = 54;

  private BenchmarkCards() {}

  /**
   * The lines of invented cards, one card after the other, until there are enough hands.
   *
   * @param hands the least number of concrete hands
   * @return a card with at least that many; at most a line more
   */
  static ConcreteHands of(int hands) {
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
