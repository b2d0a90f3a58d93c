package org.tallywall.experiments.gauges;

/** Text broken into lines. */
public final class Paragraph {
  private static final int WIDTH = 118;

  private Paragraph() {}

  /**
   * A paragraph.
   *
   * @param text words, a space between every two
   * @return its lines and an empty one
   */
  public static String of(String text) {
    return wrapped(text, "") + "\n\n";
  }

  /**
   * An item of a list.
   *
   * @param text words, a space between every two
   * @return its lines
   */
  public static String item(String text) {
    return wrapped("- " + text, "  ") + "\n";
  }

  private static String wrapped(String paragraph, String indent) {
    StringBuilder text = new StringBuilder();
    int width = 0;
    for (String word : paragraph.split(" ")) {
      boolean fits = width + 1 + word.length() <= WIDTH;
      text.append(width == 0 ? "" : fits ? " " : "\n" + indent).append(word);
      width = (width > 0 && fits ? width + 1 : indent.length()) + word.length();
    }
    return text.toString();
  }
}
