package org.tallywall.core.card;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.tallywall.core.tile.Tile;

/**
 * Reads a line of a card back as a sentence, to be laid beside the paper from which it was typed: a
 * wrong suit letter is a legal line, but not the same sentence.
 */
public final class CardSentence {
  private static final String[] SIZES = {
    "", "a single", "a pair", "a pung", "a kong", "a quint", "a sextet"
  };
  private static final String[] NUMBERS = {
    "no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine"
  };
  private static final String[] OPEN_SUITS = {"in one suit", "in a second suit", "in a third suit"};
  private static final String[] SUITS = {"in bams", "in craks", "in dots"};
  private static final String[] HONOURS = {
    "north", "east", "west", "south", "red", "green", "soap", "flowers"
  };

  private final Line line;
  private final Printed printed;

  private CardSentence(Line line) {
    this.line = line;
    this.printed = line.printed();
  }

  /**
   * The sentence.
   *
   * @param line a line of a card
   * @return what it asks for, allows and pays, in words
   */
  public static String of(Line line) {
    return new CardSentence(line).sentence();
  }

  private String sentence() {
    List<String> hands = new ArrayList<>();
    for (String text : printed.tiles()) {
      hands.add(hand(PatternText.parts(text)));
    }
    List<String> clauses = new ArrayList<>();
    clauses.add(hands.size() == 1 ? hands.get(0) : "either " + String.join("; or ", hands));
    if (!printed.where().letters().isEmpty()) {
      clauses.add(where());
    }
    if (printed.suits() == SuitChoice.OR_ONE) {
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
    clauses.add(String.valueOf(line.value()));
    return String.join("; ", clauses);
  }

  private String hand(List<List<List<Group>>> parts) {
    HandPattern example = example(parts);
    Map<String, List<String>> places = new LinkedHashMap<>();
    for (List<List<Group>> options : parts) {
      if (options.size() == 1) {
        for (Group group : options.get(0)) {
          String place = place(group.term(), example);
          places.computeIfAbsent(place, p -> new ArrayList<>()).add(phrase(group, example));
        }
      } else {
        places.put("one of: " + choices(options, example) + " #" + places.size(), List.of());
      }
    }
    List<String> clauses = new ArrayList<>();
    places.forEach(
        (place, phrases) -> {
          String clause = phrases.isEmpty() ? place.replaceAll(" #\\d+$", "") : list(phrases);
          clauses.add(phrases.isEmpty() || place.isEmpty() ? clause : clause + " " + place);
        });
    if (printed.slide() != Slide.NONE) {
      clauses.add(slide(example));
    }
    return String.join("; ", clauses);
  }

  private static HandPattern example(List<List<List<Group>>> parts) {
    List<Group> groups = new ArrayList<>();
    parts.forEach(options -> options.forEach(groups::addAll));
    return new HandPattern(groups);
  }

  private String choices(List<List<Group>> options, HandPattern example) {
    List<String> choices = new ArrayList<>();
    for (List<Group> option : options) {
      List<String> phrases = new ArrayList<>();
      for (Group group : option) {
        String place = place(group.term(), example);
        phrases.add(phrase(group, example) + (place.isEmpty() ? "" : " " + place));
      }
      choices.add(list(phrases));
    }
    return String.join(", or ", choices);
  }

  private static String place(Term term, HandPattern example) {
    if (term.suit() == 0) {
      return "";
    }
    int written = Tile.suitLetter(term.suit());
    if (written >= 0) {
      return SUITS[written];
    }
    StringBuilder order = new StringBuilder();
    for (Group group : example.groups()) {
      Term other = group.term();
      if (other.openSuit() && order.indexOf(String.valueOf(other.suit())) < 0) {
        order.append(other.suit());
      }
    }
    return OPEN_SUITS[order.indexOf(String.valueOf(term.suit()))];
  }

  private String phrase(Group group, HandPattern example) {
    Term term = group.term();
    String size = SIZES[group.size()];
    return switch (term.type()) {
      case FIXED -> of(size, group.size(), HONOURS[term.value() - Tile.NORTH]);
      case WIND ->
          size
              + " of "
              + (term.value() == 0 ? "any wind" : "another wind")
              + both(example.windLetters(), "uv".charAt(term.value()));
      case DRAGON -> size + " of the dragon of that suit";
      case NUMBER -> size + " of number " + Term.NUMBER_LETTERS.charAt(term.value());
      case DIGIT -> digit(size, group.size(), term.value(), example.digits()[0]);
    };
  }

  private static String both(String letters, char letter) {
    return letters.length() > 1 ? " (" + letter + ")" : "";
  }

  private String digit(String size, int count, int digit, int lowest) {
    if (printed.slide() == Slide.NONE) {
      return count == 1 ? size + " " + digit : size + " of " + digit + "s";
    }
    return digit == lowest
        ? size + " of the lowest number"
        : size + " " + NUMBERS[digit - lowest] + " higher";
  }

  private static String of(String size, int count, String name) {
    String single = count == 1 && name.equals("flowers") ? "flower" : name;
    return count == 1 ? size + " " + single : size + " of " + name;
  }

  private String slide(HandPattern example) {
    int[] digits = example.digits();
    if (digits.length == 0) {
      return "";
    }
    List<Integer> shifts = Expansion.shifts(example, printed.slide());
    int first = digits[0] + shifts.get(0);
    int last = digits[0] + shifts.get(shifts.size() - 1);
    boolean row = digits[digits.length - 1] - digits[0] == digits.length - 1;
    String what =
        digits.length == 1
            ? "any number"
            : row
                ? "any " + NUMBERS[digits.length] + " in a row"
                : "numbers spaced as in "
                    + String.join(" ", Arrays.stream(digits).mapToObj(String::valueOf).toList());
    String step = printed.slide() == Slide.BY_TWO ? ", moving by two" : "";
    return what + step + " (the lowest " + first + " to " + last + ")";
  }

  private String where() {
    Where where = printed.where();
    String letters = String.join(" and ", where.letters().split(""));
    List<String> rows = new ArrayList<>();
    for (List<Integer> row : where.figures()) {
      rows.add(String.join(" and ", row.stream().map(String::valueOf).toList()));
    }
    return "number " + letters + ": " + String.join(", or ", rows);
  }

  private static String list(List<String> phrases) {
    int last = phrases.size() - 1;
    return last == 0
        ? phrases.get(0)
        : String.join(", ", phrases.subList(0, last)) + " and " + phrases.get(last);
  }
}
