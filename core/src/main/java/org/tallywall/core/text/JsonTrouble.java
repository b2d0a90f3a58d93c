package org.tallywall.core.text;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Says in plain words why a text is not JSON. The parser's own messages are made for programmers,
 * so only what they found is taken from them.
 */
final class JsonTrouble {
  private static final Pattern CHARACTER =
      Pattern.compile("Unexpected character \\('(.+?)' \\(code");
  private static final Pattern TOKEN = Pattern.compile("Unrecognized token '(.*?)'");

  private static final Pattern CLOSED = Pattern.compile("close marker '(.)': expected '(.)'");
  private static final String SMART =
      "\u201C\u201D\u201E\u201F\u2018\u2019\u201A\u00AB\u00BB\u2033";
  private static final String STRAIGHTEN =
      "turn smart quotes off in the editor and type straight ones (\")";

  private JsonTrouble() {}

  /**
   * Whether a comma is missing, which is to be shown where it belongs: behind what was read last.
   *
   * @param message the parser's message
   * @return true if so
   */
  static boolean commaMissing(String message) {
    return message.contains("expecting comma");
  }

  /**
   * What is wrong and what to write instead.
   *
   * @param message the parser's message
   * @param line the line in which it stands
   * @return a sentence without the names of classes or settings
   */
  static String inWords(String message, String line) {
    String trouble = inWords(message);
    boolean open = message.startsWith("Illegal unquoted") || message.contains("end-of-input");
    return open && !message.contains("comment") && line.codePoints().anyMatch(JsonTrouble::smart)
        ? trouble + "; there is a curly quote in this line: " + STRAIGHTEN
        : trouble;
  }

  private static boolean smart(int letter) {
    return SMART.indexOf(letter) >= 0;
  }

  private static String inWords(String message) {
    if (message.startsWith("Unexpected end-of-input")) {
      return message.contains("comment")
          ? "a comment is not closed; write */ at its end"
          : "the text ends too early; close every brace, bracket and quote";
    }
    Matcher token = TOKEN.matcher(message);
    if (token.find()) {
      return String.format(
          Locale.ROOT,
          "\"%s\" is not a value; write a text in double quotes, a number, true or false",
          Shown.word(token.group(1)));
    }
    Matcher character = CHARACTER.matcher(message);
    if (character.find()) {
      return unexpected(character.group(1), message);
    }
    Matcher closed = CLOSED.matcher(message);
    return closed.find()
        ? closed.group(2) + " is expected here, not " + closed.group(1)
        : rare(message);
  }

  private static String unexpected(String found, String message) {
    if (commaMissing(message)) {
      return "a comma is missing here";
    } else if (found.codePoints().allMatch(JsonTrouble::smart)) {
      return "\"" + found + "\" is a curly quote; " + STRAIGHTEN;
    } else if (message.contains("expecting a colon")) {
      return "a colon is missing before \"" + found + "\"";
    } else if (message.contains("start property name")) {
      return "a field's name in double quotes belongs here, not \"" + found + "\"";
    } else if (message.contains("numeric value")) {
      return "a number is written wrongly before \"" + found + "\"; write it as in 25";
    }
    return "\""
        + found
        + "\" is not expected here; write a text in double quotes, a number, true or false";
  }

  private static String rare(String message) {
    if (message.startsWith("Illegal unquoted character")) {
      return "a text goes on past the end of its line, or holds a control character; close its quote in the same line";
    } else if (message.contains("escape")) {
      return "the letter after a backslash in a text is not one that may follow it; for a backslash write two";
    } else if (message.contains("surrogate")) {
      return "a field's name holds half a character; take it out or write it whole";
    } else if (message.startsWith("Invalid numeric value")) {
      return "a number is written wrongly; write it as in 25";
    } else if (message.contains("nesting depth")) {
      return "it is nested too deeply; this program reads "
          + FileLimits.DEEPEST
          + " objects and lists in one another";
    } else if (message.contains("Number value length")) {
      return "a number in it is too long; write at most " + FileLimits.LONGEST_NUMBER + " digits";
    } else if (message.contains("exceeds the maximum")) {
      return "a text in it is too long; write at most " + FileLimits.LARGEST_FILE + " letters";
    }
    return "the text is garbled here; take out what does not belong";
  }
}
