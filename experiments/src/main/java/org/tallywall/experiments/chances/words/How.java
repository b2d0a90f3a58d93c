package org.tallywall.experiments.chances.words;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.reports.document.Fold;
import org.tallywall.reports.document.Part;

/**
 * How a sum is computed and what it takes for granted.
 *
 * @param formula the formulas
 * @param letters what their letters stand for
 * @param source where it comes from
 * @param granted what it takes for granted
 */
record How(List<String> formula, String letters, String source, List<String> granted) {
  /** The source of every sum of draws. */
  static final String HYPERGEOMETRIC =
      "the hypergeometric distribution, as in Montgomery and Runger, Applied Statistics and"
          + " Probability for Engineers, 3rd edition, section 3-8; computed with Commons Math.";

  /** What every sum about unseen tiles takes for granted. */
  static final String ALIKE =
      "Every unseen tile is taken to be as likely in one place as in any other. What players keep,"
          + " pass, and throw makes some tiles likelier than others, and this sum does not know it.";

  static final String CHOOSE = "C(a, b) is the number of ways to choose b out of a tiles.";

  /** What every answer and chart says of itself. */
  static final String EXACT = "This is an exact sum about tiles; no game was played for it.";

  How {
    formula = List.copyOf(formula);
    granted = List.copyOf(granted);
  }

  /** A sum of draws; its letters are explained in a sentence. */
  static How ofDraws(String letters, String... granted) {
    return new How(
        List.of(
            "exactly k: C(m, k) \u00d7 C(n \u2212 m, d \u2212 k) / C(n, d)",
            "at least one: 1 \u2212 C(n \u2212 m, d) / C(n, d); at least more: the sum of all exactly k"
                + " from there on",
            "on average: d \u00d7 m / n"),
        letters + " " + CHOOSE,
        HYPERGEOMETRIC,
        List.of(granted));
  }

  /** The two sections at the end of an answer. */
  List<Part> parts() {
    List<Part> lines = new ArrayList<>();
    lines.add(new Part.Bullets(formula));
    lines.add(Part.Paragraph.of(letters));
    lines.add(Part.Paragraph.of("Source: " + source));
    return List.of(
        new Part.Section("The formula", Fold.FIXED, lines),
        Part.Section.of(
            "What it takes for granted",
            Part.Paragraph.of(EXACT + " " + String.join(" ", granted))));
  }
}
