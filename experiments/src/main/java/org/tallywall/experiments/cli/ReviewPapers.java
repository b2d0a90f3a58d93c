package org.tallywall.experiments.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.tallywall.experiments.error.WrongInputException;
import org.tallywall.experiments.page.PageFile;
import org.tallywall.experiments.paper.ReviewPaper;
import org.tallywall.experiments.store.WholeFile;
import org.tallywall.reports.document.Link;
import org.tallywall.reports.figure.Figure;
import org.tallywall.reports.markdown.DocumentWriter;
import org.tallywall.reports.svg.SvgWriter;
import picocli.CommandLine.Option;

/** Where reviews are written besides the screen, and how much of them is printed. */
final class ReviewPapers {
  private static final String MD = ".md";

  /** Names that a link in Markdown can hold. */
  private static final Pattern PLAIN = Pattern.compile("[A-Za-z0-9_][A-Za-z0-9_. ()-]*");

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
    if (html != null) {
      PageFile.refuseOther(html, ReviewPaper.MAKER);
    }
    if (markdown != null) {
      String name = String.valueOf(markdown.getFileName());
      if (!name.endsWith(MD) || !PLAIN.matcher(name).matches()) {
        throw new WrongInputException(
            "--md takes a name that ends in .md and has plain letters, as in my-review.md");
      }
      NewFile.refuseExisting(markdown);
    }
  }

  /** Writes what was reviewed. */
  void write(List<ReviewPaper.Reviewed> reviewed, Console console) {
    if (reviewed.isEmpty() || (html == null && markdown == null)) {
      return;
    }
    ReviewPaper paper = ReviewPaper.of(reviewed);
    List<Path> written = new ArrayList<>();
    if (html != null) {
      PageFile.write(html, paper.page(), ReviewPaper.MAKER);
      written.add(html);
    }
    if (markdown != null) {
      written.addAll(markdown(paper));
    }
    written.forEach(file -> console.say("Wrote " + file));
  }

  private List<Path> markdown(ReviewPaper paper) {
    List<Path> written = new ArrayList<>(List.of(markdown));
    for (Figure figure : paper.figures()) {
      Path picture = markdown.resolveSibling(picture(figure));
      NewFile.refuseExisting(picture);
      written.add(picture);
    }
    for (int at = 0; at < paper.figures().size(); at++) {
      WholeFile.write(written.get(at + 1), SvgWriter.text(paper.figures().get(at)));
    }
    String text =
        DocumentWriter.text(
            paper.document(),
            figure -> Optional.of(new Link(figure.caption().title(), picture(figure))));
    WholeFile.write(markdown, text);
    return written;
  }

  private String picture(Figure figure) {
    String name = markdown.getFileName().toString();
    return name.substring(0, name.length() - MD.length()) + "-" + figure.caption().stem() + ".svg";
  }
}
