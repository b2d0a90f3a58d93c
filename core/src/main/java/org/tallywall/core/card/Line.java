package org.tallywall.core.card;

import java.util.List;

/**
 * One entry of the card.
 *
 * @param id what reports and studies name it by, unique within the card
 * @param family the section of the card in which it stands
 * @param say a nickname, or empty
 * @param printed its tiles as printed
 * @param terms what it pays and allows
 * @param patterns the printed hands, one for each alternative and choice of its brackets
 * @param hands its concrete hands that can be made with the usual tiles, each once
 */
public record Line(
    String id,
    String family,
    String say,
    Printed printed,
    Terms terms,
    List<HandPattern> patterns,
    List<ConcreteHand> hands) {
  /**
   * A line.
   *
   * @param id what it is named by
   * @param family its section
   * @param say a nickname, or empty
   * @param printed its tiles as printed
   * @param terms what it pays and allows
   * @param patterns the printed hands
   * @param hands its concrete hands
   */
  public Line {
    patterns = List.copyOf(patterns);
    hands = List.copyOf(hands);
  }

  /**
   * Points that the line pays.
   *
   * @return a whole number above 0
   */
  public int value() {
    return terms.value();
  }

  /**
   * Whether nothing may be exposed before mahjong.
   *
   * @return true for a concealed line
   */
  public boolean concealed() {
    return terms.concealed();
  }

  /**
   * Whether one of its hands has a group of three or more.
   *
   * @return false for a line of singles and pairs only
   */
  public boolean hasLargeGroup() {
    return patterns.stream().anyMatch(HandPattern::hasLargeGroup);
  }

  /**
   * Whether it is never made without jokers, because several of its groups ask for more tiles of
   * one kind than there are. Who reads a card is warned of it: mostly a letter is wrong.
   *
   * @return false where some hand has room for all its groups, and where only a quint needs a joker
   */
  public boolean crowded() {
    return Crowded.of(hands).isPresent();
  }

  /**
   * One way to make it, its groups in the order of the paper.
   *
   * @return the first of its hands as words, with single spaces between
   * @throws java.util.NoSuchElementException if it has no hands
   */
  public String example() {
    ConcreteHand first = hands.stream().findFirst().orElseThrow();
    return patterns.stream()
        .flatMap(pattern -> Expansion.asPrinted(first, pattern, printed).stream())
        .findFirst()
        .map(words -> String.join(" ", words))
        .orElseThrow();
  }
}
