package org.tallywall.experiments.cli;

import java.nio.file.Path;
import java.util.List;
import org.tallywall.experiments.paper.ReviewPaper;
import picocli.CommandLine.Option;

/** Where reviews are written besides the screen, and how much of them is printed. */
final class ReviewPapers {
  @Option(
      names = "--html",
      paramLabel = "FILE",
      description = "Writes a page with the position drawn and a chart of the choices.")
  private Path html;

  @Option(
      names = "--md",
      paramLabel = "FILE",
      description = "Writes the same as Markdown to a new file, charts beside it.")
  private Path markdown;

  @Option(names = "--short", description = "Prints three sentences for a message, and no tables.")
  private boolean brief;

  Path html() {
    return html;
  }

  /** Whether something is wanted that there is of positions alone. */
  boolean ofPositions() {
    return brief || markdown != null;
  }

  boolean brief() {
    return brief;
  }

  /** Refuses what may not be written, before any game is played. */
  void check() {
    files().check();
  }

  private PositionPapers files() {
    return new PositionPapers(html, markdown, ReviewPaper.MAKER);
  }

  /** Writes what was reviewed. */
  void write(List<ReviewPaper.Reviewed> reviewed, Console console) {
    if (!reviewed.isEmpty() && (html != null || markdown != null)) {
      ReviewPaper paper = ReviewPaper.of(reviewed);
      files().write(paper::page, paper::document, paper::figures, console);
    }
  }
}
