package org.tallywall.experiments.club;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import org.tallywall.core.card.Card;
import org.tallywall.core.card.Family;
import org.tallywall.core.text.Faults;
import org.tallywall.core.text.FaultyFileException;
import org.tallywall.core.text.Place;
import org.tallywall.core.text.Shown;

/**
 * A club's tally as it is typed: a line for each thing counted, its name, a comma and the number.
 * Lines that begin with # are comments; what has no number was not counted.
 */
public final class TallySheet {
  private static final String GAMES = "games";
  private static final String WALL = "wall games";
  private static final String SELF = "self-picked wins";
  private static final String WON = "won on ";

  /** Longer numbers are refused before they are read. */
  private static final int LONGEST = 9;

  private final Card card;
  private final Faults faults = new Faults();
  private final Map<String, Integer> numbers = new HashMap<>();
  private final Map<String, Place> seen = new HashMap<>();

  private TallySheet(Card card) {
    this.card = card;
  }

  /**
   * A sheet to fill in.
   *
   * @param card whose families it has
   * @return its text, with comments
   */
  public static String toFill(Card card) {
    return """
        # What we counted. A name, a comma, a number; leave the number out where you did not count.
        # Lines that begin with # are for you.

        # How many games were played in all
        games,

        # How many of them nobody won
        wall games,

        # Wins that were no discard of another player: drawn, or made by an exchange
        self-picked wins,

        # Wins by family of the card; once one has a number, an empty one stands for none
        """
        + card.families().stream()
            .map(family -> WON + Shown.text(family.name()) + ",\n")
            .collect(Collectors.joining());
  }

  /**
   * Reads a sheet.
   *
   * @param name the file's name, for messages
   * @param text its text
   * @param card whose families it has
   * @return what was counted
   * @throws FaultyFileException with everything that is wrong
   */
  public static ClubTally read(String name, String text, Card card) {
    TallySheet sheet = new TallySheet(card);
    int number = 0;
    for (String line : text.split("\r\n|\r|\n", -1)) {
      number++;
      if (!line.isBlank() && !line.strip().startsWith("#")) {
        sheet.line(line, new Place(number, 1));
      }
    }
    if (!sheet.faults.any() && !sheet.numbers.containsKey(GAMES)) {
      throw new FaultyFileException(
          name, "there is no number of games; write a line such as \"games, 50\"");
    } else if (sheet.faults.any()) {
      throw new FaultyFileException(name, sheet.faults.faults());
    }
    try {
      return sheet.tally();
    } catch (IllegalArgumentException wrong) {
      throw new FaultyFileException(name, wrong.getMessage());
    }
  }

  private void line(String line, Place at) {
    String[] cells = cells(line);
    List<String> known = known();
    String what = cells[0].toLowerCase(java.util.Locale.ROOT);
    List<String> same = known.stream().filter(one -> one.equalsIgnoreCase(what)).toList();
    if (same.isEmpty()) {
      faults.fault(
          at,
          "nothing is called \"%s\"%s"
              .formatted(Shown.word(cells[0]), faults.advice(cells[0], known)));
    } else if (seen.put(same.get(0), at) != null) {
      faults.fault(at, "\"" + Shown.word(same.get(0)) + "\" stands here twice");
    } else if (!cells[1].isEmpty()) {
      number(same.get(0), cells[1], at);
    }
  }

  /** The name and the number, split at the last separator, since names may hold commas. */
  private static String[] cells(String line) {
    int at =
        Math.max(line.lastIndexOf(','), Math.max(line.lastIndexOf(';'), line.lastIndexOf('\t')));
    String what = bare(at < 0 ? line : line.substring(0, at));
    return new String[] {what, at < 0 ? "" : bare(line.substring(at + 1))};
  }

  /** Without blanks and the quotes that spreadsheets put around names. */
  private static String bare(String cell) {
    String stripped = cell.strip();
    boolean quoted = stripped.length() > 1 && stripped.startsWith("\"") && stripped.endsWith("\"");
    return quoted
        ? stripped.substring(1, stripped.length() - 1).replace("\"\"", "\"").strip()
        : stripped;
  }

  private void number(String what, String typed, Place at) {
    boolean whole =
        typed.length() <= LONGEST && typed.chars().allMatch(one -> one >= '0' && one <= '9');
    if (whole && Integer.parseInt(typed) <= ClubTally.MOST_GAMES) {
      numbers.put(what, Integer.valueOf(typed));
    } else {
      faults.fault(
          at,
          "\"%s\" is a whole number from 0 to 10,000, not %s"
              .formatted(Shown.word(what), Shown.word(typed)));
    }
  }

  private List<String> known() {
    List<String> known = new ArrayList<>(List.of(GAMES, WALL, SELF));
    card.families().forEach(family -> known.add(WON + family.name()));
    return known;
  }

  private ClubTally tally() {
    List<Integer> sections = new ArrayList<>();
    boolean counted = false;
    for (Family family : card.families()) {
      Integer wins = numbers.get(WON + family.name());
      counted |= wins != null;
      sections.add(wins == null ? 0 : wins);
    }
    return new ClubTally(
        numbers.get(GAMES), number(WALL), number(SELF), counted ? sections : List.of());
  }

  private OptionalInt number(String what) {
    Integer found = numbers.get(what);
    return found == null ? OptionalInt.empty() : OptionalInt.of(found);
  }
}
