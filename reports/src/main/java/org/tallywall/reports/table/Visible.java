package org.tallywall.reports.table;

import java.util.function.IntPredicate;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Letters that nobody sees made visible: control characters, marks that turn the direction of
 * writing, invisible marks, separators of lines, and halves of letters that stand alone become
 * their number in braces, as in <code>&#92;u{1b}</code>. So a name can neither steer a console nor
 * look like another one. The letters that join others (U+200C, U+200D) and the soft hyphen stay,
 * because some languages are not written without them.
 */
public final class Visible {
  private static final int LAST_CONTROL = 0x9f;
  private static final int SHORT = 60;
  private static final Pattern WRITTEN = Pattern.compile("\\\\u\\{([0-9a-f]{1,6})}");

  private Visible() {}

  /**
   * A text for people. Line breaks and tabs stay.
   *
   * @param text any text
   * @return the same with every other unseen letter as its number; the same again if it is given
   *     what it gave
   */
  public static String text(String text) {
    return spelled(text, letter -> isUnseen(letter) && !isBlank(letter), false);
  }

  /**
   * The beginning of a text, for messages: they stay short, whatever they speak of.
   *
   * @param text any text
   * @return at most 60 letters of it, the unseen ones as their numbers, in one line, with three
   *     dots where more follow
   */
  public static String inShort(String text) {
    boolean all = text.codePointCount(0, text.length()) <= SHORT;
    return all ? line(text) : line(text.substring(0, text.offsetByCodePoints(0, SHORT))) + " ...";
  }

  /**
   * A text for a file that is read again: one line, and no two texts become the same, because a
   * backslash that begins what looks like the number of a letter becomes one itself.
   *
   * @param text any text
   * @return the same with every unseen letter as its number, line breaks and tabs too
   */
  public static String line(String text) {
    return spelled(text, Visible::isUnseen, true);
  }

  /**
   * The text that {@link #line} was given.
   *
   * @param written what it gave
   * @return the text; what only looks like a number of an unseen letter stays as it is
   */
  public static String back(String written) {
    return written.indexOf('\\') < 0
        ? written
        : WRITTEN.matcher(written).replaceAll(Visible::letter);
  }

  private static String letter(MatchResult number) {
    int letter = Integer.parseInt(number.group(1), 16);
    boolean ours =
        letter <= Character.MAX_CODE_POINT
            && number.group(1).equals(Integer.toHexString(letter))
            && (letter == '\\' || isUnseen(letter));
    String text = ours ? Character.toString(letter) : number.group();
    return Matcher.quoteReplacement(text);
  }

  private static String spelled(String text, IntPredicate unseen, boolean backslash) {
    StringBuilder out = new StringBuilder(text.length());
    int letter;
    for (int at = 0; at < text.length(); at += Character.charCount(letter)) {
      letter = text.codePointAt(at);
      boolean number = backslash && letter == '\\' && text.startsWith("u{", at + 1);
      if (number || unseen.test(letter)) {
        out.append("\\u{").append(Integer.toHexString(letter)).append('}');
      } else {
        out.appendCodePoint(letter);
      }
    }
    return out.toString();
  }

  private static boolean isBlank(int letter) {
    return letter == '\t' || letter == '\n' || letter == '\r';
  }

  /** By number and not by the category of the letter, which newer versions of Java know more of. */
  private static boolean isUnseen(int letter) {
    if (letter < 0x100) {
      return letter < ' ' || letter >= 0x7f && letter <= LAST_CONTROL;
    }
    return letter == 0x61c
        || letter == 0x180e
        || letter == 0x200b
        || within(letter, 0x200e, 0x200f)
        || within(letter, 0x2028, 0x202e)
        || within(letter, 0x2060, 0x206f)
        || within(letter, 0xd800, 0xdfff)
        || letter == 0xfeff
        || within(letter, 0xfff9, 0xfffb)
        || within(letter, 0xfffe, 0xffff)
        || within(letter, 0xe0000, 0xe007f);
  }

  private static boolean within(int letter, int first, int last) {
    return letter >= first && letter <= last;
  }
}
