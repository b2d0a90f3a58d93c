package org.tallywall.experiments.paper;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.core.sheet.PositionSheet;
import org.tallywall.experiments.page.PositionDrawing;
import org.tallywall.experiments.reading.ReadingParts;
import org.tallywall.experiments.review.ReviewWords;
import org.tallywall.experiments.story.SeatNames;
import org.tallywall.reports.document.Document;
import org.tallywall.reports.document.Part;
import org.tallywall.reports.figure.Figure;
import org.tallywall.reports.html.Extras;
import org.tallywall.reports.html.PageWriter;

/**
 * What the others may hold in a position, on paper: the answer, the position drawn, and the tables.
 *
 * @param title what it is called
 * @param sheet the position
 * @param parts what was read
 */
public record ReadingPaper(String title, PositionSheet sheet, ReadingParts parts) {
  /** What a file says that it was made by, if it is such a page. */
  public static final String MAKER = "Tallywall, page of a reading";

  /**
   * The paper as a document.
   *
   * @return the document
   */
  public Document document() {
    List<Part> all = new ArrayList<>();
    all.add(PositionDrawing.tiles());
    all.add(parts.answer());
    all.add(PositionDrawing.of(sheet.view(), sheet.moment(), SeatNames.FROM_EAST));
    all.addAll(leftOut(sheet));
    all.addAll(parts.rest());
    return new Document(title, all);
  }

  /**
   * What the sheet does not say, where there is something.
   *
   * @param sheet the position
   * @return a paragraph, or none
   */
  public static List<Part> leftOut(PositionSheet sheet) {
    return sheet.discardsLeftOut() == 0
        ? List.of()
        : List.of(Part.Paragraph.of(ReviewWords.leftOut(sheet.discardsLeftOut())));
  }

  /**
   * The pictures of the document.
   *
   * @return the figures
   */
  public List<Figure> figures() {
    return List.of(parts.chart());
  }

  /**
   * The paper as a page that needs nothing else.
   *
   * @return the whole file
   */
  public String page() {
    return PageWriter.text(document(), new Extras(PositionDrawing.style(), "", MAKER));
  }
}
