package org.tallywall.reports.png;

/** What came of drawing a picture as dots. */
public sealed interface PngResult {

  /**
   * The picture.
   *
   * @param bytes the whole file
   */
  record Drawn(byte[] bytes) implements PngResult {}

  /**
   * No picture: this Java runtime cannot draw.
   *
   * @param reason one sentence for people: what is missing, and that the SVG is there all the same
   */
  record NotDrawn(String reason) implements PngResult {}
}
