package org.tallywall.experiments.paper;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The kinds of paper that are made of results. */
public enum PaperFormat {
  /** {@code notes.md} and {@code notes.html}. */
  NOTES("notes"),
  /** {@code report.html}. */
  PAGE("page"),
  /** {@code charts/*.svg} and {@code charts/*.png}. */
  CHARTS("charts"),
  /** {@code games/*.html}, one for each of the first kept games. */
  GAMES("games");

  private final String text;

  PaperFormat(String text) {
    this.text = text;
  }

  /**
   * The name at the command line.
   *
   * @return as in "notes"
   */
  public String text() {
    return text;
  }

  /**
   * Finds a kind by its name.
   *
   * @param text the name
   * @return the kind, if there is one of that name
   */
  public static Optional<PaperFormat> of(String text) {
    return Arrays.stream(values()).filter(format -> format.text.equals(text)).findFirst();
  }

  /**
   * All names.
   *
   * @return in the order of the constants
   */
  public static List<String> names() {
    return Arrays.stream(values()).map(PaperFormat::text).toList();
  }
}
