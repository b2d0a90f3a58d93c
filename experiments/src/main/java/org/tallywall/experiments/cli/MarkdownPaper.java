package org.tallywall.experiments.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.tallywall.experiments.error.WrongInputException;
import org.tallywall.experiments.store.WholeFile;
import org.tallywall.reports.document.Document;
import org.tallywall.reports.document.Link;
import org.tallywall.reports.figure.Figure;
import org.tallywall.reports.markdown.DocumentWriter;
import org.tallywall.reports.svg.SvgWriter;

/**
 * A new file of Markdown, with its pictures beside it.
 *
 * @param file the file
 */
record MarkdownPaper(Path file) {
  private static final String MD = ".md";

  /** Names that a link in Markdown can hold. */
  private static final Pattern PLAIN = Pattern.compile("[A-Za-z0-9_][A-Za-z0-9_. ()-]*");

  /** Refuses what may not be written, before any work is done. */
  void check() {
    String name = String.valueOf(file.getFileName());
    if (!name.endsWith(MD) || !PLAIN.matcher(name).matches()) {
      throw new WrongInputException(
          "--md takes a name that ends in .md and has plain letters, as in my-review.md");
    }
    NewFile.refuseExisting(file);
  }

  /**
   * Writes it.
   *
   * @param document what stands in it
   * @param figures the pictures of the document
   * @return the files, the Markdown first
   */
  List<Path> write(Document document, List<Figure> figures) {
    List<Path> written = new ArrayList<>(List.of(file));
    for (Figure figure : figures) {
      Path picture = file.resolveSibling(picture(figure));
      NewFile.refuseExisting(picture);
      written.add(picture);
    }
    for (int at = 0; at < figures.size(); at++) {
      WholeFile.write(written.get(at + 1), SvgWriter.text(figures.get(at)));
    }
    String text =
        DocumentWriter.text(
            document, figure -> Optional.of(new Link(figure.caption().title(), picture(figure))));
    WholeFile.write(file, text);
    return written;
  }

  private String picture(Figure figure) {
    String name = file.getFileName().toString();
    return name.substring(0, name.length() - MD.length()) + "-" + figure.caption().stem() + ".svg";
  }
}
