package org.tallywall.core.text;

/**
 * Text from a file or a command line as it may be shown. A terminal obeys control characters, a
 * reader is misled by characters that turn the direction of writing, and half a character cannot be
 * written at all; all of them become visible, as in <code>&#92;u{1b}</code>. Other text stays as it
 * is.
 */
public final class Shown {
  private Shown() {}

  /**
   * A text with everything in it made visible.
   *
   * @param text any text
   * @return the same text with control characters, line separators, direction overrides, embeddings
   *     and isolates, and lone surrogates as escapes; safe to be shown again
   */
  public static String text(String text) {
    int at = 0;
    while (at < text.length() && !hidden(text.codePointAt(at))) {
      at += Character.charCount(text.codePointAt(at));
    }
    if (at == text.length()) {
      return text;
    }
    StringBuilder shown = new StringBuilder(text.substring(0, at));
    text.substring(at)
        .codePoints()
        .forEach(
            point -> {
              if (hidden(point)) {
                shown.append("\\u{").append(Integer.toHexString(point)).append('}');
              } else {
                shown.appendCodePoint(point);
              }
            });
    return shown.toString();
  }

  /**
   * A word that a message repeats.
   *
   * @param word any text
   * @return as {@link #text} gives it, cut behind {@link FileLimits#LONGEST_QUOTE} characters
   */
  public static String word(String word) {
    return cut(word, FileLimits.LONGEST_QUOTE);
  }

  /**
   * A text that is cut where it goes on for long.
   *
   * @param text any text
   * @param longest how many characters of it are shown, above 0
   * @return the text as {@link #text} gives it, with "…" in place of what was cut
   */
  static String cut(String text, int longest) {
    if (text.length() <= longest) {
      return text(text);
    }
    int end = Character.isHighSurrogate(text.charAt(longest - 1)) ? longest - 1 : longest;
    return text(text.substring(0, end)) + "…";
  }

  /**
   * Whether a text holds half of a character that takes two places, which no file can hold.
   *
   * @param text any text
   * @return true if a surrogate stands without its other half
   */
  public static boolean broken(String text) {
    return text.codePoints().anyMatch(Shown::surrogate);
  }

  private static boolean hidden(int point) {
    return Character.isISOControl(point)
        || point == 0x2028
        || point == 0x2029
        || (point >= 0x202A && point <= 0x202E)
        || (point >= 0x2066 && point <= 0x2069)
        || surrogate(point);
  }

  private static boolean surrogate(int point) {
    return point >= Character.MIN_SURROGATE && point <= Character.MAX_SURROGATE;
  }
}
