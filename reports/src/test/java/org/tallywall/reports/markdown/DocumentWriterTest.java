package org.tallywall.reports.markdown;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import org.junit.jupiter.api.Test;
import org.tallywall.reports.Golden;
import org.tallywall.reports.SampleDocuments;
import org.tallywall.reports.document.Pictures;

class DocumentWriterTest {
  private static final Pictures SVG = Pictures.in("charts", "svg");

  @Test
  void notes_withEveryPart_areTheSameBytes() throws IOException {
    Golden.assertSame(DocumentWriter.text(SampleDocuments.everyPart(), SVG), "pages/every-part.md");
  }

  @Test
  void names_thatWouldDoHarm_standAsText() throws IOException {
    String text = DocumentWriter.text(SampleDocuments.awkward(), SVG);
    Golden.assertSame(text, "pages/awkward.md");
    assertThat(text.replaceAll("(?s)```.*?```|\\(<[^>]*>\\)", ""))
        .doesNotContainPattern("(?<!\\\\)<");
  }
}
