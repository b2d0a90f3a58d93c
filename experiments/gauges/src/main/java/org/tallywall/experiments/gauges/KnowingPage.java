package org.tallywall.experiments.gauges;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.NoSuchElementException;
import java.util.Optional;
import org.tallywall.core.random.StreamKey;
import org.tallywall.experiments.study.Arm;
import org.tallywall.reports.figure.Axis;
import org.tallywall.reports.figure.Caption;
import org.tallywall.reports.figure.IntervalPlot;
import org.tallywall.reports.figure.PlotValue;
import org.tallywall.reports.figure.Sign;
import org.tallywall.reports.figure.Slide;
import org.tallywall.reports.figure.Standing;
import org.tallywall.reports.markdown.MarkdownWriter;
import org.tallywall.reports.results.Ranged;
import org.tallywall.reports.results.Results;
import org.tallywall.reports.results.ResultsFolder;
import org.tallywall.reports.results.ThisProgram;
import org.tallywall.reports.svg.SvgWriter;
import org.tallywall.reports.table.Cell;
import org.tallywall.reports.table.Column;
import org.tallywall.reports.table.Table;
import org.tallywall.reports.table.TableBuilder;
import org.tallywall.reports.words.Compared;
import org.tallywall.strategies.habit.KnowsHabit;

/**
 * Writes the section of {@code strategies/README.md} that says what it would be worth to know
 * something of the others, and its picture, of studies that were played before. {@code
 * strategies/knowing} does both.
 */
public final class KnowingPage {
  private static final ThisProgram ANY = new ThisProgram("", StreamKey.STREAM_VERSION);
  private static final String FAIR = "watchful";
  private static final String ALL_SEEN = "reads all that can be seen";
  private static final String NEVER = "never the winning tile";
  private static final String FEW = "too few deals came out differently";
  private static final List<String> PICTURED =
      List.of(FAIR, ALL_SEEN, "who is one away", NEVER, "all racks");
  private static final List<String> PAYMENTS =
      List.of("the usual payments", "the discarder pays for all");

  /**
   * The studies by the usual payments, and those where the discarder pays for all, card by card.
   */
  private final List<List<Results>> played;

  /**
   * A section.
   *
   * @param played for each payment the results, one for each card
   */
  KnowingPage(List<List<Results>> played) {
    this.played = played;
  }

  /**
   * Writes the section and the picture.
   *
   * @param args the page, the picture, and for each card two results folders: by the usual
   *     payments, and where the discarder pays for all
   * @throws IOException if a file cannot be read or written
   */
  public static void main(String[] args) throws IOException {
    MarkedPage marked = new MarkedPage(Path.of(args[0]), "knowing");
    List<List<Results>> played = List.of(new ArrayList<>(), new ArrayList<>());
    for (int at = 2; at < args.length; at++) {
      played.get(at % 2).add(ResultsFolder.read(Path.of(args[at]), ANY));
    }
    KnowingPage page = new KnowingPage(played);
    Path picture = Path.of(args[1]);
    IntervalPlot figure = page.figure();
    Files.writeString(picture, SvgWriter.text(figure), StandardCharsets.UTF_8);
    marked.write(page.text(picture.getFileName().toString(), figure));
  }

  /** The section, with the picture under its name. */
  String text(String picture, IntervalPlot figure) {
    Results first = played.get(0).get(0);
    StringBuilder text = new StringBuilder();
    text.append(
        Paragraph.of(
            String.format(
                Locale.ROOT,
                "One seat at a table of `reckoner`, in each seat of the same %,d deals on each card"
                    + " (seed %d), compared with a `reckoner` in that seat; ranges of %s %% each."
                    + " Where the discarder pays for all, `score.discarder` is 4 and"
                    + " `score.othersOnDiscard` 0. `watchful` reads what the others laid"
                    + " open and threw, who reads all that can be seen also the rest that every seat"
                    + " may know. All others here are told something by magic: they are yardsticks that *see more"
                    + " than a seat may*, and no ways of playing.",
                first.deals(),
                first.manifest().whole("seed").orElseThrow(),
                Math.round(100 * first.confidence()))));
    text.append(Paragraph.of(bound()));
    text.append("![").append(figure.caption().inPlaceOfThePicture().replace("\n", " "));
    text.append("](").append(picture).append(")\n\n");
    for (int payment = 0; payment < PAYMENTS.size(); payment++) {
      text.append(Paragraph.of("Points in 100 games, " + PAYMENTS.get(payment) + ":"));
      text.append(MarkdownWriter.grid(table(payment)).strip()).append("\n\n");
    }
    boolean gaps =
        played.stream()
            .flatMap(List::stream)
            .flatMap(card -> compared(card).stream())
            .anyMatch(one -> one.inHundred().isEmpty());
    if (gaps) {
      text.append(Paragraph.of("In an empty cell " + FEW + "."));
    }
    return text.toString();
  }

