package org.tallywall.reports.html;

/**
 * Styles and a script of the caller's own, for drawings that the page's own parts do not cover, and
 * the page's kind. Styles and script are written as they are, so nothing from a file of the user
 * may stand in them.
 *
 * @param style rules of CSS, or empty
 * @param script JavaScript, or empty; runs after the page's own
 * @param maker what the page says near its start that it was made by, or empty
 */
public record Extras(String style, String script, String maker) {
  /** Nothing more. */
  public static final Extras NONE = new Extras("", "", "");
}
