package org.tallywall.reports.charts;

import java.util.List;
import org.tallywall.reports.figure.Caption;
import org.tallywall.reports.results.Results;
import org.tallywall.reports.words.Below;

/** What stands around every chart of a study, so that none is without it. */
final class Captions {
  private Captions() {}

  static Caption of(
      Results results, String stem, String title, String description, List<String> notes) {
    return new Caption(stem, title, description, notes, Below.slide(results));
  }
}
