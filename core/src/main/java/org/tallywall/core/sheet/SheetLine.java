package org.tallywall.core.sheet;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.core.text.Faults;
import org.tallywall.core.text.Place;

/**
 * One line of a sheet with what follows it on lines that begin with a space: words and their
 * places.
 *
 * @param words at least one
 */
record SheetLine(List<Word> words) {
  private static final String REMARK = "//";
  private static final String BECAUSE = "because";

  /**
   * A word.
   *
   * @param text its letters
   * @param place where it stands
   */
  record Word(String text, Place place) {}

  /** What the line is about. */
  Word name() {
    return words.get(0);
  }

  /** The words behind the name. */
  List<Word> rest() {
    return words.subList(1, words.size());
  }

  /** The rest as one text. */
  String text() {
    return text(rest());
  }

  /** Words with single spaces between. */
  static String text(List<Word> words) {
    return String.join(" ", words.stream().map(Word::text).toList());
  }

  /**
   * Cuts a text into lines; remarks and empty lines are left out, and so is what follows the last
   * word that a sheet may have, which is a fault.
   */
  static List<SheetLine> of(String text, Faults faults) {
    int left = PositionSheet.MOST_WORDS;
    List<List<Word>> lines = new ArrayList<>();
    String[] typed = text.split("\r\n|\r|\n", -1);
    for (int at = 0; at < typed.length; at++) {
      int remark = typed[at].indexOf(REMARK);
      String line = remark < 0 ? typed[at] : typed[at].substring(0, remark);
      boolean goesOn =
          !line.isEmpty() && Character.isWhitespace(line.charAt(0)) && !lines.isEmpty();
      String prose = goesOn ? lines.get(lines.size() - 1).get(0).text() : line;
      List<Word> words = words(line, at + 1, prose.startsWith(BECAUSE));
      left -= words.size();
      if (left < 0) {
        faults.fault(
            new Place(at + 1, 1),
            "a sheet has at most "
                + PositionSheet.MOST_WORDS
                + " words; what follows was not read");
        break;
      } else if (!words.isEmpty()) {
        if (goesOn) {
          lines.get(lines.size() - 1).addAll(words);
        } else {
          lines.add(words);
        }
      }
    }
    return lines.stream().map(SheetLine::new).toList();
  }

  private static List<Word> words(String line, int number, boolean prose) {
    List<Word> words = new ArrayList<>();
    int start = -1;
    for (int at = 0; at <= line.length(); at++) {
      boolean gap = at == line.length() || Character.isWhitespace(line.charAt(at));
      gap |= !gap && !prose && line.charAt(at) == ',';
      if (gap && start >= 0) {
        words.add(new Word(line.substring(start, at), new Place(number, start + 1)));
        start = -1;
      } else if (!gap && start < 0) {
        start = at;
      }
    }
    return words;
  }
}
