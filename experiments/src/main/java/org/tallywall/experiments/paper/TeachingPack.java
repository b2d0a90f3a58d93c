package org.tallywall.experiments.paper;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.tallywall.core.random.StreamKey;
import org.tallywall.experiments.error.WrongInputException;
import org.tallywall.experiments.store.WholeFile;
import org.tallywall.reports.document.Document;
import org.tallywall.reports.document.Fold;
import org.tallywall.reports.document.Part;
import org.tallywall.reports.html.PageWriter;
import org.tallywall.reports.papers.Answers;
import org.tallywall.reports.papers.Notes;
import org.tallywall.reports.papers.Provenance;
import org.tallywall.reports.results.Results;
import org.tallywall.reports.results.ResultsFolder;
import org.tallywall.reports.results.ThisProgram;
import org.tallywall.reports.table.Cell;
import org.tallywall.reports.table.Column;
import org.tallywall.reports.table.Table;
import org.tallywall.reports.table.TableBuilder;
import org.tallywall.reports.words.Unfinished;

/** Several studies on one page: a list of what each answers, then one after the other. */
public final class TeachingPack {
  private TeachingPack() {}

  /**
   * Writes a pack.
   *
   * @param folders results folders, at least two, in the order of the pack
   * @param file the page to be written; it must not be there yet
   * @param version the version of this program
   * @throws WrongInputException if one of the folders holds no results, or the page is there
   */
  public static void write(List<Path> folders, Path file, String version) {
    if (Files.exists(file)) {
      throw new WrongInputException("\"" + file + "\" is there already; name another with --out");
    }
    ThisProgram program = new ThisProgram(version, StreamKey.STREAM_VERSION);
    List<Results> all = folders.stream().map(one -> ResultsFolder.read(one, program)).toList();
    WholeFile.write(file, PageWriter.text(document(all)));
  }

  private static Document document(List<Results> all) {
    List<Part> parts = new ArrayList<>();
    parts.add(new Part.Contents());
    parts.add(new Part.Section("What each study answers", Fold.FIXED, List.of(overview(all))));
    for (Results results : all) {
      List<Part> inner = new ArrayList<>(new Provenance(results).notices());
      inner.add(Answers.of(results));
      inner.addAll(Notes.ways(results));
      inner.addAll(Notes.brief(results));
      inner.addAll(Notes.howSure(results));
      parts.add(new Part.Section(results.question(), Fold.FIXED, inner));
    }
    return new Document("Teaching pack: " + all.size() + " studies", parts);
  }

  private static Part overview(List<Results> all) {
    TableBuilder table =
        Table.builder("overview", "The studies of this pack")
            .columns(
                Column.text("question", "What was asked."),
                Column.text("answer", "The answer in a sentence."),
                Column.integer("deals", "deals", "How many deals were played."),
                Column.text("card", "The card."));
    for (Results results : all) {
      table.row(
          Cell.text(results.question()),
          Cell.text(
              Unfinished.mark(results).map(mark -> mark + ". ").orElse("")
                  + Answers.of(results).headline()),
          Cell.whole(results.deals()),
          Cell.text(results.manifest().text("card")));
    }
    return new Part.Grid(table.build(), org.tallywall.reports.document.Handles.COPY);
  }
}
