package org.tallywall.reports.document;

import java.util.List;
import org.tallywall.reports.figure.Figure;
import org.tallywall.reports.markup.Element;
import org.tallywall.reports.table.Table;

/** What stands on a page. All texts are plain: each writer escapes what its format needs. */
public sealed interface Part {

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
  }

  /**
   * Something to know before reading on, such as that a run is not finished.
   *
   * @param text the sentences
   */
  record Notice(String text) implements Part {}

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
  record Grid(Table table, Handles handles) implements Part {}

  /**
   * A figure.
   *
   * @param figure the figure
   */
  record Chart(Figure figure) implements Part {}

  /**
   * Text whose lines and spaces count, such as a file.
   *
   * @param title what it is
   * @param text the lines
   */
  record Listing(String title, String text) implements Part {}

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
  }

  /** A list of the page's own sections, as a way to them. */
  record Contents() implements Part {}

  /**
   * Pages in a page, of which one is seen at a time; the reader goes forward and back.
   *
   * @param name what is gone through, such as "the game"
   * @param steps at least one
   */
  record Steps(String name, List<Step> steps) implements Part {
    /**
     * Takes the steps and copies their list.
     *
     * @param name what is gone through
     * @param steps at least one
     * @throws IllegalArgumentException if there is no step
     */
    public Steps {
      steps = List.copyOf(steps);
      if (steps.isEmpty()) {
        throw new IllegalArgumentException("there is no step to go through");
      }
    }
  }

  /**
   * One step.
   *
   * @param title what happens in it, in a sentence
   * @param parts what is seen
   */
  record Step(String title, List<Part> parts) {
    /**
     * Takes a step and copies its list.
     *
     * @param title what happens in it
     * @param parts what is seen
     */
    public Step {
      parts = List.copyOf(parts);
    }
  }

  /**
   * A drawing of the caller's own, for a page for a browser; other formats have the words alone.
   *
   * @param element what is drawn
   * @param words the same in words
   */
  record Drawing(Element element, String words) implements Part {}
}
