package org.tallywall.reports.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.tallywall.reports.SampleFigures;
import org.tallywall.reports.console.ConsoleWriter;
import org.tallywall.reports.csv.CsvWriter;
import org.tallywall.reports.document.Document;
import org.tallywall.reports.document.Handles;
import org.tallywall.reports.document.Part;
import org.tallywall.reports.figure.Axis;
import org.tallywall.reports.figure.Caption;
import org.tallywall.reports.figure.Figure;
import org.tallywall.reports.figure.PartBars;
import org.tallywall.reports.figure.Standing;
import org.tallywall.reports.html.FragmentWriter;
import org.tallywall.reports.html.PageWriter;
import org.tallywall.reports.markdown.DocumentWriter;
import org.tallywall.reports.svg.SvgWriter;
import org.tallywall.reports.text.Lettering;

/** What nobody sees in a name is seen on every kind of paper. */
class VisibleTest {
  /**
   * Control characters, marks of direction, separators of lines, invisible marks, half a letter.
   */
  private static final String UNSEEN =
      "\u0000\u0007\u001b\u007f\u0085\u009b\u061c\u200b\u200e\u202a\u202e\u2028\u2029\u2066\u2069"
          + "\ufeff\ufff9\uffff\ud800x\udc00"
          + Character.toString(0xe0041);

  @Test
  void letters_thatNobodySees_areSeenOnEveryPaper() {
    for (String paper : papers("name" + UNSEEN + "end")) {
      UNSEEN
          .codePoints()
          .filter(letter -> letter != 'x')
          .forEach(
              letter -> {
                String hex = Integer.toHexString(letter);
                assertThat(paper).as(hex).doesNotContain(Character.toString(letter));
                assertThat(paper.replaceAll("[\\\\\n -]", "")).as(hex).contains("u{" + hex + "}");
              });
    }
  }

  /** One escape only, also where one writer goes through another. */
  @Test
  void number_ofALetter_isNotSpelledTwice() {
    for (String paper : papers("\u001bname")) {
      assertThat(paper).doesNotContain("u{5c}");
    }
  }

  private static List<String> papers(String name) {
    Table table =
        Table.builder("t", "T " + name)
            .columns(Column.text("name", "A name.").headed(name))
            .row(Cell.text(name))
            .note(name)
            .build();
    Figure figure =
        new PartBars(
            new Caption("c", name, name, List.of(name)),
            new Axis(name, name),
            List.of(name, "b"),
            List.of(new PartBars.Bar(name, Standing.COMPARED, List.of(50.0, 50.0))),
            List.of());
    Document document =
        new Document(
            name,
            List.of(
                Part.Paragraph.of(name),
                new Part.Notice(name),
                new Part.Bullets(List.of(name)),
                new Part.Listing(name, name),
                new Part.Grid(table, Handles.SORT_AND_FILTER),
                new Part.Chart(figure)));
    List<String> papers = new ArrayList<>();
    papers.add(CsvWriter.text(table));
    papers.add(ConsoleWriter.text(document, one -> Optional.empty(), 80, Lettering.UNICODE));
    papers.add(ConsoleWriter.text(document, one -> Optional.empty(), 80, Lettering.ASCII));
    papers.add(DocumentWriter.text(document, one -> Optional.empty()));
    papers.add(FragmentWriter.text(document, one -> Optional.empty()));
    papers.add(PageWriter.text(document));
    papers.add(SvgWriter.text(figure));
    return papers;
  }

  @Test
  void text_withoutSuchLetters_isTheSame() {
    for (String text : List.of("", "a\nb\tc", "\u00ad\u200d\u200c", "雀 \ud83c\udc04", "\\u{1b}")) {
      assertThat(Visible.text(text)).isEqualTo(text);
    }
    assertThat(SvgWriter.text(SampleFigures.map())).doesNotContain("\\u{");
  }
}
