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
    int heading = Math.min(level, DEEPEST_HEADING);
    if (part instanceof Part.Answer answer) {
      block("**" + MarkdownText.inLine(answer.headline()) + "**\n");
      answer.paragraphs().forEach(this::paragraph);
    } else if (part instanceof Part.Paragraph paragraph) {
      paragraph(paragraph);
    } else if (part instanceof Part.Section section) {
      block("#".repeat(heading) + " " + MarkdownText.inLine(section.title()) + "\n");
      section.parts().forEach(inner -> part(inner, level + 1));
    } else if (part instanceof Part.Grid grid) {
      block(MarkdownWriter.text(grid.table(), heading));
    } else if (part instanceof Part.Chart chart) {
      picture(chart);
    } else {
      plain(part);
    }
  }

  /** Parts that hold no others. */
  private void plain(Part part) {
    if (part instanceof Part.Notice notice) {
      block("> " + MarkdownText.paragraph(notice.text()) + "\n");
    } else if (part instanceof Part.Bullets bullets) {
      list(bullets.items());
    } else if (part instanceof Part.Facts facts) {
      list(facts.facts().stream().map(fact -> fact.name() + ": " + fact.value()).toList());
    } else if (part instanceof Part.Listing listing) {
      listing(listing);
    } else if (part instanceof Part.Links links) {
      StringBuilder lines = new StringBuilder();
      links.links().forEach(link -> lines.append("- ").append(way(link)).append('\n'));
      block(lines.toString());
    } else if (part instanceof Part.Steps steps) {
      list(steps.steps().stream().map(Part.Step::title).toList());
    } else if (part instanceof Part.Drawing drawing) {
      block(MarkdownText.paragraph(drawing.words()) + "\n");
    } else if (part instanceof Part.Contents) {
      contents();
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
    Matcher ticks = TICKS.matcher(listing.text());
    while (ticks.find()) {
      longest = Math.max(longest, ticks.group().length());
    }
    String fence = "`".repeat(longest + 1);
    String end = listing.text().endsWith("\n") ? "" : "\n";
    block(MarkdownText.paragraph(listing.title()) + "\n");
    block(fence + "\n" + listing.text() + end + fence + "\n");
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
