package org.tallywall.experiments.paper;

import java.util.Arrays;
import org.tallywall.reports.results.Results;

/** What a study of one fixed table is asked about; headline, first table and first chart follow. */
enum Shown {
  LINES("lines"),
  FAMILIES("families"),
  SEATS("seats"),
  ENDINGS("endings"),
  PASSES("passes");

  private final String text;

  Shown(String text) {
    this.text = text;
  }

  /** What a study says; where it says nothing, sections if the card has several, else lines. */
  static Shown of(Results results) {
    String said = results.study().text("show");
    Shown usual = results.rows("families").size() > 1 ? FAMILIES : LINES;
    return Arrays.stream(values()).filter(one -> one.text.equals(said)).findFirst().orElse(usual);
  }
}
