package org.tallywall.reports.console;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.tallywall.reports.document.Document;
import org.tallywall.reports.document.Link;
import org.tallywall.reports.document.Part;
import org.tallywall.reports.document.Pictures;
import org.tallywall.reports.text.Lettering;
import org.tallywall.reports.text.TextTable;
import org.tallywall.reports.text.Wrap;

/**
 * Writes a document as lines for a console: the same words and tables as on paper. Footnotes are
 * left to paper; of a figure there is the file in which it lies.
 */
public final class ConsoleWriter implements Part.Cases<String> {
  private final Pictures pictures;
  private final int width;
  private final Lettering lettering;

  private ConsoleWriter(Pictures pictures, int width, Lettering lettering) {
    this.pictures = pictures;
    this.width = width;
    this.lettering = lettering;
  }

  /**
   * Writes a document.
   *
   * @param document what stands in it
   * @param pictures where the pictures of its figures lie
   * @param width the most letters in a line, at least {@link TextTable#LEAST_WIDTH}
   * @param lettering which letters the console can show
   * @return lines, each ended by {@code \n}, with an empty one between parts
   */
  public static String text(Document document, Pictures pictures, int width, Lettering lettering) {
    ConsoleWriter writer = new ConsoleWriter(pictures, width, lettering);
    return writer.lines(document.title()) + writer.parts(document.parts());
  }

  private String parts(List<Part> parts) {
    return parts.stream()
        .map(part -> part.match(this))
        .filter(text -> !text.isEmpty())
        .map(text -> "\n" + text)
        .collect(Collectors.joining());
  }

  private String lines(String text) {
    return Wrap.lines(lettering.line(text), width).stream()
        .map(line -> line + "\n")
        .collect(Collectors.joining());
  }

  private String items(List<String> items) {
    StringBuilder text = new StringBuilder();
    for (String item : items) {
      String start = "- ";
      for (String line : Wrap.lines(lettering.line(item), width - start.length())) {
        text.append(start).append(line).append('\n');
        start = "  ";
      }
    }
    return text.toString();
  }

  @Override
  public String answer(Part.Answer answer) {
    StringBuilder text = new StringBuilder(lines(answer.headline()));
    answer.paragraphs().forEach(one -> text.append('\n').append(paragraph(one)));
    return text.toString();
  }

  @Override
  public String paragraph(Part.Paragraph paragraph) {
    return lines(paragraph.text());
  }

  @Override
  public String notice(Part.Notice notice) {
    return lines(notice.text());
  }

  @Override
  public String bullets(Part.Bullets bullets) {
    return items(bullets.items());
  }

  @Override
  public String facts(Part.Facts facts) {
    return items(facts.facts().stream().map(fact -> fact.name() + ": " + fact.value()).toList());
  }

  @Override
  public String grid(Part.Grid grid) {
    return TextTable.text(grid.table(), width, lettering);
  }

  @Override
  public String chart(Part.Chart chart) {
    Optional<Link> file = pictures.of(chart.figure());
    String title = chart.figure().caption().title();
    return file.isEmpty() ? "" : lines("Chart: " + title + " (" + file.get().target() + ")");
  }

  @Override
  public String listing(Part.Listing listing) {
    return lines(listing.title())
        + listing.text().lines().map(this::lines).collect(Collectors.joining());
  }

  @Override
  public String links(Part.Links links) {
    return items(links.links().stream().map(Link::target).toList());
  }

  @Override
  public String section(Part.Section section) {
    return lines(section.title()) + parts(section.parts());
  }

  @Override
  public String contents(Part.Contents contents) {
    return "";
  }

  @Override
  public String drawing(Part.Drawing drawing) {
    return lines(drawing.words());
  }
}
