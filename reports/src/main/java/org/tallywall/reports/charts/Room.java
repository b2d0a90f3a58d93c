package org.tallywall.reports.charts;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.reports.results.Results;
import org.tallywall.reports.table.CellText;
import org.tallywall.reports.words.Below;

/** How much fits into a picture that somebody looks at. */
final class Room {
  /** The most rows, bars, points or squares beside each other. */
  static final int MOST = 60;

  private Room() {}

  /** The first of them. */
  static <T> List<T> first(List<T> all) {
    return all.size() > MOST ? all.subList(0, MOST) : all;
  }

  /** What stands below a chart, with a word on what was left out. */
  static List<String> below(Results results, int all) {
    List<String> notes = new ArrayList<>(Below.chart(results));
    if (all > MOST) {
      notes.add(
          0,
          "This chart has the first %s of %s; the files have them all."
              .formatted(MOST, CellText.grouped(Integer.toString(all))));
    }
    return notes;
  }
}
