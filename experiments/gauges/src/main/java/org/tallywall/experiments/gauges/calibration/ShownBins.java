package org.tallywall.experiments.gauges.calibration;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.tallywall.experiments.stats.Interval;

/**
 * A table of chances as a page shows it, read back.
 *
 * @param section the heading of the second level above it, such as "Four `reckoner`"
 * @param what what happened, such as "won on it"
 * @param rows its bins
 */
record ShownBins(String section, String what, List<Bins.Row> rows) {
  private static final Pattern HEAD =
      Pattern.compile("\\| said between \\| decisions \\| said, in 100 \\| (.*), in 100 \\|");
  private static final String NUMBER = "(-?[0-9.,]+)";
  private static final Pattern ROW =
      Pattern.compile("\\| N to N \\| N \\| N \\| N \\(N to N\\) \\|".replace("N", NUMBER));

  /** All such tables of a page, from top to bottom. */
  static List<ShownBins> of(String page) {
    List<ShownBins> shown = new ArrayList<>();
    String section = "";
    List<Bins.Row> rows = new ArrayList<>();
    for (String line : page.lines().toList()) {
      Matcher head = HEAD.matcher(line);
      Matcher row = ROW.matcher(line);
      if (line.startsWith("## ")) {
        section = line.substring("## ".length());
      } else if (head.matches()) {
        rows = new ArrayList<>();
        shown.add(new ShownBins(section, head.group(1), rows));
      } else if (row.matches()) {
        rows.add(row(row));
      } else if (!line.startsWith("| ---")) {
        rows = new ArrayList<>();
      }
    }
    return shown;
  }

  private static Bins.Row row(Matcher row) {
    double[] numbers = new double[row.groupCount()];
    for (int at = 0; at < numbers.length; at++) {
      numbers[at] = Double.parseDouble(row.group(at + 1).replace(",", ""));
    }
    return new Bins.Row(
        numbers[0] / 100,
        numbers[1] / 100,
        (long) numbers[2],
        numbers[3] / 100,
        numbers[4] / 100,
        new Interval(numbers[5] / 100, numbers[6] / 100));
  }
}
