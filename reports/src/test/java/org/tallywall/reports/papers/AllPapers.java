package org.tallywall.reports.papers;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tallywall.reports.charts.Charts;
import org.tallywall.reports.console.ConsoleWriter;
import org.tallywall.reports.document.Document;
import org.tallywall.reports.html.FragmentWriter;
import org.tallywall.reports.html.PageWriter;
import org.tallywall.reports.markdown.DocumentWriter;
import org.tallywall.reports.results.Results;
import org.tallywall.reports.results.ResultsFolder;
import org.tallywall.reports.results.ThisProgram;
import org.tallywall.reports.svg.SvgWriter;
import org.tallywall.reports.text.Lettering;

/** All that is made of a results folder, but for pictures as dots. */
final class AllPapers {
  private static final int WIDTH = 80;

  private AllPapers() {}

  static List<String> of(Path folder) {
    Results results = ResultsFolder.read(folder, new ThisProgram("0.1.0", 1));
    List<String> papers = new ArrayList<>();
    Charts.of(results).forEach(figure -> papers.add(SvgWriter.text(figure)));
    Document notes = Notes.of(results);
    papers.add(DocumentWriter.text(notes, figure -> Optional.empty()));
    papers.add(FragmentWriter.text(notes, figure -> Optional.empty()));
    papers.add(ConsoleWriter.text(notes, figure -> Optional.empty(), WIDTH, Lettering.UNICODE));
    papers.add(PageWriter.text(new ReportPage(results, Map.of(), List.of()).document()));
    return papers;
  }
}
