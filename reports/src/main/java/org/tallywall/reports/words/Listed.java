package org.tallywall.reports.words;

import java.util.List;

/** Names in a row, as people say them. */
public final class Listed {
  private Listed() {}

  /**
   * All of them.
   *
   * @param names one or more
   * @return such as "a", "a and b", "a, b, and c"
   */
  public static String and(List<String> names) {
    return joined(names, "and");
  }

  /**
   * Any of them.
   *
   * @param names one or more
   * @return such as "a", "a or b", "a, b, or c"
   */
  public static String or(List<String> names) {
    return joined(names, "or");
  }

  private static String joined(List<String> names, String word) {
    int last = names.size() - 1;
    return last < 1
        ? String.join("", names)
        : String.join(", ", names.subList(0, last))
            + (last > 1 ? ", " : " ")
            + word
            + " "
            + names.get(last);
  }
}
