package org.tallywall.experiments.story;

import java.util.Map;

/** What the passes are called at the table. */
public final class PassNames {
  private static final Map<String, String> NAMES =
      Map.of(
          "right-1", "First right",
          "across-1", "First across",
          "left-1", "First left",
          "left-2", "Second left",
          "across-2", "Second across",
          "right-2", "Last right");

  /** What is asked after the first three passes. */
  public static final String SECOND = "A second Charleston?";

  /** What happens where nobody passes a tile of her own. */
  public static final String ALL_BLIND = "all four want to pass blind, so no tiles move";

  private PassNames() {}

  /**
   * The name of a pass.
   *
   * @param step the step as records write it, such as {@code left-2}
   * @return its name, such as "Second left"; the step itself where there is none
   */
  public static String of(String step) {
    return NAMES.getOrDefault(step, step);
  }
}
