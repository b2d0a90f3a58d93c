package org.tallywall.core.tile;

import org.tallywall.core.text.Shown;

/**
 * Text that is not in the notation: which word, where, and what to write instead. The message is
 * made for the person who typed the text.
 */
public final class NotationException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final int position;
  private final String alone;

  /**
   * A fault in a text.
   *
   * @param position where it is, counted in characters from 1
   * @param word the word that is wrong; a long one is cut
   * @param problem what is wrong and what to write instead
   */
  public NotationException(int position, String word, String problem) {
    super("\"" + Shown.word(word) + "\" at character " + position + ": " + problem);
    this.position = position;
    this.alone = "\"" + Shown.word(word) + "\": " + problem;
  }

  /**
   * A fault of the text as a whole.
   *
   * @param problem what is wrong and what to write instead
   */
  public NotationException(String problem) {
    super(problem);
    this.position = 1;
    this.alone = problem;
  }

  /**
   * Where the fault is.
   *
   * @return a position counted in characters from 1
   */
  public int position() {
    return position;
  }

  /**
   * The message without the position, for whoever names the place of the fault otherwise.
   *
   * @return as in {@code "5q": there is no tile "q" …}
   */
  public String withoutPosition() {
    return alone;
  }
}
