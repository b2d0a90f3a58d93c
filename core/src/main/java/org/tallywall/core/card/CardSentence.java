package org.tallywall.core.card;

import java.util.ArrayList;
import java.util.List;

/**
 * Reads a line of a card back as a sentence, to be laid beside the paper from which it was typed: a
 * wrong suit letter is a legal line, but not the same sentence.
 */
public final class CardSentence {
  private CardSentence() {}

  /**
   * The sentence.
   *
   * @param line a line of a card
   * @return what it asks for, allows and pays, in words
   */
  public static String of(Line line) {
    List<String> hands = new ArrayList<>();
    for (String text : line.printed().tiles()) {
      hands.addAll(hands(text, line.printed()));
    }
    List<String> clauses = new ArrayList<>();
    clauses.add(hands.size() == 1 ? hands.get(0) : "either " + String.join("; or ", hands));
    if (keepsItsNumbers(line)) {
      clauses.add("just these numbers");
    }
    if (!line.printed().where().letters().isEmpty()) {
      clauses.add(where(line.printed().where()));
    }
    if (line.printed().suits() == SuitChoice.OR_ONE) {
      clauses.add("or all in one suit");
    }
    clauses.add(line.concealed() ? "concealed" : "may be exposed");
    if (!line.terms().jokers()) {
      clauses.add("no jokers anywhere");
    }
    if (line.terms().jokerless() != line.hasLargeGroup()) {
      clauses.add(
          line.terms().jokerless() ? "doubled without jokers" : "not doubled without jokers");
    }
    clauses.add("pays " + line.value());
    return String.join("; ", clauses);
  }

  /** Whether the numbers printed stand for themselves, all of them. */
  private static boolean keepsItsNumbers(Line line) {
    return line.printed().slide() == Slide.NONE
        && line.patterns().stream().anyMatch(pattern -> pattern.digits().length > 0)
        && line.patterns().stream().allMatch(pattern -> pattern.numberLetters().isEmpty());
  }

  /** A choice between digits that slide is read out as whole hands, each with its own slide. */
  private static List<String> hands(String text, Printed printed) {
    List<List<List<Group>>> parts = PatternText.parts(text);
    boolean digits =
        parts.stream()
            .filter(options -> options.size() > 1)
            .flatMap(List::stream)
            .flatMap(List::stream)
            .anyMatch(group -> group.term().type() == Term.Type.DIGIT);
    if (printed.slide() == Slide.NONE || !digits) {
      return List.of(HandSentence.of(parts, printed));
    }
    return PatternText.read(text).stream()
        .map(pattern -> HandSentence.of(List.of(List.of(pattern.groups())), printed))
        .toList();
  }

  private static String where(Where where) {
    List<String> letters = List.of(where.letters().split(""));
    List<String> rows = new ArrayList<>();
    for (List<Integer> row : where.figures()) {
      rows.add(HandSentence.list(row.stream().map(String::valueOf).toList(), "and"));
    }
    return letters.size() == 1
        ? letters.get(0) + " is " + HandSentence.list(rows, "or")
        : HandSentence.list(letters, "and") + " are " + String.join(", or ", rows);
  }
}
