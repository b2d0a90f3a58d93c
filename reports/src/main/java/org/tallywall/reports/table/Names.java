package org.tallywall.reports.table;

import java.util.regex.Pattern;

/** The one form of names that end up in file names and header rows. */
public final class Names {
  private static final Pattern FORM = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");

  private Names() {}

  /**
   * Refuses a name of another form.
   *
   * @param what what is named, for the message: "a table's file name"
   * @param name small letters, digits and single hyphens between them
   * @throws IllegalArgumentException if the name has another form
   */
  public static void check(String what, String name) {
    if (name == null || !FORM.matcher(name).matches()) {
      throw new IllegalArgumentException(
          what
              + " is made of small letters, digits and single hyphens, as in win-rate; not \""
              + name
              + "\"");
    }
  }
}
