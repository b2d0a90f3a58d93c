package org.tallywall.core.card;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.tallywall.core.text.Shown;
import org.tallywall.core.tile.LetterHint;
import org.tallywall.core.tile.NotationException;
import org.tallywall.core.tile.Tile;

/**
 * Reads a hand of the card as it is typed: {@code FFF 33x 777x 5555y 99z}. Brackets such as {@code
 * (NNN|SSS)} stand for one of their parts, so one text may give several patterns.
 */
final class PatternText {
  private static final int LARGEST_GROUP = 6;
  private static final String LETTERS = "123456789nmkbcdxyzDRG0NEWSFuv";
  private static final String KNOWN =
      "; known are 1-9 n m k with b c d x y z, D with a suit, R G 0 N E W S F u v";

  private static final Pattern WORD_BEFORE = Pattern.compile("([^\\s(|)]+)\\s+$");
  private static final Pattern WORD_BEHIND = Pattern.compile("^\\s+([^\\s(|)]+)");

  private PatternText() {}

  /**
   * Reads one hand.
   *
   * @param text the hand as words
   * @return one pattern for each choice of the brackets; their number of tiles is not checked
   * @throws NotationException at the first fault
   */
  static List<HandPattern> read(String text) {
    List<List<Group>> hands = new ArrayList<>();
    hands.add(List.of());
    for (List<List<Group>> options : parts(text)) {
      hands = combine(hands, options, text);
    }
    return hands.stream().map(HandPattern::new).toList();
  }

  /**
   * Reads one hand as a row of parts: a word has one option, a bracket several.
   *
   * @param text the hand as words
   * @return for each part its options, for each option its groups
   * @throws NotationException at the first fault
   */
  static List<List<List<Group>>> parts(String text) {
    List<List<List<Group>>> parts = new ArrayList<>();
    int at = 0;
    while (at < text.length()) {
      if (Character.isWhitespace(text.charAt(at))) {
        at++;
      } else if (text.charAt(at) == '(') {
        int close = bracketEnd(text, at);
        parts.add(options(text, at + 1, close));
        at = close + 1;
      } else {
        int end = wordEnd(text, at);
        refuseOr(text, at, end);
        parts.add(List.of(word(text.substring(at, end), at + 1)));
        at = end;
      }
    }
    return parts;
  }

  private static int bracketEnd(String text, int open) {
    int close = text.indexOf(')', open);
    if (close < 0) {
      throw new NotationException(
          open + 1, text.substring(open), "the bracket is not closed; write ) after its parts");
    }
    if (text.substring(open + 1, close).indexOf('(') >= 0) {
      throw new NotationException(
          open + 1, text.substring(open, close + 1), "brackets cannot be inside brackets");
    }
    boolean touchesLeft = open > 0 && !Character.isWhitespace(text.charAt(open - 1));
    boolean touchesRight =
        close + 1 < text.length() && !Character.isWhitespace(text.charAt(close + 1));
    if ((touchesLeft && text.charAt(open - 1) != ')')
        || (touchesRight && text.charAt(close + 1) != '(')) {
      throw new NotationException(
          open + 1,
          text.substring(open, close + 1),
          "a bracket holds whole words; put a space before and after it");
    }
    return close;
  }

  private static List<List<Group>> options(String text, int from, int to) {
    List<List<Group>> options = new ArrayList<>();
    int start = from;
    for (int at = from; at <= to; at++) {
      if (at == to || text.charAt(at) == '|') {
        options.add(words(text, start, at));
        start = at + 1;
      }
    }
    return options;
  }

  private static List<Group> words(String text, int from, int to) {
    List<Group> groups = new ArrayList<>();
    int at = from;
    while (at < to) {
      if (Character.isWhitespace(text.charAt(at))) {
        at++;
      } else {
        int end = Math.min(to, wordEnd(text, at));
        refuseOr(text, at, end);
        groups.addAll(word(text.substring(at, end), at + 1));
        at = end;
      }
    }
    if (groups.isEmpty()) {
      throw new NotationException(
          from, text.substring(from - 1, to + 1), "a part of the bracket is empty");
    }
    return groups;
  }

  /** A choice as it is spoken: what stands before and behind "or". */
  private static void refuseOr(String text, int from, int to) {
    if (text.substring(from, to).equalsIgnoreCase("or")) {
      Matcher before = WORD_BEFORE.matcher(text.substring(0, from));
      Matcher behind = WORD_BEHIND.matcher(text.substring(to));
      String choice =
          before.find() && behind.find()
              ? "(" + Shown.word(before.group(1)) + "|" + Shown.word(behind.group(1)) + ")"
              : "(NNN|SSS)";
      throw new NotationException(
          from + 1, text.substring(from, to), "for a choice write " + choice);
    }
  }

