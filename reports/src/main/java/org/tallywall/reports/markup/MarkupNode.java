package org.tallywall.reports.markup;

/** What stands within an element. */
public sealed interface MarkupNode permits Element, MarkupNode.Words, MarkupNode.Verbatim {

  /**
   * Text, escaped when it is written.
   *
   * @param text any text
   */
  record Words(String text) implements MarkupNode {}

  /**
   * Characters that are written as they are: the project's own styles and scripts, never anything
   * that comes from a file of the user.
   *
   * @param text the characters
   */
  record Verbatim(String text) implements MarkupNode {}
}
