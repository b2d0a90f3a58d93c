package org.tallywall.reports.figure;

import java.util.List;

/**
 * What a picture says of itself where it stands alone, as on a slide.
 *
 * @param mark what must not be missed wherever the picture stands, such as that its run is not
 *     complete; empty where there is nothing of the kind
 * @param question what was asked; empty where the picture answers no question
 * @param source sentences on where it comes from, below the notes
 */
public record Slide(String mark, String question, List<String> source) {
  /** Nothing at all. */
  public static final Slide NONE = new Slide("", "", List.of());

  /**
   * Takes the texts and copies the sentences.
   *
   * @param mark what must not be missed
   * @param question what was asked
   * @param source where it comes from
   */
  public Slide {
    source = List.copyOf(source);
  }
}
