package org.tallywall.core.card;

import java.util.List;
import org.tallywall.core.text.Faults;
import org.tallywall.core.text.Place;

/** What a card still has room for while it is read; the first thing too many is a fault. */
final class CardRoom {
  private final Faults faults;
  private long ways;
  private boolean familiesTold;
  private boolean linesTold;

  /**
   * Room for everything.
   *
   * @param faults takes the faults
   */
  CardRoom(Faults faults) {
    this.faults = faults;
  }

  /** Whether one more family may follow. */
  boolean forFamily(List<String> families, Place at) {
    boolean room = families.size() < CardLimits.MOST_FAMILIES;
    if (!room && !familiesTold) {
      familiesTold = true;
      faults.fault(
          at,
          "a card has at most "
              + CardLimits.MOST_FAMILIES
              + " families; this one and those after it were not read");
    }
    return room;
  }

  /** Whether one more line may follow. */
  boolean forLine(List<LineDraft> lines, Place at) {
    boolean room = lines.size() < CardLimits.MOST_LINES;
    if (!room && !linesTold) {
      linesTold = true;
      faults.fault(
          at,
          "a card has at most "
              + CardLimits.MOST_LINES
              + " lines; this one and those after it were not read");
    }
    return room;
  }

  /** A name as typed; what is too long is a fault, and cut so that nobody works on all of it. */
  String name(String name, String what, Place at) {
    return within(name, CardLimits.LONGEST_NAME, what, at);
  }

  /** Tiles as typed, or what their numbers may be, in the same way. */
  Typed hand(Typed typed, String what) {
    String text = within(typed.text(), CardLimits.LONGEST_HAND, what, typed.place());
    return new Typed(text, typed.place());
  }

  private String within(String text, int longest, String what, Place at) {
    if (text.length() <= longest) {
      return text;
    }
    faults.fault(at, what + " has at most " + longest + " characters, not " + text.length());
    return text.substring(0, Character.isHighSurrogate(text.charAt(longest - 1)) ? 0 : longest);
  }

  /** Whether the hands of a line may be worked out besides those of the lines before. */
  boolean forWays(long more) {
    ways += more;
    return !full();
  }

  /** Whether the ways of the lines so far are more than a card may have. */
  boolean full() {
    return ways > CardLimits.MOST_WAYS_OF_CARD;
  }
}
