package org.tallywall.reports.document;

import java.util.List;
import org.tallywall.reports.figure.Figure;
import org.tallywall.reports.markup.Element;
import org.tallywall.reports.table.Table;

/**
 * What stands on a page. All texts are plain: each writer escapes what its format needs. A writer
 * says in {@link Cases} what becomes of each kind, so that the compiler names every writer that a
 * new kind has to be added to.
 */
public sealed interface Part {
  /**
   * What becomes of a part of each kind.
   *
   * @param <R> what it becomes
   */
  interface Cases<R> {
    /**
     * What becomes of the answer.
     *
     * @param answer the part
     * @return what it becomes
     */
    R answer(Answer answer);

    /**
     * What becomes of sentences.
     *
     * @param paragraph the part
     * @return what it becomes
     */
    R paragraph(Paragraph paragraph);

    /**
     * What becomes of a notice.
     *
     * @param notice the part
     * @return what it becomes
     */
    R notice(Notice notice);

    /**
     * What becomes of a list.
     *
     * @param bullets the part
     * @return what it becomes
     */
    R bullets(Bullets bullets);

    /**
     * What becomes of names with their values.
     *
     * @param facts the part
     * @return what it becomes
     */
    R facts(Facts facts);

    /**
     * What becomes of a table.
     *
     * @param grid the part
     * @return what it becomes
     */
    R grid(Grid grid);

    /**
     * What becomes of a figure.
     *
     * @param chart the part
     * @return what it becomes
     */
    R chart(Chart chart);

    /**
     * What becomes of text whose lines count.
     *
     * @param listing the part
     * @return what it becomes
     */
    R listing(Listing listing);

    /**
     * What becomes of ways to files.
     *
     * @param links the part
     * @return what it becomes
     */
    R links(Links links);

    /**
     * What becomes of a section.
     *
     * @param section the part
     * @return what it becomes
     */
    R section(Section section);

    /**
     * What becomes of the list of sections.
     *
     * @param contents the part
     * @return what it becomes
     */
    R contents(Contents contents);

    /**
     * What becomes of a drawing of the caller's own.
     *
     * @param drawing the part
     * @return what it becomes
     */
    R drawing(Drawing drawing);
  }

  /**
   * What becomes of this part.
   *
   * @param cases what becomes of each kind
   * @param <R> what it becomes
   * @return what becomes of this kind
   */
  <R> R match(Cases<R> cases);

  /**
   * The answer, in front of everything else.
   *
   * @param headline one sentence
   * @param paragraphs what follows from it and for whom it holds
   */
  record Answer(String headline, List<Paragraph> paragraphs) implements Part {
    /**
     * Takes an answer and copies its list.
     *
     * @param headline one sentence
     * @param paragraphs what follows
     */
    public Answer {
      paragraphs = List.copyOf(paragraphs);
    }

    @Override
    public <R> R match(Cases<R> cases) {
      return cases.answer(this);
    }
  }

  /**
   * Sentences, perhaps with footnotes that are numbered through the page and stand at its end.
   *
   * @param text the sentences
   * @param footnotes their footnotes
   */
  record Paragraph(String text, List<String> footnotes) implements Part {
    /**
     * Takes sentences and copies the list.
     *
     * @param text the sentences
     * @param footnotes their footnotes
     */
    public Paragraph {
      footnotes = List.copyOf(footnotes);
    }

    /**
     * Makes a paragraph.
     *
     * @param text the sentences
     * @param footnotes their footnotes
     * @return the paragraph
     */
    public static Paragraph of(String text, String... footnotes) {
      return new Paragraph(text, List.of(footnotes));
    }

    @Override
    public <R> R match(Cases<R> cases) {
      return cases.paragraph(this);
    }
  }

  /**
   * Something to know before reading on, such as that a run is not finished.
   *
   * @param text the sentences
   */
  record Notice(String text) implements Part {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.notice(this);
    }
  }

  /**
   * A list.
   *
   * @param items its items
   */
  record Bullets(List<String> items) implements Part {
    /**
     * Copies the list.
     *
     * @param items its items
     */
    public Bullets {
      items = List.copyOf(items);
    }

    @Override
    public <R> R match(Cases<R> cases) {
      return cases.bullets(this);
    }
  }

  /**
   * Names with their values, such as where results come from.
   *
   * @param facts the pairs in their order
   */
  record Facts(List<Fact> facts) implements Part {
    /**
     * Copies the list.
     *
     * @param facts the pairs
     */
    public Facts {
      facts = List.copyOf(facts);
    }

    @Override
    public <R> R match(Cases<R> cases) {
      return cases.facts(this);
    }
  }

  /**
   * A name with its value.
   *
   * @param name the name
   * @param value the value
   */
  record Fact(String name, String value) {}

  /**
   * A table with its title and notes.
   *
   * @param table the table
   * @param handles what a reader can do with it
   */
  record Grid(Table table, Handles handles) implements Part {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.grid(this);
    }
  }

  /**
   * A figure.
   *
   * @param figure the figure
   */
  record Chart(Figure figure) implements Part {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.chart(this);
    }
  }

  /**
   * Text whose lines and spaces count, such as a file.
   *
   * @param title what it is
   * @param text the lines
   */
  record Listing(String title, String text) implements Part {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.listing(this);
    }
  }

  /**
   * Ways to files that lie beside the page.
   *
   * @param links the ways in their order
   */
  record Links(List<Link> links) implements Part {
    /**
     * Copies the list.
     *
     * @param links the ways
     */
    public Links {
      links = List.copyOf(links);
    }

    @Override
    public <R> R match(Cases<R> cases) {
      return cases.links(this);
    }
  }

  /**
   * A section with a heading.
   *
   * @param title the heading
   * @param fold whether it can be folded away
   * @param parts what stands in it
   */
  record Section(String title, Fold fold, List<Part> parts) implements Part {
    /**
     * Takes a section and copies its list.
     *
     * @param title the heading
     * @param fold whether it can be folded away
     * @param parts what stands in it
     */
    public Section {
      parts = List.copyOf(parts);
    }

    /**
     * Makes a section that is always to be seen.
     *
     * @param title the heading
     * @param parts what stands in it
     * @return the section
     */
    public static Section of(String title, Part... parts) {
      return new Section(title, Fold.FIXED, List.of(parts));
    }

    @Override
    public <R> R match(Cases<R> cases) {
      return cases.section(this);
    }
  }

  /** A list of the page's own sections, as a way to them. */
  record Contents() implements Part {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.contents(this);
    }
  }

  /**
   * A drawing of the caller's own, for a page for a browser; other formats have the words alone.
   *
   * @param element what is drawn
   * @param words the same in words
   */
  record Drawing(Element element, String words) implements Part {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.drawing(this);
    }
  }
}
