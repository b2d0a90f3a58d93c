package org.tallywall.experiments.words;

import java.util.ArrayList;
import java.util.List;

/** Small things about words that several commands need. */
public final class Words {
  private static final int GROUP = 3;
  private static final List<String> SMALL =
      List.of("no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten");

  private Words() {}

  /**
   * A count with its word, as in "1 line" and "1,234 lines".
   *
   * @param number how many
   * @param one the word for one
   * @param several the word for another number
   * @return both
   */
  public static String count(long number, String one, String several) {
    return grouped(number) + " " + (number == 1 ? one : several);
  }

  /**
   * A whole number with a comma before every three digits.
   *
   * @param number the number
   * @return its text
   */
  public static String grouped(long number) {
    StringBuilder text = new StringBuilder(Long.toString(number));
    int first = number < 0 ? 1 : 0;
    for (int at = text.length() - GROUP; at > first; at -= GROUP) {
      text.insert(at, ',');
    }
    return text.toString();
  }

  /**
   * A small number as a word, a larger one in digits.
   *
   * @param number 0 or more
   * @return as in "no", "two", "ten", and "11"
   */
  public static String spelled(long number) {
    return number < SMALL.size() ? SMALL.get((int) number) : grouped(number);
  }

  /**
   * A name between quotes.
   *
   * @param name the name
   * @return the same between double quotes
   */
  public static String quoted(String name) {
    return "\"" + name + "\"";
  }

  /**
   * A word as it must be typed. A name that holds blanks or the like stands between double quotes,
   * which hold everywhere. One that holds letters which a shell would take for orders, even there,
   * stands between single quotes, within which a POSIX shell takes nothing for an order (POSIX.1,
   * Shell Command Language, 2.2.2).
   *
   * @param word the word
   * @return what is typed
   */
  public static String typed(String word) {
    if (word.matches("[A-Za-z0-9_./:@%+=,-]+")) {
      return word;
    } else if (word.matches("[^\"$`\\\\!\\p{Cntrl}]+")) {
      return "\"" + word + "\"";
    }
    return "'" + word.replace("'", "'\\''") + "'";
  }

  /**
   * The command that goes on with the run that a command began.
   *
   * @param command the words of the command that began it
   * @return a line to be typed
   */
  public static String resuming(List<String> command) {
    List<String> words = new ArrayList<>();
    for (int at = 0; at < command.size(); at++) {
      String word = command.get(at);
      if (word.equals("--on-existing")) {
        at++;
      } else if (!word.startsWith("--on-existing=")) {
        words.add(typed(word));
      }
    }
    return String.join(" ", words) + " --on-existing resume";
  }

  /**
   * Breaks a text at its spaces into indented lines.
   *
   * @param text the text
   * @param indent what each line begins with
   * @param width letters in a line
   * @return the lines
   */
  public static List<String> wrapped(String text, String indent, int width) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : text.split(" ")) {
      if (line.length() > 0 && indent.length() + line.length() + 1 + word.length() > width) {
        lines.add(indent + line);
        line.setLength(0);
      }
      line.append(line.length() == 0 ? "" : " ").append(word);
    }
    lines.add(indent + line);
    return lines;
  }
}
