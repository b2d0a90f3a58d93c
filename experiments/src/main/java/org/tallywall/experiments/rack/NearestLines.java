package org.tallywall.experiments.rack;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.tallywall.core.card.Card;
import org.tallywall.core.card.ConcreteHand;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.hand.HandMeter;
import org.tallywall.core.hand.Reach;
import org.tallywall.strategies.reason.Missing;

/** Finds how far racks are from every line of a card. Not safe for use by several threads. */
public final class NearestLines {
  /**
   * Order of the lines for a person: nearest, then most ways, then dearest, then as on the card.
   */
  private static final Comparator<LineDistance> NEAREST_FIRST =
      Comparator.comparingInt((LineDistance d) -> d.nearest().orElseThrow().away())
          .thenComparing(d -> d.nearest().orElseThrow().ways(), Comparator.reverseOrder())
          .thenComparing(d -> d.line().value(), Comparator.reverseOrder());

  private final ConcreteHands hands;
  private final HandMeter meter = new HandMeter();

  /**
   * A search on one card.
   *
   * @param card a good card
   */
  public NearestLines(Card card) {
    this(new ConcreteHands(card));
  }

  /**
   * A search on one card.
   *
   * @param hands all hands of the card
   */
  public NearestLines(ConcreteHands hands) {
    this.hands = hands;
  }

  /**
   * The distances of one rack.
   *
   * @param question the rack and its exposures
   * @return one entry for every line, in the order of the card
   */
  public List<LineDistance> all(RackQuestion question) {
    Reach reach = hands.reach(question.exposures());
    meter.hold(question.rack());
    int[] least = new int[hands.lines()];
    int[] ways = new int[hands.lines()];
    int[] first = new int[hands.lines()];
    for (int at = 0; at < reach.size(); at++) {
      int line = reach.line(at);
      int away = meter.away(reach, at);
      if (ways[line] == 0 || away < least[line]) {
        least[line] = away;
        ways[line] = 0;
        first[line] = at;
      }
      ways[line] += away == least[line] ? 1 : 0;
    }
    List<LineDistance> all = new ArrayList<>();
    for (int line = 0; line < hands.lines(); line++) {
      Optional<LineDistance.Nearest> nearest = Optional.empty();
      if (ways[line] > 0) {
        Missing missing = Missing.of(meter, reach, first[line], question.rack().jokers());
        ConcreteHand example = reach.hand(first[line]);
        nearest = Optional.of(new LineDistance.Nearest(least[line], ways[line], example, missing));
      }
      all.add(new LineDistance(hands.line(line), nearest));
    }
    return all;
  }

  /**
   * The lines that stay possible, nearest first; among equals those with more ways, then the dearer
   * ones.
   *
   * @param question the rack and its exposures
   * @return the lines in that order
   */
  public List<LineDistance> sorted(RackQuestion question) {
    return all(question).stream()
        .filter(distance -> distance.nearest().isPresent())
        .sorted(NEAREST_FIRST)
        .toList();
  }
}
