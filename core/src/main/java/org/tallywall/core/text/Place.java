package org.tallywall.core.text;

/**
 * A place in a file.
 *
 * @param line line from 1; 0 for the file as a whole
 * @param column column from 1
 */
public record Place(int line, int column) {
  /** The file as a whole. */
  public static final Place FILE = new Place(0, 0);

  /**
   * A place further right in the same line.
   *
   * @param characters how many characters further
   * @return the place
   */
  public Place plus(int characters) {
    return new Place(line, column + characters);
  }
}
