package org.tallywall.core.card;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.tallywall.core.tile.Tile;

/** The words for what a group is made of, and for the suit in which it stands. */
final class TermWords {
  private static final String[] OPEN_SUITS = {"one suit", "a second suit", "a third suit"};
  private static final String[] SUITS_AGAIN = {
    "the first suit", "the second suit", "the third suit"
  };
  private static final String[] SUITS = {"bams", "craks", "dots"};
  private static final String[] HONORS = {
    "north", "east", "west", "south", "red", "green", "soap", "flowers"
  };
  private static final String[] STEPS = {
    "", "one", "two", "three", "four", "five", "six", "seven", "eight"
  };

  private final HandPattern hand;
  private final Slide slide;
  private final boolean anyNumber;
  private final StringBuilder suitsInOrder = new StringBuilder();
  private final StringBuilder windsNamed = new StringBuilder();
  private final Set<Character> suitsNamed = new TreeSet<>();
  private final Set<Character> suitsOfChoice = new TreeSet<>();
  private boolean choosing;

  /**
   * Words for a hand.
   *
   * @param hand all groups of the hand
   * @param printed the line's slide and rule for numbers
   */
  TermWords(HandPattern hand, Printed printed) {
    this.hand = hand;
    this.slide = printed.slide();
    long numbers = hand.groups().stream().filter(g -> g.term().type() == Term.Type.NUMBER).count();
    this.anyNumber = numbers == 1 && printed.where().letters().isEmpty();
    for (Group group : hand.groups()) {
      char suit = group.term().suit();
      if (suit != 0 && suitsInOrder.indexOf(String.valueOf(suit)) < 0) {
        suitsInOrder.append(suit);
      }
    }
  }

  /**
   * Whether the term is a digit that moves.
   *
   * @param term a term of the hand
   * @return true for the digits of a hand with a slide
   */
  boolean slides(Term term) {
    return term.type() == Term.Type.DIGIT && slide != Slide.NONE;
  }

  /**
   * Whether a digit is the lowest of the hand.
   *
   * @param term a digit
   * @return true if no digit is lower
   */
  boolean lowest(Term term) {
    return term.value() == hand.digits()[0];
  }

  /**
   * Whether the name follows "single" without "of", as in a single soap, two single 2s.
   *
   * @param term a term of the hand
   * @param count how many singles of it
   * @return true for a number that stays, and for one tile by name
   */
  boolean standsAlone(Term term, int count) {
    return term.type() == Term.Type.DIGIT
        ? slide == Slide.NONE
        : term.type() == Term.Type.FIXED && (count == 1 || term.value() == Tile.FLOWER);
  }

  /**
   * The suit in which a term stands.
   *
   * @param term a term of the hand
   * @return its words, or empty for a tile without suit
   */
  String placeWords(Term term) {
    return place(term) == 0 ? "" : suit(term.suit());
  }

  private char place(Term term) {
    boolean dragon = term.type() == Term.Type.DRAGON;
    return dragon && !(term.openSuit() && hasNumbers(term.suit())) ? 0 : term.suit();
  }

  /**
   * What a term is called.
   *
   * @param term a term of the hand
   * @param tiles how many tiles of it: one, or several
   * @return its name
   */
  String name(Term term, int tiles) {
    return switch (term.type()) {
      case FIXED ->
          term.value() == Tile.FLOWER && tiles == 1 ? "flower" : HONORS[term.value() - Tile.NORTH];
      case WIND -> wind(Term.WIND_LETTERS.charAt(term.value()));
      case DRAGON -> dragon(term.suit());
      case NUMBER ->
          anyNumber ? "any number" : "number " + Term.NUMBER_LETTERS.charAt(term.value());
      case DIGIT -> digit(term, tiles);
    };
  }

  private String digit(Term term, int tiles) {
    if (slide != Slide.NONE) {
      return lowest(term)
          ? "the lowest number"
          : STEPS[term.value() - hand.digits()[0]] + " higher";
    }
    return term.value() + (tiles == 1 ? "" : "s");
  }

  private String wind(char letter) {
    String name = String.valueOf(letter);
    int known = windsNamed.indexOf(name);
    if (known < 0) {
      windsNamed.append(name);
      return windsNamed.length() == 1 ? "any wind" : "another wind";
    }
    return known == 0 ? "that first wind" : "that other wind";
  }

  private String dragon(char suit) {
    int written = Tile.suitLetter(suit);
    if (written >= 0) {
      return HONORS[Tile.dragonOf(written) - Tile.NORTH];
    }
    return hasNumbers(suit) ? "the matching dragon" : "the dragon of " + suit(suit);
  }

  private String suit(char letter) {
    int written = Tile.suitLetter(letter);
    if (written >= 0) {
      return SUITS[written];
    }
    int order = suitsInOrder.indexOf(String.valueOf(letter));
    if (suitsNamed.contains(letter)) {
      return SUITS_AGAIN[order];
    }
    (choosing ? suitsOfChoice : suitsNamed).add(letter);
    return OPEN_SUITS[order] + otherThan(order);
  }

  /** A suit that the paper prints by its name, and only further on, is not this one. */
  private String otherThan(int order) {
    List<String> later = new ArrayList<>();
    for (char letter : suitsInOrder.substring(order).toCharArray()) {
      if (Tile.suitLetter(letter) >= 0) {
        later.add(SUITS[Tile.suitLetter(letter)]);
      }
    }
    return later.isEmpty() ? "" : " other than " + String.join(" and ", later);
  }

  /** From here on one of several is read; what the others name is new to it. */
  void begin() {
    choosing = true;
  }

  /** All of the choice has been read. */
  void end() {
    choosing = false;
    suitsNamed.addAll(suitsOfChoice);
    suitsOfChoice.clear();
  }

  /**
   * Whether a group is read out together with those before it.
   *
   * @param first what those before it stand for, in one suit or in none
   * @param groups all groups
   * @param at which group, from 1
   * @return true in the same suit, and for a zero behind a single number, as in a year
   */
  boolean together(Term first, List<Group> groups, int at) {
    Group group = groups.get(at);
    boolean zero =
        group.size() == 1
            && groups.get(at - 1).size() == 1
            && group.term().type() == Term.Type.FIXED
            && group.term().value() == Tile.SOAP;
    return place(first) == place(group.term()) || place(first) != 0 && zero;
  }

  private boolean hasNumbers(char suit) {
    return hand.groups().stream()
        .map(Group::term)
        .anyMatch(term -> term.suit() == suit && term.type() != Term.Type.DRAGON);
  }
}
