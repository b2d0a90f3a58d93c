package org.tallywall.reports.markdown;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.tallywall.reports.document.Document;
import org.tallywall.reports.document.Link;
import org.tallywall.reports.document.Part;
import org.tallywall.reports.document.Pictures;
import org.tallywall.reports.figure.Caption;
import org.tallywall.reports.table.Visible;

/**
 * Writes a document as Markdown. Footnotes are written as GitHub reads them; pictures lie beside
 * the file.
 */
public final class DocumentWriter {
  private static final Pattern TICKS = Pattern.compile("`+");
  private static final int SHORTEST_FENCE = 3;
  private static final int DEEPEST_HEADING = 6;

  private final Document document;
  private final Pictures pictures;
  private final StringBuilder out = new StringBuilder();
  private final List<String> footnotes = new ArrayList<>();

  private DocumentWriter(Document document, Pictures pictures) {
    this.document = document;
    this.pictures = pictures;
  }

  /**
   * Writes a document.
   *
   * @param document what stands in it
   * @param pictures where the pictures of its figures lie
   * @return lines, each ended by {@code \n}
   */
  public static String text(Document document, Pictures pictures) {
    DocumentWriter writer = new DocumentWriter(document, pictures);
    writer.out.append("# ").append(MarkdownText.inLine(document.title())).append('\n');
    document.parts().forEach(part -> writer.part(part, 2));
    for (int i = 0; i < writer.footnotes.size(); i++) {
      String note = MarkdownText.paragraph(writer.footnotes.get(i));
      writer.block("[^" + (i + 1) + "]: " + note + "\n");
    }
    return writer.out.toString();
  }

  private void part(Part part, int level) {
    part.match(new Parts(level)).run();
  }

  /** What is written of each kind of part, with the next heading at a level. */
  private final class Parts implements Part.Cases<Runnable> {
    private final int level;
    private final int heading;

    Parts(int level) {
      this.level = level;
      this.heading = Math.min(level, DEEPEST_HEADING);
    }

    @Override
    public Runnable answer(Part.Answer answer) {
      return () -> {
        block("**" + MarkdownText.inLine(answer.headline()) + "**\n");
        answer.paragraphs().forEach(DocumentWriter.this::paragraph);
      };
    }

    @Override
    public Runnable paragraph(Part.Paragraph paragraph) {
      return () -> DocumentWriter.this.paragraph(paragraph);
    }

    @Override
    public Runnable notice(Part.Notice notice) {
      return () -> block("> " + MarkdownText.paragraph(notice.text()) + "\n");
    }

    @Override
    public Runnable bullets(Part.Bullets bullets) {
      return () -> list(bullets.items());
    }

    @Override
    public Runnable facts(Part.Facts facts) {
      return () -> list(facts.facts().stream().map(f -> f.name() + ": " + f.value()).toList());
    }

    @Override
    public Runnable grid(Part.Grid grid) {
      return () -> block(MarkdownWriter.text(grid.table(), heading));
    }

    @Override
    public Runnable chart(Part.Chart chart) {
      return () -> picture(chart);
    }

    @Override
    public Runnable listing(Part.Listing listing) {
      return () -> DocumentWriter.this.listing(listing);
    }

    @Override
    public Runnable links(Part.Links links) {
      return () -> {
        StringBuilder lines = new StringBuilder();
        links.links().forEach(link -> lines.append("- ").append(way(link)).append('\n'));
        block(lines.toString());
      };
    }

    @Override
    public Runnable section(Part.Section section) {
      return () -> {
        block("#".repeat(heading) + " " + MarkdownText.inLine(section.title()) + "\n");
        section.parts().forEach(inner -> part(inner, level + 1));
      };
    }

    @Override
    public Runnable contents(Part.Contents contents) {
      return DocumentWriter.this::contents;
    }

    @Override
    public Runnable drawing(Part.Drawing drawing) {
      return () -> block(MarkdownText.paragraph(drawing.words()) + "\n");
    }
  }

  private void paragraph(Part.Paragraph paragraph) {
    StringBuilder line = new StringBuilder(MarkdownText.paragraph(paragraph.text()));
    for (String footnote : paragraph.footnotes()) {
      footnotes.add(footnote);
      line.append("[^").append(footnotes.size()).append(']');
    }
    block(line.append('\n').toString());
  }

  private void list(List<String> items) {
    StringBuilder lines = new StringBuilder();
    items.forEach(item -> lines.append("- ").append(MarkdownText.paragraph(item)).append('\n'));
    block(lines.toString());
  }

  private void contents() {
    List<String> titles = new ArrayList<>();
    for (Part part : document.parts()) {
      if (part instanceof Part.Section section) {
        titles.add(section.title());
      }
    }
    list(titles);
  }

  private void listing(Part.Listing listing) {
    int longest = SHORTEST_FENCE - 1;
    String text = Visible.text(listing.text());
    Matcher ticks = TICKS.matcher(text);
    while (ticks.find()) {
      longest = Math.max(longest, ticks.group().length());
    }
    String fence = "`".repeat(longest + 1);
    String end = text.endsWith("\n") ? "" : "\n";
    block(MarkdownText.paragraph(listing.title()) + "\n");
    block(fence + "\n" + text + end + fence + "\n");
  }

  /** The description stands in place of the picture; the notes are part of the picture itself. */
  private void picture(Part.Chart chart) {
    Caption caption = chart.figure().caption();
    Optional<Link> file = pictures.of(chart.figure());
    if (file.isPresent()) {
      String words = MarkdownText.inLine(caption.inPlaceOfThePicture());
      block("![" + words + "](<" + file.get().target() + ">)\n");
    } else {
      block(MarkdownText.paragraph(caption.inPlaceOfThePicture()) + "\n");
      caption.notes().forEach(note -> block(MarkdownText.paragraph(note) + "\n"));
    }
  }

  /** A link whose target may hold spaces and brackets (CommonMark 0.31, section 6.3). */
  private static String way(Link link) {
    return "[" + MarkdownText.inLine(link.words()) + "](<" + link.target() + ">)";
  }

  private void block(String text) {
    out.append('\n').append(text);
  }
}
