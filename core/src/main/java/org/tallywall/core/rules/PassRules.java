package org.tallywall.core.rules;

/**
 * The Charleston (section 2).
 *
 * @param first whether there is a first round; without it there is no second either
 * @param second what decides about the second round
 * @param stopBeforeSeeing whether the stop question comes before the first-left tiles are seen
 * @param reveal what the table learns of who stopped
 * @param blind in which passes tiles may be passed on blind
 * @param blindMost most tiles passed on blind at once, 1 to 3
 * @param courtesy whether there is a courtesy pass
 * @param bothNumbers whether both courtesy numbers are public, or only the lower
 * @param jokersMayPass whether jokers may be passed, against the usual rules
 */
public record PassRules(
    boolean first,
    Second second,
    boolean stopBeforeSeeing,
    Reveal reveal,
    Blind blind,
    int blindMost,
    boolean courtesy,
    boolean bothNumbers,
    boolean jokersMayPass) {
  /** What decides about the second round. */
  public enum Second {
    /** One player who stops is enough. */
    ANY_PLAYER_MAY_STOP,
    /** It is always played. */
    COMPULSORY,
    /** It is never played. */
    NONE,
    /** It is left out when at least three of the four stop. */
    MAJORITY
  }

  /** What the table learns of who stopped. */
  public enum Reveal {
    /** The first in turn order from East. */
    FIRST_STOPPER,
    /** All who stopped. */
    ALL,
    /** Nobody's name. */
    NOBODY
  }

  /** In which passes tiles may be passed on blind. */
  public enum Blind {
    /** The last pass of each round. */
    FIRST_LEFT_AND_LAST_RIGHT,
    /** In none. */
    NONE,
    /** In all six. */
    ALL_PASSES
  }

  static PassRules of(TableRules.Values values) {
    return new PassRules(
        values.is("charleston.first", "COMPULSORY"),
        values.choice("charleston.second", Second.class),
        values.is("charleston.stopTiming", "BEFORE_SEEING_FIRST_LEFT"),
        values.choice("charleston.stopReveal", Reveal.class),
        values.choice("charleston.blind", Blind.class),
        values.number("charleston.blindMax"),
        values.is("charleston.courtesy", "LOWER_NUMBER"),
        values.is("charleston.courtesyReveal", "BOTH_NUMBERS"),
        values.flag("charleston.jokersMayPass"));
  }
}
