package org.tallywall.experiments.store;

import java.util.Arrays;
import java.util.List;

/** What to do when the results folder is there already. */
public enum OnExisting {
  /** Refuse to run. */
  FAIL("fail"),
  /** Go on with the run that is in it. */
  RESUME("resume"),
  /** Replace what is in it. */
  OVERWRITE("overwrite");

  private final String text;

  OnExisting(String text) {
    this.text = text;
  }

  /**
   * The word for it on the command line.
   *
   * @return as in {@code resume}
   */
  public String text() {
    return text;
  }

  /**
   * All words.
   *
   * @return in the order of the constants
   */
  public static List<String> names() {
    return Arrays.stream(values()).map(OnExisting::text).toList();
  }
}
