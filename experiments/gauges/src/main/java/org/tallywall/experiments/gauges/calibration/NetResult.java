package org.tallywall.experiments.gauges.calibration;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * What a table of chances comes to: where more was said than happened, where less, and by how much.
 * A bin counts as too high or too low where what was said lies outside the range of what happened.
 */
final class NetResult {
  private static final double ALIKE = 3;

  private NetResult() {}

  /** A line for each table of a page that says whether chances are right. */
  static List<String> lines(String page) {
    List<String> lines = new ArrayList<>();
    for (ShownBins shown : ShownBins.of(page)) {
      if (shown.section().startsWith("The model alone") && shown.what().startsWith("made")) {
        lines.add("The own hand, by the judge alone: " + of(shown.rows()) + ".");
      } else if (shown.what().equals("won on it")) {
        lines.add("A win on a tile thrown, " + among(shown) + of(shown.rows()) + ".");
      } else if (shown.what().equals("won on it so read")) {
        lines.add("The same by all that can be seen, " + among(shown) + of(shown.rows()) + ".");
      } else if (shown.what().equals("won the game")) {
        lines.add(
            "Winning, by what the rest of the rack is worth, "
                + among(shown)
                + of(shown.rows())
                + ".");
      } else if (shown.what().equals("laid it open")) {
        lines.add("An exposure with a tile thrown, " + among(shown) + of(shown.rows()) + ".");
      }
    }
    return lines;
  }

  private static String among(ShownBins shown) {
    return shown.section().substring(0, 1).toLowerCase(Locale.ROOT)
        + shown.section().substring(1)
        + ": ";
  }

  /** The stretches of bins that are off the same way, as in "40 to 100: 7 to 14 too high". */
  static String of(List<Bins.Row> rows) {
    List<String> stretches = new ArrayList<>();
    int from = 0;
    while (from < rows.size()) {
      int to = from + 1;
      while (to < rows.size() && isAlike(rows.subList(from, to), rows.get(to))) {
        to++;
      }
      stretches.add(stretch(rows.subList(from, to)));
      from = to;
    }
    return String.join("; ", stretches);
  }

  /**
   * Whether a bin is off the same way as those before it, by up to three times as much or little.
   */
  private static boolean isAlike(List<Bins.Row> before, Bins.Row row) {
    if (sign(row) != sign(before.get(0))) {
      return false;
    }
    double size = Math.abs(off(row));
    return sign(row) == 0
        || before.stream()
            .mapToDouble(one -> Math.abs(off(one)))
            .allMatch(other -> size <= ALIKE * other && other <= ALIKE * size);
  }

  /** 1 where more was said than happened, −1 where less, 0 where the range holds what was said. */
  static int sign(Bins.Row row) {
    if (row.said() > row.limits().high()) {
      return 1;
    }
    return row.said() < row.limits().low() ? -1 : 0;
  }

  /** What was said less what happened, in 100. */
  static double off(Bins.Row row) {
    return 100 * (row.said() - row.happened());
  }

  private static String stretch(List<Bins.Row> rows) {
    Bins.Row first = rows.get(0);
    Bins.Row last = rows.get(rows.size() - 1);
    String where =
        InHundred.plain(100 * first.from()) + " to " + InHundred.plain(100 * last.to()) + ": ";
    int sign = sign(first);
    if (sign == 0) {
      return where + "right as far as can be told";
    }
    double least = rows.stream().mapToDouble(row -> Math.abs(off(row))).min().orElse(0);
    double most = rows.stream().mapToDouble(row -> Math.abs(off(row))).max().orElse(0);
    String low = InHundred.size(least);
    String high = InHundred.size(most);
    String size = low.equals(high) ? low : low + " to " + high;
    return where + (most < InHundred.LEAST ? high : size) + (sign > 0 ? " too high" : " too low");
  }
}
