package org.tallywall.reports.html;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tallywall.reports.document.Document;
import org.tallywall.reports.document.Link;
import org.tallywall.reports.document.Part;
import org.tallywall.reports.document.Pictures;
import org.tallywall.reports.figure.Caption;
import org.tallywall.reports.markup.Element;
import org.tallywall.reports.markup.Markup;
import org.tallywall.reports.table.CellText;
import org.tallywall.reports.table.Column;
import org.tallywall.reports.table.Table;

/**
 * Writes a document as a plain fragment of HTML that goes into a word processor or a mail as text
 * and tables: headings, paragraphs, lists and tables with lines, no scripts, only ASCII characters
 * (others as references), so that it reads the same whatever encoding is guessed. The only styles
 * keep its lines short and what is broad within the window, where a browser shows it.
 */
public final class FragmentWriter {
  private static final int PICTURE_WIDTH = 640;
  private static final String PAGE =
      "max-width: 46rem; margin: 1.5rem auto; padding: 0 1rem; line-height: 1.45; overflow-wrap:"
          + " anywhere";

  /** A table breaks its lines between words and is moved sideways where that is not enough. */
  private static final String BROAD = "overflow-x: auto; overflow-wrap: normal";

  private static final String WITHIN = "max-width: 100%; height: auto";
  private static final int LAST_ASCII = 126;
  private static final int DEEPEST_HEADING = 6;

  private final Pictures pictures;
  private final Element page = Element.of("div").with("style", PAGE);
  private final List<String> footnotes = new ArrayList<>();

  private FragmentWriter(Pictures pictures) {
    this.pictures = pictures;
  }

  /**
   * Writes a fragment.
   *
   * @param document what stands in it
   * @param pictures where the pictures of its figures lie
   * @return an element that holds all others, ended by {@code \n}
   */
  public static String text(Document document, Pictures pictures) {
    FragmentWriter writer = new FragmentWriter(pictures);
    writer.write(Element.of("h1", document.title()));
    document.parts().forEach(part -> writer.part(part, 2));
    for (int i = 0; i < writer.footnotes.size(); i++) {
      Element number = Element.of("sup", Integer.toString(i + 1));
      writer.write(Element.of("p").add(number).text(" " + writer.footnotes.get(i)));
    }
    Element window = Element.of("meta").with("name", "viewport");
    window.with("content", "width=device-width, initial-scale=1");
    return ascii(Markup.html(window) + Markup.html(writer.page));
  }

  private void part(Part part, int level) {
    part.match(new Parts(level)).run();
  }

  /** What is written of each kind of part, with the next heading at a level. */
  private final class Parts implements Part.Cases<Runnable> {
    private final int level;

    Parts(int level) {
      this.level = level;
    }

    @Override
    public Runnable answer(Part.Answer answer) {
      return () -> {
        write(Element.of("p").add(Element.of("b", answer.headline())));
        answer.paragraphs().forEach(FragmentWriter.this::paragraph);
      };
    }

    @Override
    public Runnable paragraph(Part.Paragraph paragraph) {
      return () -> FragmentWriter.this.paragraph(paragraph);
    }

    @Override
    public Runnable notice(Part.Notice notice) {
      return () -> write(Element.of("p").add(Element.of("b", notice.text())));
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
      return () -> FragmentWriter.this.grid(grid.table());
    }

    @Override
    public Runnable chart(Part.Chart chart) {
      return () -> picture(chart);
    }

    @Override
    public Runnable listing(Part.Listing listing) {
      return () -> {
        write(Element.of("p", listing.title()));
        write(Element.of("pre", listing.text()).with("style", BROAD));
      };
    }

    @Override
    public Runnable links(Part.Links links) {
      return () ->
          list(links.links().stream().map(l -> l.words() + " (" + l.target() + ")").toList());
    }

    @Override
    public Runnable section(Part.Section section) {
      return () -> {
        write(Element.of("h" + Math.min(level, DEEPEST_HEADING), section.title()));
        section.parts().forEach(inner -> part(inner, level + 1));
      };
    }

    @Override
    public Runnable contents(Part.Contents contents) {
      return () -> {
        // A list of contents leads nowhere in a fragment.
      };
    }

    @Override
    public Runnable drawing(Part.Drawing drawing) {
      return () -> write(Element.of("p", drawing.words()));
    }
  }

  private void paragraph(Part.Paragraph paragraph) {
    Element element = Element.of("p", paragraph.text());
    List<String> numbers = new ArrayList<>();
    for (String footnote : paragraph.footnotes()) {
      footnotes.add(footnote);
      numbers.add(Integer.toString(footnotes.size()));
    }
    if (!numbers.isEmpty()) {
      element.add(Element.of("sup", String.join(", ", numbers)));
    }
    write(element);
  }

  private void list(List<String> items) {
    Element list = Element.of("ul");
    items.forEach(item -> list.add(Element.of("li", item)));
    write(list);
  }

  private void grid(Table table) {
    write(Element.of("p").add(Element.of("b", table.title())));
    Element grid = Element.of("table").with("border", "1");
    grid.with("cellspacing", "0").with("cellpadding", "4");
    grid.add(row("th", table, table.columns().stream().map(Column::heading).toList()));
    CellText.rows(table).forEach(row -> grid.add(row("td", table, row)));
    write(Element.of("div").with("style", BROAD).add(grid));
    table.notes().forEach(note -> write(Element.of("p", note)));
  }

  private static Element row(String name, Table table, List<String> texts) {
    Element row = Element.of("tr");
    for (int i = 0; i < texts.size(); i++) {
      Element cell = Element.of(name, texts.get(i));
      row.add(cell.with("align", table.alignsRight(i) ? "right" : "left"));
    }
    return row;
  }

  /** The description stands in place of the picture; the notes are part of the picture itself. */
  private void picture(Part.Chart chart) {
    Caption caption = chart.figure().caption();
    String words = caption.inPlaceOfThePicture();
    Optional<Link> file = pictures.of(chart.figure());
    if (file.isPresent()) {
      String target = file.get().target().replace(" ", "%20");
      Element image = Element.of("img").with("src", target);
      image.with("width", Integer.toString(PICTURE_WIDTH)).with("alt", words);
      image.with("style", WITHIN);
      write(Element.of("p").add(image));
    } else {
      write(Element.of("p", words));
      caption.notes().forEach(note -> write(Element.of("p", note)));
    }
  }

  private void write(Element element) {
    page.add(element);
  }

  private static String ascii(String text) {
    StringBuilder plain = new StringBuilder();
    text.codePoints()
        .forEach(
            letter -> {
              if (letter <= LAST_ASCII) {
                plain.appendCodePoint(letter);
              } else {
                plain.append("&#").append(letter).append(';');
              }
            });
    return plain.toString();
  }
}
