package org.tallywall.core.tile;

/**
 * Text that is not in the notation: which word, where, and what to write instead. The message is
 * made for the person who typed the text.
 */
public final class NotationException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final int position;

  /**
   * A fault in a text.
   *
   * @param position where it is, counted in characters from 1
   * @param word the word that is wrong
   * @param problem what is wrong and what to write instead
   */
  public NotationException(int position, String word, String problem) {
    super("\"" + word + "\" at character " + position + ": " + problem);
    this.position = position;
  }

  /**
   * A fault of the text as a whole.
   *
   * @param problem what is wrong and what to write instead
   */
  public NotationException(String problem) {
    super(problem);
    this.position = 1;
  }

  /**
   * Where the fault is.
   *
   * @return a position counted in characters from 1
   */
  public int position() {
    return position;
  }
}
