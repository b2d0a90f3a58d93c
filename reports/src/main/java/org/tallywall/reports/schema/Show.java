package org.tallywall.reports.schema;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * What a study of one fixed table is asked about: its field {@code show}. Headline, first table and
 * first chart follow it.
 */
public enum Show {
  /** The lines of the card that are aimed at and won with. */
  LINES("lines"),
  /** The same, section by section. */
  FAMILIES("families"),
  /** How often each seat wins. */
  SEATS("seats"),
  /** When games end. */
  ENDINGS("endings"),
  /** What the passes bring. */
  PASSES("passes");

  /** The field of a study file. */
  public static final String FIELD = "show";

  private final String text;

  Show(String text) {
    this.text = text;
  }

  /**
   * The word in studies.
   *
   * @return as in {@code families}
   */
  public String text() {
    return text;
  }

  /**
   * What is shown where a study does not say.
   *
   * @param families how many sections the card has
   * @return the sections if there are several, else the lines
   */
  public static Show usual(int families) {
    return families > 1 ? FAMILIES : LINES;
  }

  /**
   * What a word names.
   *
   * @param text a word
   * @return empty where it names nothing
   */
  public static Optional<Show> of(String text) {
    return Arrays.stream(values()).filter(one -> one.text.equals(text)).findFirst();
  }

  /**
   * All words.
   *
   * @return as studies write them
   */
  public static List<String> names() {
    return Arrays.stream(values()).map(Show::text).toList();
  }
}
