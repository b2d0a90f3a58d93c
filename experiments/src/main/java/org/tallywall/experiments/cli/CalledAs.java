package org.tallywall.experiments.cli;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How the program was called, so that the commands it names can be typed as they stand. The scripts
 * that start it say so; what they say is taken only where it is a plain path, which a shell reads
 * as one word and nothing else.
 */
final class CalledAs {
  /** The system property in which the scripts say it. */
  static final String PROPERTY = "tallywall.called-as";

  /** The program's name, which is also how files of results call it. */
  static final String NAME = "tallywall";

  /** The commands, for nothing else after the name makes it one that can be typed. */
  static final List<String> COMMANDS =
      List.of(
          "card",
          "study",
          "run",
          "report",
          "verify",
          "game",
          "replay",
          "manners",
          "players",
          "rules",
          "rack",
          "ask",
          "review",
          "school",
          "read",
          "club",
          "chances",
          "completion",
          "help");

  private static final Pattern PLAIN = Pattern.compile("[A-Za-z0-9._/][A-Za-z0-9._/-]{0,199}");
  private static final Pattern COMMAND =
      Pattern.compile("(?<![\\w./-])" + NAME + "(?= (?:" + String.join("|", COMMANDS) + ")\\b)");

  private final String words;

  private CalledAs(String words) {
    this.words = words;
  }

  /**
   * What a script said.
   *
   * @param said the path that was typed; null, or anything but a plain path, stands for the name
   */
  static CalledAs of(String said) {
    return new CalledAs(said != null && PLAIN.matcher(said).matches() ? said : NAME);
  }

  /** What to type for the program. */
  String words() {
    return words;
  }

  /** The last part of that, by which a shell finds how to complete it. */
  String name() {
    return words.substring(words.lastIndexOf('/') + 1);
  }

  /** A text whose commands can be typed as they stand. */
  String in(String text) {
    return words.equals(NAME)
        ? text
        : COMMAND.matcher(text).replaceAll(Matcher.quoteReplacement(words));
  }
}
