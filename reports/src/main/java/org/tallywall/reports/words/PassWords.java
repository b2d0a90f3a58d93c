package org.tallywall.reports.words;

import java.util.Map;

/** What the passes are called. */
public final class PassWords {
  private static final Map<String, String> PASSES =
      Map.of(
          "right-1", "first right",
          "across-1", "first across",
          "left-1", "first left",
          "stop", "a second round?",
          "left-2", "second left",
          "across-2", "second across",
          "right-2", "last right");

  private PassWords() {}

  /**
   * A pass as people call it.
   *
   * @param step the pass as files name it
   * @return a few words
   */
  public static String of(String step) {
    return PASSES.getOrDefault(step, step);
  }
}
