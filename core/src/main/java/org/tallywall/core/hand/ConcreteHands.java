package org.tallywall.core.hand;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.core.card.Card;
import org.tallywall.core.card.ConcreteHand;
import org.tallywall.core.card.Line;
import org.tallywall.core.tile.Exposure;

/**
 * All concrete hands of a card in the order of its lines, and their narrowing by exposures.
 * Immutable; one object serves all threads.
 */
public final class ConcreteHands {
  private final Card card;
  private final List<Line> lines;
  private final ConcreteHand[] hands;
  private final int[] lineOf;
  private final int[] firstOf;
  private final Reach closed;

  /**
   * The hands of a card.
   *
   * @param card a good card
   */
  public ConcreteHands(Card card) {
    this.card = card;
    this.lines = card.lines();
    List<ConcreteHand> all = new ArrayList<>();
    firstOf = new int[lines.size() + 1];
    for (int line = 0; line < lines.size(); line++) {
      all.addAll(lines.get(line).hands());
      firstOf[line + 1] = all.size();
    }
    hands = all.toArray(new ConcreteHand[0]);
    lineOf = new int[hands.length];
    for (int line = 0; line < lines.size(); line++) {
      java.util.Arrays.fill(lineOf, firstOf[line], firstOf[line + 1], line);
    }
    closed = new Reach(this, List.of());
  }

  /**
   * The card.
   *
   * @return as given
   */
  public Card card() {
    return card;
  }

  /**
   * How many concrete hands there are; a hand of two lines counts in each.
   *
   * @return 1 or more
   */
  public int size() {
    return hands.length;
  }

  /**
   * How many lines there are.
   *
   * @return 1 or more
   */
  public int lines() {
    return lines.size();
  }

  /**
   * A line.
   *
   * @param line its place on the card, from 0
   * @return the line
   */
  public Line line(int line) {
    return lines.get(line);
  }

  /**
   * A concrete hand.
   *
   * @param index from 0
   * @return the hand
   */
  public ConcreteHand hand(int index) {
    return hands[index];
  }

  /**
   * The line to which a concrete hand belongs.
   *
   * @param index the hand, from 0
   * @return the line's place on the card
   */
  public int lineOf(int index) {
    return lineOf[index];
  }

  /**
   * How many ways there are to make a line.
   *
   * @param line its place on the card
   * @return the number of its concrete hands
   */
  public int ways(int line) {
    return firstOf[line + 1] - firstOf[line];
  }

  /**
   * What is possible for a rack without exposures.
   *
   * @return all hands
   */
  public Reach closed() {
    return closed;
  }

  /**
   * What some exposures leave possible. This is worked out anew at each call; see {@link
   * ReachCache}.
   *
   * @param exposures the exposures, in any order
   * @return the hands that contain each of them
   */
  public Reach reach(List<Exposure> exposures) {
    return exposures.isEmpty() ? closed : new Reach(this, exposures);
  }
}
