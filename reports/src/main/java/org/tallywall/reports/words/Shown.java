package org.tallywall.reports.words;

import java.util.Arrays;
import org.tallywall.reports.results.Results;

/** What a study of one fixed table is asked about; headline, first table and first chart follow. */
public enum Shown {
  /** The lines of the card. */
  LINES("lines"),
  /** The sections of the card. */
  FAMILIES("families"),
  /** The four seats. */
  SEATS("seats"),
  /** When and how games end. */
  ENDINGS("endings"),
  /** What the passes bring. */
  PASSES("passes");

  private final String text;

  Shown(String text) {
    this.text = text;
  }

  /**
   * What a study says; where it says nothing, sections if the card has several, else lines.
   *
   * @param results what a results folder holds
   * @return what it is asked about
   */
  public static Shown of(Results results) {
    String said = results.study().text("show");
    Shown usual = results.rows("families").size() > 1 ? FAMILIES : LINES;
    return Arrays.stream(values()).filter(one -> one.text.equals(said)).findFirst().orElse(usual);
  }
}
