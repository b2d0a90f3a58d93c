package org.tallywall.reports.figure;

import java.util.List;
import org.tallywall.reports.table.Names;

/**
 * What stands around a figure, whatever its kind.
 *
 * @param stem the name of its file without the ending: small letters, digits and single hyphens
 * @param title one line above it
 * @param description what the figure shows, in full sentences, for those who cannot see it
 * @param notes sentences below it
 * @param slide what the picture says of itself where it stands alone
 */
public record Caption(
    String stem, String title, String description, List<String> notes, Slide slide) {
  /**
   * Takes the texts and copies the notes.
   *
   * @param stem the name of its file without the ending
   * @param title one line above it
   * @param description the text alternative
   * @param notes sentences below it
   * @param slide what the picture says of itself
   * @throws IllegalArgumentException if the name has another form or words are missing
   */
  public Caption {
    Names.check("a figure's file name", stem);
    Demand.words("figure " + stem, "a title", title);
    Demand.words("figure " + stem, "a description", description);
    notes = List.copyOf(notes);
  }

  /**
   * What stands around a figure that comes from no study.
   *
   * @param stem the name of its file without the ending
   * @param title one line above it
   * @param description the text alternative
   * @param notes sentences below it
   */
  public Caption(String stem, String title, String description, List<String> notes) {
    this(stem, title, description, notes, Slide.NONE);
  }

  /**
   * The words that stand in place of the picture, for those who cannot see it or have none.
   *
   * @return title and description, the mark in front of them
   */
  public String inPlaceOfThePicture() {
    boolean ended = title.endsWith("?") || title.endsWith("!") || title.endsWith(".");
    String marked = slide.mark().isEmpty() ? "" : slide.mark() + ". ";
    return marked + title + (ended ? " " : ". ") + description;
  }

  /**
   * Says which figure is meant, for messages.
   *
   * @return such as "figure endings"
   */
  String where() {
    return "figure " + stem;
  }
}
