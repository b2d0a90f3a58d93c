package org.tallywall.reports.document;

import java.util.Optional;
import org.tallywall.reports.figure.Figure;

/** Where the picture of a figure lies beside a page that cannot hold it. */
@FunctionalInterface
public interface Pictures {

  /**
   * Tells where the picture lies.
   *
   * @param figure the figure
   * @return a way to its file, with the figure's title as words; none if there is no picture
   */
  Optional<Link> of(Figure figure);

  /**
   * Pictures in a folder beside the page, each named as its figure.
   *
   * @param folder the folder, such as {@code charts}
   * @param ending the ending of the files without the point, such as {@code png}
   * @return the ways to them
   */
  static Pictures in(String folder, String ending) {
    return figure -> {
      String file = folder + "/" + figure.caption().stem() + "." + ending;
      return Optional.of(new Link(figure.caption().title(), file));
    };
  }
}
