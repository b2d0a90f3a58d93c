package org.tallywall.reports.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.tallywall.reports.figure.IntervalPlot.Panel;
import org.tallywall.reports.figure.IntervalPlot.Spot;
import org.tallywall.reports.figure.PartBars.Bar;
import org.tallywall.reports.figure.PartBars.Change;
import org.tallywall.reports.figure.SquareMap.Border;
import org.tallywall.reports.figure.SquareMap.Side;
import org.tallywall.reports.figure.SquareMap.Square;

/** What figures refuse, and in which words. */
class FigureTest {
  private static final Caption CAPTION = new Caption("wins", "Wins", "Who wins.", List.of());
  private static final Axis AXIS = new Axis("wins", "in 100 games");
  private static final PlotValue ESTIMATE = new PlotValue(1, 0, 2);

  @Test
  void caption_withACapitalInItsFileName_isRefused() {
    refused(
        () -> new Caption("Wins", "Wins", "Who wins.", List.of()),
        "a figure's file name is made of small letters, digits and single hyphens, as in win-rate;"
            + " not \"Wins\"");
  }

  @Test
  void caption_withoutDescription_isRefused() {
    refused(() -> new Caption("wins", "Wins", " ", List.of()), "figure wins lacks a description");
  }

  @Test
  void bar_thatAddsToLess_isRefused() {
    refused(() -> bars(List.of(60.0, 39.9)), "figure wins, bar A: the parts must add to 100");
  }

  @Test
  void bar_withAPartBelowZero_isRefused() {
    refused(() -> bars(List.of(101.0, -1.0)), "figure wins, bar A: no part is below 0");
  }

  /** Thirds add to 100 but for the last bits of their doubles. */
  @Test
  void bar_ofThirds_isTaken() {
    double third = 100.0 / 3;
    List<String> parts = List.of("a", "b", "c");
    Bar bar = new Bar("A", Standing.COMPARED, List.of(third, third, third));
    assertThatCode(() -> new PartBars(CAPTION, AXIS, parts, List.of(bar), List.of()))
        .doesNotThrowAnyException();
  }

  @Test
  void change_atAPartThatIsNotThere_isRefused() {
    refused(
        () -> bars(List.of(60.0, 40.0), new Change(0, 2, ESTIMATE)),
        "figure wins: a difference belongs to a bar and part that is there");
  }

  @Test
  void change_twiceAtOnePart_isRefused() {
    refused(
        () -> bars(List.of(60.0, 40.0), new Change(0, 1, ESTIMATE), new Change(0, 1, ESTIMATE)),
        "figure wins: a part carries one difference");
  }

  @Test
  void plot_withThreePanels_isRefused() {
    List<Panel> panels = List.of(Panel.levels(AXIS), Panel.levels(AXIS), Panel.levels(AXIS));
    refused(
        () -> new IntervalPlot(CAPTION, "way", panels, List.of()),
        "figure wins: two panels fit, no more");
  }

  @Test
  void row_withASpotTooMany_isRefused() {
    List<Spot> two = List.of(Spot.of(ESTIMATE), Spot.words("none"));
    IntervalPlot.Row row = new IntervalPlot.Row("A", Standing.COMPARED, two);
    refused(
        () -> new IntervalPlot(CAPTION, "way", List.of(Panel.levels(AXIS)), List.of(row)),
        "figure wins: row A needs a spot for every panel");
  }

  @Test
  void curve_thatGoesBack_isRefused() {
    BandCurve.Point first = new BandCurve.Point(2, "2", Standing.COMPARED, ESTIMATE);
    BandCurve.Point second = new BandCurve.Point(1, "1", Standing.COMPARED, ESTIMATE);
    refused(
        () -> new BandCurve(CAPTION, AXIS, AXIS, Scale.LEVEL, "", List.of(first, second)),
        "figure wins: points go from left to right");
  }

  @Test
  void square_whoseRangeHoldsNought_cannotBeCalledClear() {
    PlotValue open = new PlotValue(1, -1, 3);
    assertThat(Square.unclear(new PlotValue(3, 1, 5)).sign()).isZero();
    assertThat(Square.of(new PlotValue(-3, -5, -1)).sign()).isEqualTo(-1);
    assertThatThrownBy(() -> new Square(Optional.of(open), 1))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void border_outsideTheMap_isRefused() {
    Side side = new Side(AXIS, List.of("one"));
    List<List<Square>> squares = List.of(List.of(Square.tooFew()));
    Optional<Border> border = Optional.of(new Border(List.of(2), "the rule"));
    refused(
        () -> new SquareMap(CAPTION, AXIS, side, side, squares, border),
        "figure wins: the border needs a place between columns for every row");
  }

  @Test
  void map_withASquareMissing_isRefused() {
    Side side = new Side(AXIS, List.of("one", "two"));
    List<List<Square>> squares = List.of(List.of(Square.tooFew()), List.of(Square.tooFew()));
    refused(
        () -> new SquareMap(CAPTION, AXIS, side, side, squares, Optional.empty()),
        "figure wins: there must be a square for every column");
  }

  @Test
  void pair_withoutItsText_isRefused() {
    PairedDots.Row row =
        new PairedDots.Row("A", OptionalDouble.of(1), OptionalDouble.empty(), List.of());
    refused(
        () -> new PairedDots(CAPTION, AXIS, "line", "a", "b", List.of("value"), List.of(row)),
        "figure wins: row A needs a text for every heading");
  }

  @Test
  void forecast_ofNothing_isRefused() {
    refused(() -> new CalibrationPlot.Point(1, ESTIMATE, 0), "a point: there must be a forecast");
  }

  @Test
  void exactLines_thatCannotBeDrawn_areRefused() {
    ExactLines.Point first = new ExactLines.Point(1, 5);
    ExactLines.Point second = new ExactLines.Point(2, 6);
    ExactLines.Line line = new ExactLines.Line("A", List.of(first, second));
    refused(
        () -> new ExactLines.Line("A", List.of(second, first)),
        "line A: points go from left to right");
    refused(() -> new ExactLines.Line("A", List.of(first)), "line A: a line needs two points");
    refused(() -> new ExactLines.Point(1, -1), "a point: no value is below 0");
    ExactLines.Line other = new ExactLines.Line("B", List.of(first, new ExactLines.Point(3, 6)));
    refused(
        () -> new ExactLines(CAPTION, AXIS, AXIS, List.of(line, other)),
        "figure wins: all lines go over the same numbers");
    refused(
        () -> new ExactLines(CAPTION, AXIS, AXIS, List.of(line, line, line, line)),
        "figure wins: one to 3 lines fit");
  }

  private static PartBars bars(List<Double> values, Change... changes) {
    Bar bar = new Bar("A", Standing.COMPARED, values);
    return new PartBars(CAPTION, AXIS, List.of("a", "b"), List.of(bar), List.of(changes));
  }

  private static void refused(Runnable making, String message) {
    assertThatThrownBy(making::run)
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage(message);
  }
}
