package org.tallywall.reports.markdown;

import java.util.regex.Pattern;
import org.tallywall.reports.table.Visible;

/** Makes any text stand in Markdown as itself (CommonMark 0.31, section 2.4: backslash escapes). */
final class MarkdownText {
  /** Marks of emphasis, code, links, HTML, entities, headings, table cells and struck-out words. */
  private static final Pattern MARKS = Pattern.compile("[\\\\`*_\\[\\]<>&#|~]");

  /** What would begin a list or underline a heading at the start of a paragraph. */
  private static final Pattern OPENING = Pattern.compile("^(\\d*)([-+=.)])");

  private static final Pattern BREAKS = Pattern.compile("\\s*[\t\n\r]+\\s*");

  private MarkdownText() {}

  /**
   * Text within a line: marks escaped, line breaks become spaces, unseen letters are made visible.
   */
  static String inLine(String text) {
    String oneLine = BREAKS.matcher(Visible.text(text)).replaceAll(" ").strip();
    return MARKS.matcher(oneLine).replaceAll("\\\\$0");
  }

  /** Text that begins a line. */
  static String paragraph(String text) {
    return OPENING.matcher(inLine(text)).replaceFirst("$1\\\\$2");
  }
}
