package org.tallywall.reports.document;

import java.util.List;

/**
 * A whole page.
 *
 * @param title its title
 * @param parts what stands on it, from top to bottom
 */
public record Document(String title, List<Part> parts) {
  /**
   * Takes a page and copies its list.
   *
   * @param title its title
   * @param parts what stands on it
   * @throws IllegalArgumentException if the title is missing
   */
  public Document {
    if (title == null || title.isBlank()) {
      throw new IllegalArgumentException("a page lacks a title");
    }
    parts = List.copyOf(parts);
  }
}
