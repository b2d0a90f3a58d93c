package org.tallywall.core.tile;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.tallywall.core.text.Shown;

/**
 * Reads and prints tiles in the notation: words separated by spaces or commas, digits before the
 * suit letter they belong to, as in {@code 113b 99d S RG0 FF JJJ}. {@code 0} is soap wherever it
 * stands.
 */
public final class TileText {
  private static final String SYMBOLS =
      "tiles are 1 to 9 with b, c or d after them (5b), N E W S, R G 0, F and J";

  private static final String LETTERS = "123456789bcdNEWSRG0FJ";

  /** Letters of the longest word: far more than the tiles of a set. */
  private static final int LONGEST_WORD = 200;

  /** Characters of the longest text of tiles. */
  private static final int LONGEST_TEXT = 10_000;

  private TileText() {}

  /**
   * Reads a rack of any size, at most as many of a kind as the usual set has.
   *
   * @param text the tiles as words
   * @return the rack
   * @throws NotationException if a word is no tile or a kind stands too often
   */
  public static Rack rack(String text) {
    Rack rack = new Rack();
    for (Word word : words(text)) {
      for (int kind : tiles(word)) {
        if (rack.held(kind) == TileSet.USUAL.copies(kind)) {
          throw tooMany(word, kind);
        }
        rack.add(kind);
      }
    }
    return rack;
  }

  /**
   * Reads exposures, one word each.
   *
   * @param text words such as {@code 333cJ 0000}
   * @return the exposures in the order written
   * @throws NotationException if a word is no exposure
   */
  public static List<Exposure> exposures(String text) {
    List<Exposure> exposures = new ArrayList<>();
    for (Word word : words(text)) {
      exposures.add(exposure(word));
    }
    return List.copyOf(exposures);
  }

  /**
   * Checks that a rack and its exposures are 13 or 14 tiles and no kind stands too often.
   *
   * @param rack the concealed tiles
   * @param exposures the exposures
   * @throws NotationException if not
   */
  public static void checkWhole(Rack rack, List<Exposure> exposures) {
    Rack all = rack.copy();
    for (Exposure exposure : exposures) {
      all.add(exposure.kind(), exposure.naturals());
      all.add(Tile.JOKER, exposure.jokers());
    }
    for (int kind = 0; kind < Tile.KINDS; kind++) {
      if (all.held(kind) > TileSet.USUAL.copies(kind)) {
        throw new NotationException(
            String.format(
                Locale.ROOT,
                "rack and exposures hold %d of %s; there are only %d",
                all.held(kind),
                Tile.symbol(kind),
                TileSet.USUAL.copies(kind)));
      }
    }
    if (all.total() != 13 && all.total() != 14) {
      int exposed = all.total() - rack.total();
      throw new NotationException(
          exposed == 0
              ? tiles(rack.total()) + " on the rack; write 13 or 14"
              : String.format(
                  Locale.ROOT,
                  "%d on the rack + %d exposed = %d; write 13 or 14 together",
                  rack.total(),
                  exposed,
                  all.total()));
    }
  }

  private static String tiles(int number) {
    return number + (number == 1 ? " tile" : " tiles");
  }

  /**
   * Reads one tile.
   *
   * @param text a single symbol such as {@code 4b} or {@code N}
   * @return its kind, 0 to 35
   * @throws NotationException if the text is not exactly one tile
   */
  public static int tile(String text) {
    List<Word> words = words(text);
    if (words.size() == 1) {
      List<Integer> kinds = tiles(words.get(0));
      if (kinds.size() == 1) {
        return kinds.get(0);
      }
    }
    throw new NotationException(1, text, "write exactly one tile; " + SYMBOLS);
  }

  /**
   * Prints a rack in the fixed order.
   *
   * @param rack any rack
   * @return words separated by single spaces; empty for an empty rack
   */
  public static String print(Rack rack) {
    List<String> words = new ArrayList<>();
    for (int suit = 0; suit < 3; suit++) {
      StringBuilder digits = new StringBuilder();
      for (int number = 1; number <= 9; number++) {
        digits.append(String.valueOf(number).repeat(rack.held(Tile.suited(suit, number))));
      }
      if (digits.length() > 0) {
        words.add(digits.append(Tile.letterOf(suit)).toString());
      }
    }
    addHonors(words, rack, Tile.NORTH, Tile.SOUTH);
    addHonors(words, rack, Tile.RED, Tile.SOAP);
    addHonors(words, rack, Tile.FLOWER, Tile.FLOWER);
    addHonors(words, rack, Tile.JOKER, Tile.JOKER);
    return String.join(" ", words);
  }