  /** What reading could be worth at most, and what is got today by what all can see. */
  String bound() {
    return "**What reading could be worth to a discard at most:** who never throws a tile on which"
        + " somebody would win, while it holds another, scores "
        + span(0, NEVER)
        + " in 100 games by the usual payments, and "
        + span(1, NEVER)
        + " where the discarder pays for all. By what every seat may see, `watchful` scores "
        + span(0, FAIR)
        + " and "
        + span(1, FAIR)
        + "; who reads all that can be seen scores "
        + span(0, ALL_SEEN)
        + " and "
        + span(1, ALL_SEEN)
        + ".";
  }

  /** As in "from +210 (…; this card) to +340 (…; that card)", of the cards with a range. */
  private String span(int payment, String arm) {
    Comparator<Results> order =
        Comparator.comparingDouble(card -> points(card, arm).orElseThrow().value());
    List<Results> cards =
        played.get(payment).stream().filter(card -> points(card, arm).isPresent()).toList();
    if (cards.isEmpty()) {
      return "what cannot be told (" + FEW + " on every card)";
    }
    Results least = cards.stream().min(order).orElseThrow();
    Results most = cards.stream().max(order).orElseThrow();
    return "from " + said(least, arm) + " to " + said(most, arm);
  }

  private static String said(Results card, String arm) {
    PlotValue points = points(card, arm).orElseThrow().estimate();
    return points.valueText(Sign.PLUS_AND_MINUS)
        + " points ("
        + points.rangeText(Sign.PLUS_AND_MINUS)
        + "; "
        + name(card)
        + ")";
  }

  private Table table(int payment) {
    List<Column> columns = new ArrayList<>();
    columns.add(Column.text("player", "Who sits there.").headed("who sits there"));
    for (int card = 0; card < played.get(payment).size(); card++) {
      columns.add(
          Column.decimalInterval("card-" + card, "points in 100 games", "More or fewer points.")
              .headed(name(played.get(payment).get(card))));
    }
    TableBuilder table =
        Table.builder("knowing", "What it would be worth to know")
            .columns(columns.toArray(new Column[0]));
    for (String arm : arms(played.get(payment).get(0))) {
      List<Cell> cells = new ArrayList<>(List.of(Cell.text(arm)));
      played.get(payment).forEach(card -> cells.add(cell(card, arm)));
      table.row(cells.toArray(new Cell[0]));
    }
    return table.build();
  }

  /** The picture: some of the yardsticks on every card, by both payments. */
  IntervalPlot figure() {
    List<IntervalPlot.Row> rows = new ArrayList<>();
    List<String> sentences = new ArrayList<>();
    for (String arm : PICTURED) {
      for (int card = 0; card < played.get(0).size(); card++) {
        String label = arm + ", " + name(played.get(0).get(card));
        List<IntervalPlot.Spot> spots = new ArrayList<>();
        List<String> said = new ArrayList<>();
        for (List<Results> cards : played) {
          Optional<PlotValue> points = points(cards.get(card), arm).map(Ranged::estimate);
          spots.add(
              points.map(IntervalPlot.Spot::of).orElse(IntervalPlot.Spot.words("too few deals")));
          said.add(points.map(one -> one.text(Sign.PLUS_AND_MINUS)).orElse(FEW));
        }
        rows.add(new IntervalPlot.Row(label, Standing.COMPARED, spots));
        sentences.add(label + ": " + String.join(" and ", said) + ".");
      }
    }
    List<IntervalPlot.Panel> panels =
        PAYMENTS.stream()
            .map(
                payment ->
                    IntervalPlot.Panel.differences(
                        new Axis(payment, "points in 100 games"), "the same as reckoner"))
            .toList();
    String mark =
        "Yardsticks that " + KnowsHabit.MARK.replace("sees", "see") + " (all but the first two)";
    Caption caption =
        new Caption(
            "what-reading-is-worth",
            "What could reading the others be worth?",
            "Points in 100 games beside a reckoner in the same deals, by the usual payments and"
                + " where the discarder pays for all. "
                + String.join(" ", sentences),
            List.of(
                "Programmed players, points, and four cards; one seat at a table of reckoner."
                    + " The line is the range of 99 %."),
            new Slide(mark, "", List.of()));
    return new IntervalPlot(caption, "who sits there, and the card", panels, rows);
  }

  private static List<String> arms(Results results) {
    return compared(results).stream().map(KnowingPage::plain).toList();
  }

  private static List<Compared> compared(Results results) {
    return Compared.primary(results).stream().filter(one -> !one.isBaseline()).toList();
  }

  private static String plain(Compared one) {
    return Arm.plain(one.arm());
  }

  private static Optional<Ranged> points(Results results, String arm) {
    return compared(results).stream()
        .filter(one -> plain(one).equals(arm))
        .findFirst()
        .orElseThrow(() -> new NoSuchElementException("the study has no arm \"" + arm + '"'))
        .inHundred();
  }

  private static Cell cell(Results results, String arm) {
    return points(results, arm).map(Ranged::cell).orElse(Cell.empty());
  }

  private static String name(Results results) {
    return results.manifest().text("card").replaceAll("( practice)? card$", "");
  }
}
