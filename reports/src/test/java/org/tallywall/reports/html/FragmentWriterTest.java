package org.tallywall.reports.html;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.tallywall.reports.Golden;
import org.tallywall.reports.SampleDocuments;
import org.tallywall.reports.SampleFigures;
import org.tallywall.reports.document.Document;
import org.tallywall.reports.document.Part;
import org.tallywall.reports.document.Pictures;

class FragmentWriterTest {
  private static final Pictures PNG = Pictures.in("charts", "png");

  @Test
  void fragment_withEveryPart_isTheSameBytes() throws IOException {
    String text = FragmentWriter.text(SampleDocuments.everyPart(), PNG);
    Golden.assertSame(text, "pages/every-part-fragment.html");
  }

  @Test
  void names_thatWouldDoHarm_standAsText() throws IOException {
    String text = FragmentWriter.text(SampleDocuments.awkward(), PNG);
    Golden.assertSame(text, "pages/awkward-fragment.html");
    assertThat(text).doesNotContain("<script").doesNotContain("onerror=alert(1)>");
  }

  @Test
  void letters_beyondAscii_becomeReferences() {
    Document document = new Document("Übung – 雀 \ud83c\udc04", List.of());
    assertThat(FragmentWriter.text(document, PNG))
        .contains("\n<h1>&#220;bung &#8211; &#38592; &#126980;</h1>\n")
        .matches("\\p{ASCII}*");
  }

  @Test
  void figure_withoutAPicture_isDescribed() {
    Document document = new Document("A", List.of(new Part.Chart(SampleFigures.map())));
    assertThat(FragmentWriter.text(document, figure -> Optional.empty()))
        .contains(
            "<h1>A</h1>\n<p>PROVISIONAL: 1,000 of 20,000 deals. Play on or hold back? "
                + SampleFigures.map().caption().description()
                + "</p>\n<p>Bars show");
  }
}
