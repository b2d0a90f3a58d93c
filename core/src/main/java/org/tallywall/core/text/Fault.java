package org.tallywall.core.text;

import java.util.Comparator;

/**
 * One thing that is wrong in a file, for the person who typed it.
 *
 * @param line line of the file, from 1; 0 where the file as a whole is meant
 * @param column column in that line, counted in characters from 1
 * @param id the id of the card's line concerned, or empty
 * @param message what is wrong and what to write instead
 */
public record Fault(int line, int column, String id, String message) {
  /** Order of faults in a file: from top to bottom. */
  public static final Comparator<Fault> ORDER =
      Comparator.comparingInt(Fault::line).thenComparingInt(Fault::column);

  /**
   * A fault. Whatever stood in the file is made visible, so that a message is one line and no more.
   *
   * @param line line of the file, from 1; 0 where the file as a whole is meant
   * @param column column in that line, counted in characters from 1
   * @param id the id of the card's line concerned, or empty; cut where it is long
   * @param message what is wrong and what to write instead; cut where it is long
   */
  public Fault {
    id = Shown.word(id);
    message = Shown.cut(message, FileLimits.LONGEST_MESSAGE);
  }

  /**
   * The fault as one line of text.
   *
   * @param file name of the file
   * @return as in {@code card.json:4:13 (L2): not 14 tiles …}
   */
  public String text(String file) {
    String place = line == 0 ? Shown.text(file) : Shown.text(file) + ":" + line + ":" + column;
    return place + (id.isEmpty() ? "" : " (" + id + ")") + ": " + message;
  }
}
