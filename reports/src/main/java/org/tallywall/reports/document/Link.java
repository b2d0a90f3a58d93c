package org.tallywall.reports.document;

import java.util.regex.Pattern;

/**
 * A way to a file beside the page. A page names no place on the web, so that it opens anywhere and
 * tells nobody that it is read.
 *
 * @param words what is found there
 * @param target a relative path with slashes, such as {@code records/game-1.html}
 */
public record Link(String words, String target) {
  private static final Pattern RELATIVE =
      Pattern.compile("[A-Za-z0-9_][A-Za-z0-9_. ()-]*(/[A-Za-z0-9_][A-Za-z0-9_. ()-]*)*");

  /**
   * Takes a way.
   *
   * @param words what is found there
   * @param target a relative path
   * @throws IllegalArgumentException if the path leads out of the folder or to the web
   */
  public Link {
    if (target == null || !RELATIVE.matcher(target).matches()) {
      throw new IllegalArgumentException(
          "a page links to files beside it, such as charts/wins.svg; not to \"" + target + "\"");
    }
  }
}
