package org.tallywall.reports.svg;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.tallywall.reports.Golden;
import org.tallywall.reports.RandomFigures;
import org.tallywall.reports.SampleFigures;
import org.tallywall.reports.figure.Axis;
import org.tallywall.reports.figure.Figure;
import org.tallywall.reports.figure.PlotValue;
import org.tallywall.reports.figure.SquareMap;
import org.tallywall.reports.markup.Element;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;

class SvgWriterTest {
  /** Places are written to hundredths. */
  private static final double ROUNDED = 0.011;

  private static final Pattern SIZE = Pattern.compile("font-size=\"([0-9.]+)\"");
  private static final Pattern ID = Pattern.compile(" id=\"([^\"]+)\"");
  private static final Pattern USED = Pattern.compile("url\\(#([^)]+)\\)");

  static List<Figure> figures() {
    return SampleFigures.all();
  }

  @ParameterizedTest
  @MethodSource("figures")
  void figure_drawn_isTheSameBytes(Figure figure) throws IOException {
    Golden.assertSame(SvgWriter.text(figure), "charts/" + figure.caption().stem() + ".svg");
  }

  @ParameterizedTest
  @MethodSource("figures")
  void picture_read_hasItsTitleAndTextAlternative(Figure figure) throws Exception {
    InputSource in = new InputSource(new StringReader(SvgWriter.text(figure)));
    Document document = DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(in);
    org.w3c.dom.Element root = document.getDocumentElement();
    String stem = figure.caption().stem();
    assertThat(root.getAttribute("role")).isEqualTo("img");
    assertThat(root.getAttribute("aria-labelledby"))
        .isEqualTo(stem + "-title " + stem + "-description");
    assertThat(root.getAttribute("width")).isEqualTo("1600");
    org.w3c.dom.Node title = root.getElementsByTagName("title").item(0);
    assertThat(title.getTextContent()).isEqualTo(figure.caption().title());
    org.w3c.dom.Node description = root.getElementsByTagName("desc").item(0);
    assertThat(description.getTextContent()).isEqualTo(figure.caption().description());
  }

  @ParameterizedTest
  @MethodSource("figures")
  void text_ofAPicture_isLargeEnoughForASlide(Figure figure) {
    List<Double> sizes = found(SIZE, SvgWriter.text(figure)).stream().map(Double::valueOf).toList();
    assertThat(sizes).isNotEmpty().allMatch(size -> size >= SvgWriter.LEAST_TEXT);
  }

  @ParameterizedTest
  @MethodSource("figures")
  void identifiers_ofAPicture_beginAsAsked(Figure figure) {
    String text = org.tallywall.reports.markup.Markup.xml(SvgWriter.element(figure, "own"));
    List<String> ids = found(ID, text);
    assertThat(ids).doesNotHaveDuplicates().allMatch(id -> id.startsWith("own-"));
    assertThat(ids).containsAll(found(USED, text));
  }

  @ParameterizedTest
  @MethodSource("figures")
  void picture_drawn_needsNothingFromOutside(Figure figure) {
    String text = SvgWriter.text(figure).replace("http://www.w3.org/2000/svg", "");
    assertThat(text).doesNotContain("http").doesNotContain("href").doesNotContain("<script");
  }

  @ParameterizedTest
  @MethodSource("figures")
  void texts_ofAPicture_neitherLeaveItNorCoverOneAnother(Figure figure) {
    assertReadable(figure);
  }

  /** A thousand figures of random sizes, names and numbers, from a fixed seed. */
  @Test
  void texts_ofRandomPictures_neitherLeaveThemNorCoverOneAnother() {
    SplittableRandom random = new SplittableRandom(20261125);
    for (int i = 0; i < 1000; i++) {
      assertReadable(RandomFigures.next(random));
    }
  }

  /**
   * No difference stands without its range: one that is too long for its square takes two lines.
   */
  @Test
  void range_widerThanItsSquare_takesTwoLines() {
    List<SquareMap.Square> squares = new ArrayList<>();
    List<String> labels = new ArrayList<>();
    for (int away = 1; away <= 5; away++) {
      labels.add(away + " away");
      squares.add(SquareMap.Square.of(new PlotValue(-4200, -5700.5, -2600.5)));
    }
    SquareMap map =
        new SquareMap(
            SampleFigures.map().caption(),
            SampleFigures.map().measure(),
            new SquareMap.Side(new Axis("tiles away", ""), labels),
            new SquareMap.Side(new Axis("tiles left in the wall", ""), List.of("75 to 61")),
            List.of(squares),
            Optional.empty());
    assertThat(found(Pattern.compile(">(−5,800 to|−2,600)<"), SvgWriter.text(map))).hasSize(10);
    assertReadable(map);
  }

  /** In a page, on a phone, and as a file, which says most of itself. */
  private static void assertReadable(Figure figure) {
    assertReadable(figure, SvgWriter.element(figure, "x"));
    assertReadable(figure, SvgWriter.narrow(figure, "x"));
    assertReadable(figure, SvgWriter.alone(figure, "x"));
  }

  private static void assertReadable(Figure figure, Element picture) {
    String[] view = picture.attributes().get("viewBox").split(" ");
    double left = Double.parseDouble(view[0]);
    double height = Double.parseDouble(view[3]);
    double right = left + Double.parseDouble(view[2]);
    List<TextBox> boxes = TextBox.of(picture);
    for (int i = 0; i < boxes.size(); i++) {
      TextBox box = boxes.get(i);
      assertThat(box.left()).as("%s in %s", box, figure).isGreaterThanOrEqualTo(left - ROUNDED);
      assertThat(box.right()).as("%s in %s", box, figure).isLessThanOrEqualTo(right + ROUNDED);
      assertThat(box.bottom()).as("%s in %s", box, figure).isLessThanOrEqualTo(height);
      for (TextBox other : boxes.subList(i + 1, boxes.size())) {
        assertThat(box.covers(other)).as("%s and %s in %s", box, other, figure).isFalse();
      }
    }
  }

  private static List<String> found(Pattern pattern, String text) {
    List<String> found = new ArrayList<>();
    Matcher matcher = pattern.matcher(text);
    while (matcher.find()) {
      found.add(matcher.group(1));
    }
    return found;
  }
}
