package org.tallywall.experiments.paper;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.core.card.Card;
import org.tallywall.core.sheet.PositionSheet;
import org.tallywall.core.sheet.SheetWriter;
import org.tallywall.experiments.page.PositionDrawing;
import org.tallywall.experiments.review.AmongTables;
import org.tallywall.experiments.review.Review;
import org.tallywall.experiments.review.ReviewTable;
import org.tallywall.experiments.review.ReviewWords;
import org.tallywall.experiments.story.MomentWords;
import org.tallywall.experiments.story.SeatNames;
import org.tallywall.experiments.story.TypedTiles;
import org.tallywall.experiments.words.Words;
import org.tallywall.reports.document.Document;
import org.tallywall.reports.document.Fold;
import org.tallywall.reports.document.Handles;
import org.tallywall.reports.document.Part;
import org.tallywall.reports.figure.Figure;
import org.tallywall.reports.html.Extras;
import org.tallywall.reports.html.PageWriter;
import org.tallywall.reports.table.Table;

/** Reviews of positions on paper: each position, what its choices are worth, and the verdict. */
public final class ReviewPaper {
  /** What a file says that it was made by, if it is such a page. */
  public static final String MAKER = "Tallywall, page of a review";

  private static final SeatNames SEATS = SeatNames.FROM_EAST;

  private final Card card;
  private final String title;
  private final List<Figure> figures = new ArrayList<>();
  private final List<Part> parts = new ArrayList<>();

  private ReviewPaper(Card card, String title) {
    this.card = card;
    this.title = title;
  }

  /**
   * A position with what came out of it.
   *
   * @param name what the position is called
   * @param sheet the position
   * @param among its reviews, at one table or several
   */
  public record Reviewed(String name, PositionSheet sheet, AmongTables among) {}

  /**
   * Lays out some reviews.
   *
   * @param reviewed one or more, on one card
   * @return the paper
   * @throws IllegalArgumentException if there is none
   */
  public static ReviewPaper of(List<Reviewed> reviewed) {
    if (reviewed.isEmpty()) {
      throw new IllegalArgumentException("there is no review");
    }
    Card card = reviewed.get(0).sheet().view().table().hands().card();
    boolean single = reviewed.size() == 1;
    ReviewPaper paper =
        new ReviewPaper(card, single ? reviewed.get(0).name() : "Positions reviewed");
    paper.parts.add(PositionDrawing.tiles());
    if (single) {
      paper.parts.addAll(paper.position(reviewed.get(0), ""));
    } else {
      paper.parts.add(new Part.Contents());
      for (int at = 0; at < reviewed.size(); at++) {
        Reviewed one = reviewed.get(at);
        paper.parts.add(
            new Part.Section(one.name(), Fold.FIXED, paper.position(one, "-" + (at + 1))));
      }
    }
    return paper;
  }

  private List<Part> position(Reviewed reviewed, String mark) {
    List<Part> all = new ArrayList<>();
    PositionSheet sheet = reviewed.sheet();
    all.add(PositionDrawing.of(sheet.view(), sheet.moment(), SEATS));
    if (sheet.discardsLeftOut() > 0) {
      all.add(Part.Paragraph.of(ReviewWords.leftOut(sheet.discardsLeftOut())));
    }
    List<Review> reviews = reviewed.among().reviews();
    String question = MomentWords.question(sheet.moment(), SEATS, new TypedTiles());
    for (int at = 0; at < reviews.size(); at++) {
      if (reviews.size() == 1) {
        String where = mark.isEmpty() ? "" : ": " + reviewed.name();
        all.addAll(review(reviews.get(at), "choices" + mark, question, where));
      } else {
        String stem = "choices" + mark + "-among-" + (at + 1);
        String title = "Among " + reviewed.among().names().get(at);
        String where = ", among " + reviewed.among().names().get(at);
        where = mark.isEmpty() ? where : where + ": " + reviewed.name();
        all.add(
            new Part.Section(title, Fold.FIXED, review(reviews.get(at), stem, question, where)));
      }
    }
    if (reviews.size() > 1) {
      all.add(Part.Paragraph.of(ReviewWords.depends(reviewed.among())));
      all.add(new Part.Grid(ReviewTable.sideBySide(reviewed.among()), Handles.COPY));
    }
    if (!sheet.because().isEmpty()) {
      all.add(Part.Paragraph.of("The sheet says: " + sheet.because()));
    }
    all.add(typed(sheet));
    return all;
  }

  /** A review; where it stands among others, its tables say so. */
  private List<Part> review(Review review, String stem, String question, String where) {
    List<Part> all = new ArrayList<>();
    all.add(new Part.Answer(ReviewWords.headline(review), List.of()));
    Figure chart = ReviewChart.of(review, stem, question);
    figures.add(chart);
    all.add(new Part.Chart(chart));
    all.add(grid(ReviewTable.worth(review), where));
    all.add(grid(ReviewTable.endings(review, card), where));
    all.add(Part.Paragraph.of(ReviewWords.holdsFor(review)));
    String ended = ReviewWords.ended(review);
    if (!ended.isEmpty()) {
      all.add(Part.Paragraph.of(ended));
    }
    all.add(
        new Part.Facts(
            List.of(
                new Part.Fact("card", card.name()),
                new Part.Fact("players, East first", String.join(", ", review.players())),
                new Part.Fact("games", Words.grouped(review.games())),
                new Part.Fact("guesses of the hidden tiles", Words.grouped(review.worlds())),
                new Part.Fact("seed", String.valueOf(review.seed())))));
    return all;
  }

  private static Part grid(Table table, String where) {
    Table told =
        new Table(
            table.stem(), table.title() + where, table.columns(), table.rows(), table.notes());
    return new Part.Grid(told, Handles.COPY);
  }

  private static Part typed(PositionSheet sheet) {
    String title = "The position as a sheet";
    String text = SheetWriter.text(sheet.view(), sheet.moment());
    return new Part.Section(title, Fold.CLOSED, List.of(new Part.Listing(title, text)));
  }

  /**
   * The paper as a document.
   *
   * @return the document
   */
  public Document document() {
    return new Document(title, parts);
  }

  /**
   * The pictures of the document, in their order.
   *
   * @return the figures
   */
  public List<Figure> figures() {
    return List.copyOf(figures);
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
