package org.tallywall.experiments.cli;

import java.util.List;
import org.tallywall.experiments.paper.SchoolPaper;
import org.tallywall.experiments.school.Counts;
import org.tallywall.experiments.school.Judged;
import org.tallywall.experiments.school.School;
import org.tallywall.experiments.school.SchoolFolder;
import org.tallywall.experiments.school.SchoolWords;
import org.tallywall.reports.csv.CsvWriter;
import org.tallywall.reports.svg.SvgWriter;

/** Writes what the school found into its folder. */
final class SchoolPapers {
  /** Written last, so that where it is all others are. */
  private static final String REPORT = "report.html";

  private SchoolPapers() {}

  /** Writes everything, unless it was written before: then somebody may have worked on it. */
  static void write(
      SchoolPaper paper, SchoolFolder folder, School school, Counts counts, Console console) {
    if (folder.has(REPORT)) {
      console.say("All of it was there already: " + folder.path());
      return;
    }
    List<Judged> dearest = paper.result().dearest();
    for (int at = 0; at < dearest.size(); at++) {
      Judged one = dearest.get(at);
      folder.write(
          SchoolPaper.DEAREST + "/" + paper.names().get(at),
          SchoolWords.above(one) + school.sheet(counts, one.number()));
    }
    folder.write("kinds.csv", CsvWriter.text(paper.kinds()));
    folder.write("dearest.csv", CsvWriter.text(paper.dearest()));
    folder.write(
        "charts/" + paper.figure().caption().stem() + ".svg", SvgWriter.text(paper.figure()));
    folder.write("notes.md", paper.notes());
    folder.write(REPORT, paper.page());
    console.say("Wrote " + folder.path());
  }
}
