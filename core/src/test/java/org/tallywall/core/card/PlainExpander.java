package org.tallywall.core.card;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * Expands a line by trying every number for every letter, every wind, every suit and every slide,
 * and keeping what the notation allows. Slow and plain: it shares nothing with the classes it is
 * compared with, and works on text from the first letter to the last.
 */
final class PlainExpander {
  private static final String SUITS = "bcd";
  private static final String WINDS = "NEWS";

  private final String slide;
  private final List<String> where;
  private final boolean orOne;
  private final boolean jokers;
  private final Set<String> hands = new TreeSet<>();

  private PlainExpander(String slide, String where, boolean orOne, boolean jokers) {
    this.slide = slide;
    this.where = where.isEmpty() ? List.of() : List.of(where.split("[: ]+"));
    this.orOne = orOne;
    this.jokers = jokers;
  }

  /** The hands of a line, each as sorted groups and sorted loose tiles. */
  static Set<String> hands(
      String tiles, String slide, String where, boolean orOne, boolean jokers) {
    PlainExpander expander = new PlainExpander(slide, where, orOne, jokers);
    expander.bracket(tiles);
    return expander.hands;
  }

  private void bracket(String tiles) {
    int open = tiles.indexOf('(');
    if (open < 0) {
      everyNumber(tiles);
      return;
    }
    int close = tiles.indexOf(')');
    for (String option : tiles.substring(open + 1, close).split("\\|")) {
      bracket(tiles.substring(0, open) + option + tiles.substring(close + 1));
    }
  }

  private void everyNumber(String tiles) {
    for (int n = 1; n <= (uses(tiles, 'n') ? 9 : 1); n++) {
      for (int m = 1; m <= (uses(tiles, 'm') ? 9 : 1); m++) {
        for (int k = 1; k <= (uses(tiles, 'k') ? 9 : 1); k++) {
          if (allowed(tiles, n, m, k)) {
            everyWind(tiles, "" + n + m + k);
          }
        }
      }
    }
  }

  /** A figure of where counts as kept if it agrees with all letters that the hand uses. */
  private boolean allowed(String tiles, int n, int m, int k) {
    if (where.isEmpty()) {
      return true;
    }
    String letters = where.get(0);
    for (String figures : where.subList(1, where.size())) {
      boolean agrees = true;
      for (int at = 0; at < letters.length(); at++) {
        char letter = letters.charAt(at);
        int number = letter == 'n' ? n : letter == 'm' ? m : k;
        agrees &= !uses(tiles, letter) || figures.charAt(at) - '0' == number;
      }
      if (agrees) {
        return true;
      }
    }
    return false;
  }

  private void everyWind(String tiles, String numbers) {
    for (char u : (uses(tiles, 'u') ? WINDS : "N").toCharArray()) {
      for (char v : (uses(tiles, 'v') ? WINDS : "S").toCharArray()) {
        if (u != v || !uses(tiles, 'u') || !uses(tiles, 'v')) {
          everySuit(tiles, numbers, "" + u + v);
        }
      }
    }
  }

  private void everySuit(String tiles, String numbers, String winds) {
    for (char x : (uses(tiles, 'x') ? SUITS : "-").toCharArray()) {
      for (char y : (uses(tiles, 'y') ? SUITS : "-").toCharArray()) {
        for (char z : (uses(tiles, 'z') ? SUITS : "-").toCharArray()) {
          String chosen = ("" + x + y + z).replace("-", "");
          boolean clash = chosen.chars().anyMatch(suit -> uses(tiles, (char) suit));
          long different = chosen.chars().distinct().count();
          if (!clash && (different == chosen.length() || orOne && different == 1)) {
            everySlide(tiles, numbers, winds, "" + x + y + z);
          }
        }
      }
    }
  }

  private void everySlide(String tiles, String numbers, String winds, String suits) {
    for (int step = -8; step <= 8; step++) {
      boolean allowed =
          switch (slide) {
            case "any" -> true;
            case "by-two" -> step % 2 == 0;
            default -> step == 0;
          };
      if (allowed) {
        hand(tiles, numbers, winds, suits, step);
      }
    }
  }

  private void hand(String tiles, String numbers, String winds, String suits, int step) {
    List<String> groups = new ArrayList<>();
    List<String> loose = new ArrayList<>();
    for (String word : tiles.trim().split(" +")) {
      List<String> symbols = symbols(word);
      for (int from = 0, to; from < symbols.size(); from = to) {
        for (to = from; to < symbols.size() && symbols.get(to).equals(symbols.get(from)); to++) {}
        String tile = tile(symbols.get(from), numbers, winds, suits, step);
        if (tile == null) {
          return;
        }
        if (to - from >= 3) {
          groups.add((to - from) + "x" + tile);
        } else {
          loose.addAll(Collections.nCopies(to - from, tile));
        }
      }
    }
    if (PlainMaking.possible(groups, loose, jokers)) {
      Collections.sort(groups);
      Collections.sort(loose);
      hands.add(groups + " " + loose);
    }
  }

  /** Each tile of a word as its number or letter and, behind it, its suit letter if it has one. */
  private static List<String> symbols(String word) {
    List<String> symbols = new ArrayList<>();
    for (int at = 0; at < word.length(); at++) {
      char letter = word.charAt(at);
      if ("123456789nmkD".indexOf(letter) >= 0) {
        int suit = at;
        while ("bcdxyz".indexOf(word.charAt(suit)) < 0) {
          suit++;
        }
        symbols.add("" + letter + word.charAt(suit));
      } else if ("bcdxyz".indexOf(letter) < 0) {
        symbols.add("" + letter);
      }
    }
    return symbols;
  }

  private static String tile(String symbol, String numbers, String winds, String suits, int step) {
    char first = symbol.charAt(0);
    if (symbol.length() == 1) {
      return first == 'u' || first == 'v' ? "" + winds.charAt(first - 'u') : symbol;
    }
    char suit = symbol.charAt(1);
    suit = suit >= 'x' ? suits.charAt(suit - 'x') : suit;
    if (first == 'D') {
      return suit == 'b' ? "G" : suit == 'c' ? "R" : "0";
    }
    if ("nmk".indexOf(first) >= 0) {
      return numbers.substring("nmk".indexOf(first), "nmk".indexOf(first) + 1) + suit;
    }
    int number = first - '0' + step;
    return number < 1 || number > 9 ? null : "" + number + suit;
  }

  private static boolean uses(String tiles, char letter) {
    return tiles.indexOf(letter) >= 0;
  }
}
