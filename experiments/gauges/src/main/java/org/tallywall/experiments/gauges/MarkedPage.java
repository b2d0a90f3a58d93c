package org.tallywall.experiments.gauges;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** A page of which one part, between two marks, is written by a program and the rest by hand. */
public final class MarkedPage {
  private final Path file;
  private final String text;
  private final int from;
  private final int to;

  /**
   * Reads a page before the work begins, so that one without marks is told at once.
   *
   * @param file the page
   * @param name the name that its marks carry
   * @throws IOException if it cannot be read or lacks the marks
   */
  public MarkedPage(Path file, String name) throws IOException {
    this.file = file;
    text = Files.readString(file, StandardCharsets.UTF_8);
    String begin = "<!-- " + name + ": begin -->";
    int at = text.indexOf(begin);
    from = at + begin.length();
    to = text.indexOf("<!-- " + name + ": end -->");
    if (at < 0 || to < at) {
      throw new IOException(file + " lacks the marks between which the tables stand");
    }
  }

  /**
   * Puts a new part between the marks.
   *
   * @param part paragraphs, each with an empty line after it
   * @throws IOException if the page cannot be written
   */
  public void write(String part) throws IOException {
    Files.writeString(
        file, text.substring(0, from) + "\n\n" + part + text.substring(to), StandardCharsets.UTF_8);
  }
}
