package org.tallywall.reports;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.reports.document.Document;
import org.tallywall.reports.document.Fold;
import org.tallywall.reports.document.Handles;
import org.tallywall.reports.document.Link;
import org.tallywall.reports.document.Part;
import org.tallywall.reports.document.Part.Paragraph;
import org.tallywall.reports.document.Part.Section;
import org.tallywall.reports.figure.Figure;
import org.tallywall.reports.markup.Element;
import org.tallywall.reports.table.Cell;
import org.tallywall.reports.table.Column;
import org.tallywall.reports.table.Table;
import org.tallywall.reports.table.TableBuilder;

/** Invented documents for the golden files and the tests. */
public final class SampleDocuments {
  private SampleDocuments() {}

  /** One of every part. */
  public static Document everyPart() {
    return new Document(
        "Does holding back help?",
        List.of(
            new Part.Notice("This run is not finished: 400 of 1,000 deals are done."),
            new Part.Answer(
                "On the same deals, hold-back won about 1 more game in 100 than nearest (0.4 to"
                    + " 1.6 more).",
                List.of(
                    Paragraph.of(
                        "These are programmed players, this card, these rules.",
                        "Interval: t over deals.",
                        "Seed 77, deals 1 to 1,000."))),
            new Part.Contents(),
            Section.of(
                "Ways of playing",
                new Part.Grid(SampleTables.ways(), Handles.SORT),
                new Part.Chart(SampleFigures.both()),
                new Section("More", Fold.OPEN, List.of(new Part.Chart(SampleFigures.parts())))),
            Section.of("Lines", new Part.Grid(lines(), Handles.SORT_AND_FILTER)),
            Section.of(
                "The game", drawing("East throws 4 bams"), drawing("South throws <b>Red</b>")),
            new Section(
                "In full",
                Fold.CLOSED,
                List.of(
                    new Part.Facts(
                        List.of(
                            new Part.Fact("card", "Saltmarsh Quay"),
                            new Part.Fact("rules", "all as usual"))),
                    new Part.Bullets(List.of("one thing", "- another")),
                    new Part.Listing("study.json", "{\n  \"seed\": 77 // ``` <b>\n}\n"),
                    new Part.Links(List.of(new Link("the first game", "records/game 1.html"))))),
            Paragraph.of("Results speak of programmed players and points.", "The last note.")));
  }

  /** Names that would do harm if they were not escaped. */
  public static Document awkward() {
    String name = "<script>document.title = 'harmed'</script>";
    return new Document(
        name,
        List.of(
            new Part.Notice(name),
            new Part.Answer("\"><img src=x onerror=alert(1)>", List.of(Paragraph.of(name, name))),
            new Part.Grid(SampleTables.awkward(), Handles.SORT_AND_FILTER),
            new Part.Chart(SampleFigures.awkward()),
            new Section(name, Fold.OPEN, List.of(new Part.Listing(name, name))),
            new Part.Bullets(List.of(name, "</ul></main>")),
            new Part.Facts(List.of(new Part.Fact(name, name)))));
  }

  /** Every figure, for looking at. */
  public static Document figures() {
    List<Part> parts = new ArrayList<>();
    for (Figure figure : SampleFigures.all()) {
      parts.add(new Part.Chart(figure));
    }
    return new Document("Every figure", parts);
  }

  /** Forty rows, so that a filter has something to leave out. */
  private static Table lines() {
    TableBuilder table =
        Table.builder("lines", "Lines of the card, by how often they are aimed at")
            .columns(
                Column.text("line", "The line by section and number."),
                Column.rateInterval("win-rate", "share of games", "Games won when aimed at.")
                    .headed("wins when aimed at"),
                Column.integer("value", "points", "What the line pays."));
    String[] sections = {"Ferry", "Quay", "Winds", "Evens"};
    for (int i = 0; i < 40; i++) {
      double rate = (i * 7 % 40) / 100.0;
      table.row(
          Cell.text(sections[i % sections.length] + " " + (i / sections.length + 1)),
          Cell.interval(rate, Math.max(0, rate - 0.02), rate + 0.02),
          Cell.whole(25 + 5L * (i % 6)));
    }
    return table.build();
  }

  private static Part.Drawing drawing(String what) {
    return new Part.Drawing(Element.of("div", "drawn: " + what), "drawn: " + what);
  }
}