  private static void addHonors(List<String> words, Rack rack, int from, int to) {
    StringBuilder letters = new StringBuilder();
    for (int kind = from; kind <= to; kind++) {
      letters.append(Tile.symbol(kind).repeat(rack.held(kind)));
    }
    if (letters.length() > 0) {
      words.add(letters.toString());
    }
  }

  /**
   * Several tiles of one kind as one word.
   *
   * @param kind a kind, 0 to 35
   * @param number how many, 1 or more
   * @return as in {@code 333c} or {@code FF}
   */
  public static String word(int kind, int number) {
    if (Tile.isSuited(kind)) {
      return String.valueOf(Tile.numberOf(kind)).repeat(number) + Tile.letterOf(Tile.suitOf(kind));
    }
    return Tile.symbol(kind).repeat(number);
  }

  private static Exposure exposure(Word word) {
    List<Integer> kinds = tiles(word);
    int kind = -1;
    int jokers = 0;
    for (int tile : kinds) {
      if (tile == Tile.JOKER) {
        jokers++;
      } else if (kind >= 0 && tile != kind) {
        throw new NotationException(
            word.position,
            word.text,
            "an exposure has one kind of tile; write the next exposure as a word of its own");
      } else if (jokers > 0) {
        throw new NotationException(
            word.position, word.text, "write the naturals first, then the jokers, as in 333cJ");
      } else {
        kind = tile;
      }
    }
    if (kind < 0) {
      throw new NotationException(
          word.position, word.text, "an exposure has at least one natural tile, as in 3cJJ");
    }
    if (kinds.size() < 3 || kinds.size() > 6) {
      throw new NotationException(
          word.position, word.text, "an exposure has 3 to 6 tiles, not " + kinds.size());
    }
    if (kinds.size() - jokers > TileSet.USUAL.copies(kind)) {
      throw tooMany(word, kind);
    }
    return new Exposure(kind, kinds.size(), jokers);
  }

  private static NotationException tooMany(Word word, int kind) {
    int copies = TileSet.USUAL.copies(kind);
    return new NotationException(
        word.position,
        word.text,
        String.format(
            Locale.ROOT, "there are only %d of %s; take one out", copies, Tile.symbol(kind)));
  }

  private record Word(int position, String text) {}

  private static List<Word> words(String text) {
    if (text.length() > LONGEST_TEXT) {
      throw new NotationException(
          1, text, "tiles are written in at most " + LONGEST_TEXT + " characters");
    }
    List<Word> words = new ArrayList<>();
    int start = -1;
    for (int at = 0; at <= text.length(); at++) {
      boolean gap =
          at == text.length() || text.charAt(at) == ',' || Character.isWhitespace(text.charAt(at));
      if (gap && start >= 0) {
        words.add(new Word(start + 1, text.substring(start, at)));
        start = -1;
      } else if (!gap && start < 0) {
        start = at;
      }
    }
    return words;
  }

  private static List<Integer> tiles(Word word) {
    if (word.text.length() > LONGEST_WORD) {
      throw new NotationException(
          word.position, word.text, "a word has at most " + LONGEST_WORD + " letters; split it");
    }
    List<Integer> kinds = new ArrayList<>();
    List<Integer> numbers = new ArrayList<>();
    for (int at = 0; at < word.text.length(); at++) {
      char letter = word.text.charAt(at);
      int suit = Tile.suitLetter(letter);
      if (letter >= '1' && letter <= '9') {
        numbers.add(letter - '0');
      } else if (suit >= 0) {
        if (numbers.isEmpty()) {
          throw new NotationException(
              word.position + at,
              word.text,
              "there is no number before " + letter + "; write 5" + letter);
        }
        for (int number : numbers) {
          kinds.add(Tile.suited(suit, number));
        }
        numbers.clear();
      } else {
        int honor = Tile.honor(letter);
        if (honor < 0) {
          throw unknown(word, at);
        }
        if (honor != Tile.SOAP && !numbers.isEmpty()) {
          throw noSuit(word);
        }
        kinds.add(honor);
      }
    }
    if (!numbers.isEmpty()) {
      throw noSuit(word);
    }
    return kinds;
  }

  private static NotationException unknown(Word word, int at) {
    int letter = word.text.codePointAt(at);
    String hint = LetterHint.of(letter, LETTERS);
    return new NotationException(
        word.position + at,
        word.text,
        String.format(
            Locale.ROOT,
            "there is no tile \"%s\"%s",
            Shown.text(Character.toString(letter)),
            hint.isEmpty() ? "; " + SYMBOLS : hint));
  }

  private static NotationException noSuit(Word word) {
    return new NotationException(
        word.position, word.text, "the number has no suit; write b, c or d after it, as in 5b");
  }
}
