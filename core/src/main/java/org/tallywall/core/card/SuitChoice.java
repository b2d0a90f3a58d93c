package org.tallywall.core.card;

/** How the suit letters x, y and z of a hand may be read. */
public enum SuitChoice {
  /** Different letters are different suits. */
  AS_WRITTEN("as written"),
  /** As written, or all letters the same suit. */
  OR_ONE("or one");

  private final String text;

  SuitChoice(String text) {
    this.text = text;
  }

  /**
   * The words of the card file.
   *
   * @return "as written" or "or one"
   */
  public String text() {
    return text;
  }
}
