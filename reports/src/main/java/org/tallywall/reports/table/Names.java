package org.tallywall.reports.table;

import java.util.regex.Pattern;

/** The one form of names that end up in file names and header rows. */
final class Names {
  private static final Pattern FORM = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");

  private Names() {}

  static void check(String what, String name) {
    if (name == null || !FORM.matcher(name).matches()) {
      throw new IllegalArgumentException(
          what
              + " is made of small letters, digits and single hyphens, as in win-rate; not \""
              + name
              + "\"");
    }
  }
}
