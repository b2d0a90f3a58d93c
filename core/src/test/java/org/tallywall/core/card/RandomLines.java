package org.tallywall.core.card;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.core.random.Purpose;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.random.StreamKey;

/** Draws lines of every kind that the notation knows, most of them unlike any real line. */
public final class RandomLines {
  /** One drawn line as it would be typed. */
  public record Drawn(String tiles, String slide, String where, boolean orOne, boolean jokers) {
    /** The line's fields for a JSON card, without id. */
    public String fields() {
      return "\"tiles\": \"%s\", \"slide\": \"%s\", \"where\": \"%s\", \"suits\": \"%s\", \"jokers\": %s"
          .formatted(tiles, slide, where, orOne ? "or one" : "as written", jokers);
    }
  }

  private final RandomStream random;
  private String suits;
  private String terms;
  private String numbers;

  /** Lines of a stream of their own. */
  public RandomLines(long seed) {
    random = new RandomStream(new StreamKey(seed, 0, Purpose.CARD, 0, 0, 0));
  }

  /** The next line. */
  public Drawn next() {
    suits = pick("x", "xy", "xyz", "bx", "bcx", "dxy", "c", "bd");
    numbers = pick("n", "nm", "nm", "nmk");
    terms = pick("5", "5", "5", "55n", "5F", "5uN", "5D0", "nD", "5nuF", "n", "uvRF0");
    List<String> words = new ArrayList<>();
    int left = 14;
    while (left > 0) {
      int size = Math.min(left, 1 + random.below(6));
      words.add(size >= 4 && random.below(4) == 0 ? singles(size) : word(size));
      left -= size;
    }
    String tiles = String.join(" ", words);
    if (random.below(5) == 0) {
      tiles = bracket(words);
    }
    boolean digits = tiles.replaceAll("[(].*[)]", "").matches(".*[1-9].*");
    String slide = digits ? pick("none", "any", "any", "by-two") : "none";
    boolean orOne = random.below(4) == 0;
    return new Drawn(tiles, slide, where(tiles), orOne, random.below(6) > 0);
  }

  private String word(int size) {
    char term = terms.charAt(random.below(terms.length()));
    return switch (term) {
      case '5' -> String.valueOf(1 + random.below(9)).repeat(size) + suit();
      case 'n' -> pick(numbers.split("")).repeat(size) + suit();
      case 'D' -> "D".repeat(size) + suit();
      case 'N' -> pick("N", "E", "W", "S").repeat(size);
      default -> String.valueOf(term).repeat(size);
    };
  }

  private String singles(int size) {
    StringBuilder word = new StringBuilder();
    for (int at = 0; at < size; at++) {
      int digit = random.below(10);
      word.append(digit == 0 && at == size - 1 ? 1 : digit);
    }
    return word.append(suit()).toString();
  }

  private String bracket(List<String> words) {
    int at = random.below(words.size());
    String word = words.get(at);
    int tiles = word.replaceAll("[bcdxyz]", "").length();
    words.set(
        at,
        "(" + word + "|" + word(tiles) + (random.below(2) == 0 ? ")" : "|" + word(tiles) + ")"));
    return String.join(" ", words);
  }

  private String where(String tiles) {
    StringBuilder letters = new StringBuilder();
    for (String letter : "n m k".split(" ")) {
      if (tiles.contains(letter) && random.below(3) == 0) {
        letters.append(letter);
      }
    }
    if (letters.length() == 0) {
      return "";
    }
    StringBuilder where = new StringBuilder(letters).append(':');
    for (int choice = 1 + random.below(4); choice > 0; choice--) {
      where.append(' ');
      for (int at = 0; at < letters.length(); at++) {
        where.append(1 + random.below(9));
      }
    }
    return where.toString();
  }

  private char suit() {
    return suits.charAt(random.below(suits.length()));
  }

  private String pick(String... choices) {
    return choices[random.below(choices.length)];
  }
}
