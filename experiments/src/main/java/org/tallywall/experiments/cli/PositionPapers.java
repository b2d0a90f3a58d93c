package org.tallywall.experiments.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.tallywall.experiments.page.PageFile;
import org.tallywall.reports.document.Document;
import org.tallywall.reports.figure.Figure;

/**
 * Where what was found out of positions is written besides the screen.
 *
 * @param html a page, or null
 * @param markdown a new file of Markdown, or null
 * @param maker what the page says that it was made by
 */
record PositionPapers(Path html, Path markdown, String maker) {
  /** Refuses what may not be written, before any work is done. */
  void check() {
    if (html != null) {
      PageFile.refuseOther(html, maker);
    }
    if (markdown != null) {
      new MarkdownPaper(markdown).check();
    }
  }

  /**
   * Writes what was asked for, and says so.
   *
   * @param page makes the page
   * @param document what stands in the Markdown
   * @param figures its pictures
   */
  void write(
      Supplier<String> page,
      Supplier<Document> document,
      Supplier<List<Figure>> figures,
      Console console) {
    List<Path> written = new ArrayList<>();
    if (html != null) {
      PageFile.write(html, page.get(), maker);
      written.add(html);
    }
    if (markdown != null) {
      written.addAll(new MarkdownPaper(markdown).write(document.get(), figures.get()));
    }
    written.forEach(file -> console.say("Wrote " + file));
  }
}
