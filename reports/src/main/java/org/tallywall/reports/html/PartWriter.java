package org.tallywall.reports.html;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.tallywall.reports.document.Document;
import org.tallywall.reports.document.Fold;
import org.tallywall.reports.document.Link;
import org.tallywall.reports.document.Part;
import org.tallywall.reports.markup.Element;
import org.tallywall.reports.markup.MarkupNode;
import org.tallywall.reports.svg.SvgWriter;

/** Makes the elements of a page, part by part, and numbers what needs a number. */
final class PartWriter implements Part.Cases<MarkupNode> {
  private static final int DEEPEST_HEADING = 6;

  private final Document document;
  private final List<String> footnotes = new ArrayList<>();
  private final Map<String, Integer> labels = new HashMap<>();
  private int sections;
  private int charts;
  private int grids;

  /** The level of the next heading. */
  private int level = 2;

  PartWriter(Document document) {
    this.document = document;
  }

  List<MarkupNode> parts(List<Part> parts) {
    List<MarkupNode> nodes = new ArrayList<>();
    parts.forEach(part -> nodes.add(part.match(this)));
    return nodes;
  }

  @Override
  public MarkupNode notice(Part.Notice notice) {
    return Element.of("p", notice.text()).with("class", "notice").with("role", "note");
  }

  @Override
  public MarkupNode grid(Part.Grid grid) {
    return new GridWriter(grid, "table-" + ++grids).element();
  }

  @Override
  public MarkupNode bullets(Part.Bullets bullets) {
    Element list = Element.of("ul");
    bullets.items().forEach(item -> list.add(Element.of("li", item)));
    return list;
  }

  @Override
  public MarkupNode facts(Part.Facts facts) {
    Element list = Element.of("dl");
    facts
        .facts()
        .forEach(f -> list.add(Element.of("dt", f.name())).add(Element.of("dd", f.value())));
    return list;
  }

  @Override
  public MarkupNode listing(Part.Listing listing) {
    Element lines = Element.of("pre", listing.text()).with("tabindex", "0");
    return lines.with("role", "region").with("aria-label", listing.title());
  }

  @Override
  public MarkupNode drawing(Part.Drawing drawing) {
    return drawing.element();
  }

  @Override
  public Element answer(Part.Answer answer) {
    Element box =
        Element.of("section").with("class", "answer").with("aria-label", unlike("The answer"));
    box.add(Element.of("p", answer.headline()).with("class", "headline"));
    answer.paragraphs().forEach(paragraph -> box.add(paragraph(paragraph)));
    return box;
  }

  @Override
  public Element paragraph(Part.Paragraph paragraph) {
    Element element = Element.of("p", paragraph.text());
    for (String footnote : paragraph.footnotes()) {
      footnotes.add(footnote);
      int number = footnotes.size();
      Element mark = Element.of("a", Integer.toString(number)).with("href", "#note-" + number);
      mark.with("id", "mark-" + number).with("aria-label", "Footnote " + number);
      element.add(Element.of("sup").add(mark));
    }
    return element;
  }

  /** A label that no other place on the page has: the second of a kind gets a number. */
  private String unlike(String label) {
    int number = labels.merge(label, 1, Integer::sum);
    return number == 1 ? label : label + " (" + number + ")";
  }

  @Override
  public Element chart(Part.Chart chart) {
    String title = chart.figure().caption().title();
    String ids = "chart-" + ++charts;
    Element figure = Element.of("figure").with("class", "chart");
    figure.with("aria-label", unlike("Chart: " + title));
    return figure
        .add(SvgWriter.element(chart.figure(), ids).with("class", "broad"))
        .add(SvgWriter.narrow(chart.figure(), ids + "-narrow").with("class", "narrow"));
  }

  @Override
  public Element section(Part.Section section) {
    String id = "section-" + ++sections;
    Element heading = Element.of("h" + level, section.title());
    level = Math.min(level + 1, DEEPEST_HEADING);
    List<MarkupNode> parts = parts(section.parts());
    level = Integer.parseInt(heading.name().substring(1));
    if (section.fold() == Fold.FIXED) {
      return Element.of("section").with("id", id).add(heading).addAll(parts);
    }
    Element fold = Element.of("details").with("id", id);
    if (section.fold() == Fold.OPEN) {
      fold.with("open", "");
    }
    return fold.add(Element.of("summary").add(heading)).addAll(parts);
  }

  @Override
  public Element links(Part.Links links) {
    Element list = Element.of("ul");
    for (Link link : links.links()) {
      Element way = Element.of("a", link.words()).with("href", link.target().replace(" ", "%20"));
      list.add(Element.of("li").add(way));
    }
    return list;
  }

  /** The sections of the page itself; their numbers count those within others too. */
  @Override
  public Element contents(Part.Contents contents) {
    Element list = Element.of("ul");
    int number = 0;
    for (Part part : document.parts()) {
      if (part instanceof Part.Section section) {
        Element way = Element.of("a", section.title()).with("href", "#section-" + (number + 1));
        list.add(Element.of("li").add(way));
      }
      number += sectionsIn(part);
    }
    return Element.of("nav").with("aria-label", "Contents").add(list);
  }

  private static int sectionsIn(Part part) {
    if (part instanceof Part.Section section) {
      return 1 + section.parts().stream().mapToInt(PartWriter::sectionsIn).sum();
    }
    return 0;
  }

  /** The footnotes of all parts written so far; no element if there is none. */
  List<MarkupNode> footnotes() {
    if (footnotes.isEmpty()) {
      return List.of();
    }
    Element list = Element.of("ol");
    for (int i = 0; i < footnotes.size(); i++) {
      Element back = Element.of("a", "↑").with("href", "#mark-" + (i + 1));
      back.with("aria-label", "Back to the text");
      Element note = Element.of("li", footnotes.get(i) + " ").with("id", "note-" + (i + 1));
      list.add(note.add(back));
    }
    Element box = Element.of("section").with("class", "notes").with("aria-label", "Footnotes");
    return List.of(box.add(list));
  }
}
