package org.tallywall.core.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import org.tallywall.core.play.PassStep;
import org.tallywall.core.sheet.SheetLine.Word;
import org.tallywall.core.text.Faults;
import org.tallywall.core.text.Nearest;
import org.tallywall.core.text.Place;
import org.tallywall.core.text.Shown;
import org.tallywall.core.tile.Exposure;
import org.tallywall.core.tile.NotationException;
import org.tallywall.core.tile.TileText;

/** Reads the words of one line from left to right. What is wrong is noted once, at its place. */
final class WordReader {
  /** No number, seat or tile was read; a fault was noted. */
  static final int NONE = -1;

  private static final List<String> SEATS = List.of("East", "right", "across", "left");

  private static final Map<String, String> ROUNDS =
      Map.of("first", "-1", "second", "-2", "last", "-2");

  /** The first word of a pass as it is spoken or typed. */
  private static final Pattern PASS =
      Pattern.compile("first|second|last|(right|across|left)(-[12])?", Pattern.CASE_INSENSITIVE);

  private final List<Word> words;
  private final Place end;
  private final Faults faults;
  private int at;

  WordReader(Word before, List<Word> words, Faults faults) {
    this.words = new ArrayList<>(words);
    this.end = (words.isEmpty() ? before : words.get(words.size() - 1)).place();
    this.faults = faults;
  }

  boolean more() {
    return at < words.size();
  }

  /** The place of the next word, or of the last one. */
  Place place() {
    return more() ? words.get(at).place() : end;
  }

  String next() {
    return words.get(at++).text();
  }

  Word word() {
    return words.get(at++);
  }

  /** The words not yet read. */
  List<Word> rest() {
    List<Word> rest = words.subList(at, words.size());
    at = words.size();
    return rest;
  }

  /** Takes the next word if it is this one. */
  boolean take(String expected) {
    boolean found = more() && words.get(at).text().toLowerCase(Locale.ROOT).equals(expected);
    at += found ? 1 : 0;
    return found;
  }

  void fault(String message) {
    faults.fault(place(), message);
  }

  /** Notes what stands behind the end. */
  void finish(String what) {
    if (more()) {
      fault(
          String.format(
              Locale.ROOT,
              "\"%s\" is not expected here; write %s",
              Shown.word(SheetLine.text(rest())),
              what));
    }
  }

  /** One of a few words, or null. */
  String oneOf(List<String> known, String what) {
    if (!more()) {
      fault(
          String.format(
              Locale.ROOT, "%s is missing; write one of %s", what, String.join(", ", known)));
      return null;
    }
    Place place = place();
    String word = next();
    for (String one : known) {
      if (one.equalsIgnoreCase(word)) {
        return one;
      }
    }
    faults.fault(
        place,
        String.format(
            Locale.ROOT,
            "%s \"%s\" is unknown%s",
            what,
            Shown.word(word),
            Nearest.advice(word, known)));
    return null;
  }

  int number(int from, int to, String what) {
    if (!more()) {
      fault(
          String.format(
              Locale.ROOT, "%s is missing; write a number from %d to %d", what, from, to));
      return NONE;
    }
    Place place = place();
    String word = next();
    if (word.matches("[0-9]{1,3}") && Integer.parseInt(word) >= from) {
      int number = Integer.parseInt(word);
      if (number <= to) {
        return number;
      }
    }
    faults.fault(
        place,
        String.format(
            Locale.ROOT,
            "%s is a number from %d to %d, not \"%s\"",
            what,
            from,
            to,
            Shown.word(word)));
    return NONE;
  }

  /** A seat: 0 to 3, or East, right, across, left, with or without "of East". */
  int seat() {
    if (!more()) {
      fault("the seat is missing; write 0 (East), 1, 2 or 3");
      return NONE;
    }
    Place place = place();
    int seat = seat(next(), place);
    if (seat > 0 && more() && words.get(at).text().equals("of")) {
      at++;
      if (!take("east")) {
        fault("write \"of East\"");
      }
    }
    return seat;
  }

  private int seat(String word, Place place) {
    if (word.matches("[0-3]")) {
      return word.charAt(0) - '0';
    }
    for (int seat = 0; seat < SEATS.size(); seat++) {
      if (SEATS.get(seat).equalsIgnoreCase(word)) {
        return seat;
      }
    }
    faults.fault(
        place,
        String.format(
            Locale.ROOT,
            "there is no seat \"%s\"; write 0 (East), 1 (right of East), 2 (across) or 3 (left)",
            Shown.word(word)));
    return NONE;
  }

  /** A pass by its name, or as it is spoken: "first right", "second across", "last right". */
  PassStep step() {
    if (more()) {
      String spoken = words.get(at).text().toLowerCase(Locale.ROOT);
      String number = ROUNDS.get(spoken);
      if (number != null && at + 1 < words.size()) {
        Word first = words.remove(at);
        Word second = words.get(at);
        words.set(at, new Word(second.text() + number, first.place()));
      }
    }
    List<String> names = new ArrayList<>();
    for (PassStep step : PassStep.values()) {
      names.add(step.text());
    }
    String name = oneOf(names, "the pass");
    return name == null ? null : PassStep.values()[names.indexOf(name)];
  }

  /** Notes a pass that is named without the word "pass" before it; false where none is. */
  boolean passWithoutItsWord() {
    boolean named = more() && PASS.matcher(words.get(at).text()).matches();
    if (named) {
      Place place = place();
      faults.fault(
          place, "the moment is a pass; write: moment pass " + Shown.word(SheetLine.text(rest())));
    }
    return named;
  }

  /** One tile, or {@link #NONE}. */
  int tile(String what) {
    if (!more()) {
      fault(what + " is missing; write one tile, as in 5c");
      return NONE;
    }
    Word word = word();
    try {
      return TileText.tile(word.text());
    } catch (NotationException wrong) {
      fault(word, wrong);
      return NONE;
    }
  }

  /** A tile with its place. */
  record Seen(int kind, Place place) {}

  /** All tiles up to the end, or up to a word that stops them. */
  List<Seen> tiles(String stop) {
    List<Seen> tiles = new ArrayList<>();
    while (more() && !words.get(at).text().equals(stop)) {
      Word word = word();
      try {
        for (int kind : TileText.rack(word.text()).tiles()) {
          tiles.add(new Seen(kind, word.place()));
        }
      } catch (NotationException wrong) {
        fault(word, wrong);
      }
    }
    return tiles;
  }

  /** The next word as an exposure, or null. */
  Exposure exposure() {
    Word word = word();
    try {
      return TileText.exposures(word.text()).get(0);
    } catch (NotationException wrong) {
      fault(word, wrong);
      return null;
    }
  }

  /** The notation counts its characters within the word. */
  private void fault(Word word, NotationException wrong) {
    faults.fault(word.place().plus(wrong.position() - 1), wrong.withoutPosition());
  }
}