  private static int wordEnd(String text, int from) {
    int end = from;
    while (end < text.length()
        && !Character.isWhitespace(text.charAt(end))
        && "(|)".indexOf(text.charAt(end)) < 0) {
      end++;
    }
    if (end == from) {
      throw new NotationException(
          from + 1,
          text.substring(from, from + 1),
          "one of several is written in brackets, as in (NNN|SSS); a whole hand's alternatives are"
              + " a list");
    }
    return end;
  }

  private static List<List<Group>> combine(
      List<List<Group>> hands, List<List<Group>> options, String text) {
    if ((long) hands.size() * options.size() > CardLimits.MOST_PATTERNS) {
      throw new NotationException(
          1,
          text,
          "the brackets give more than " + CardLimits.MOST_PATTERNS + " hands; split the line");
    }
    List<List<Group>> combined = new ArrayList<>();
    for (List<Group> hand : hands) {
      for (List<Group> option : options) {
        List<Group> longer = new ArrayList<>(hand);
        longer.addAll(option);
        combined.add(longer);
      }
    }
    return combined;
  }

  private static List<Group> word(String word, int position) {
    List<Term> terms = new WordReader(word, position).terms();
    List<Group> groups = new ArrayList<>();
    int start = 0;
    for (int at = 1; at <= terms.size(); at++) {
      if (at == terms.size() || !terms.get(at).equals(terms.get(start))) {
        if (at - start > LARGEST_GROUP) {
          throw new NotationException(
              position,
              word,
              String.format(
                  Locale.ROOT,
                  "a group has at most six tiles, this one has %d; put a space between groups",
                  at - start));
        }
        groups.add(new Group(terms.get(start), at - start));
        start = at;
      }
    }
    return groups;
  }

  /** Reads the tiles of one word, left to right. */
  private static final class WordReader {
    private final String word;
    private final int position;
    private final List<Term> terms = new ArrayList<>();
    private final List<Integer> waiting = new ArrayList<>();

    WordReader(String word, int position) {
      this.word = word;
      this.position = position;
    }

    List<Term> terms() {
      for (int at = 0; at < word.length(); at++) {
        take(word.charAt(at), at);
      }
      if (!waiting.isEmpty()) {
        boolean dots = word.matches(".*[1-9nmk]D");
        throw fault(
            word.length() - 1,
            dots
                ? "a number or D has no suit; for dots write a small d, as in 55d"
                : "a number or D has no suit; write b, c, d or x, y, z after it, as in 55x");
      }
      return terms;
    }

    private void take(char letter, int at) {
      if (letter >= '1' && letter <= '9') {
        hold(new Term(Term.Type.DIGIT, letter - '0', (char) 0));
      } else if (Term.NUMBER_LETTERS.indexOf(letter) >= 0) {
        hold(new Term(Term.Type.NUMBER, Term.NUMBER_LETTERS.indexOf(letter), (char) 0));
      } else if (letter == 'D') {
        hold(new Term(Term.Type.DRAGON, 0, (char) 0));
      } else if ("bcdxyz".indexOf(letter) >= 0) {
        suit(letter, at);
      } else {
        withoutSuit(letter, at);
      }
    }

    private void hold(Term term) {
      waiting.add(terms.size());
      terms.add(term);
    }

    private void suit(char letter, int at) {
      if (waiting.isEmpty()) {
        throw fault(at, "there is no number before the suit " + letter + "; write 5" + letter);
      }
      for (int index : waiting) {
        Term term = terms.get(index);
        terms.set(index, new Term(term.type(), term.value(), letter));
      }
      waiting.clear();
    }

    private void withoutSuit(char letter, int at) {
      int wind = Term.WIND_LETTERS.indexOf(letter);
      int kind = Tile.honor(letter);
      if (letter == 'J') {
        throw fault(at, "a card prints no jokers; write the tiles that they may stand for");
      }
      if (wind < 0 && kind < 0) {
        throw unknown(at);
      }
      if (kind != Tile.SOAP && !waiting.isEmpty()) {
        throw fault(
            at, "a number or D has no suit before " + letter + "; write one, as in 55x " + letter);
      }
      terms.add(
          wind >= 0
              ? new Term(Term.Type.WIND, wind, (char) 0)
              : new Term(Term.Type.FIXED, kind, (char) 0));
    }

    private NotationException unknown(int at) {
      int letter = word.codePointAt(at);
      String hint = LetterHint.of(letter, LETTERS);
      return fault(
          at,
          String.format(
              Locale.ROOT,
              "there is no \"%s\" on a card%s",
              Shown.text(Character.toString(letter)),
              hint.isEmpty() ? KNOWN : hint));
    }

    private NotationException fault(int at, String problem) {
      return new NotationException(position + at, word, problem);
    }
  }
}
