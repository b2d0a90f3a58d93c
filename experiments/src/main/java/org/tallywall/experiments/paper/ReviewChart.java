package org.tallywall.experiments.paper;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.experiments.review.ChoiceResult;
import org.tallywall.experiments.review.Ranged;
import org.tallywall.experiments.review.Review;
import org.tallywall.experiments.review.ReviewWords;
import org.tallywall.reports.figure.Axis;
import org.tallywall.reports.figure.Caption;
import org.tallywall.reports.figure.IntervalPlot;
import org.tallywall.reports.figure.IntervalPlot.Panel;
import org.tallywall.reports.figure.IntervalPlot.Row;
import org.tallywall.reports.figure.IntervalPlot.Spot;
import org.tallywall.reports.figure.PlotValue;
import org.tallywall.reports.figure.Slide;
import org.tallywall.reports.figure.Standing;

/** The choices of a review with their ranges: the picture that a teacher shows. */
final class ReviewChart {
  private ReviewChart() {}

  /**
   * Draws a review.
   *
   * @param review the review
   * @param stem the name of the picture's file without the ending
   * @param question what was asked, for the picture that stands alone
   */
  static IntervalPlot of(Review review, String stem, String question) {
    List<Row> rows = new ArrayList<>();
    List<String> sentences = new ArrayList<>();
    for (ChoiceResult one : review.choices()) {
      boolean best = one == review.best();
      rows.add(
          new Row(
              one.choice().text(),
              best ? Standing.BASELINE : Standing.COMPARED,
              List.of(
                  Spot.of(value(one.points())),
                  best ? Spot.words("did best") : Spot.of(value(one.toBest())))));
      sentences.add(
          "%s: %s points a game; %s."
              .formatted(
                  one.choice().text(), ReviewWords.ranged(one.points()), ReviewWords.verdict(one)));
    }
    Caption caption =
        new Caption(
            stem,
            "What each choice is worth",
            String.join(" ", sentences),
            List.of(ReviewWords.rangesHold(review.confidence())),
            new Slide("", question, List.of(ReviewWords.holdsFor(review))));
    Axis points = new Axis("points", "a game");
    Axis apart = new Axis("against the best", "points a game");
    return new IntervalPlot(
        caption,
        "choice",
        List.of(Panel.levels(points), Panel.differences(apart, "as good as the best")),
        rows);
  }

  private static PlotValue value(Ranged number) {
    return new PlotValue(number.value(), number.low(), number.high());
  }
}
