package org.tallywall.reports.console;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tallywall.reports.SampleDocuments;
import org.tallywall.reports.document.Document;
import org.tallywall.reports.document.Pictures;
import org.tallywall.reports.text.Lettering;

class ConsoleWriterTest {
  private static final Pictures SVG = Pictures.in("charts", "svg");

  @Test
  void answer_tableAndChart_comeInTheOrderOfThePage() {
    String text = ConsoleWriter.text(SampleDocuments.everyPart(), SVG, 80, Lettering.UNICODE);
    assertThat(text)
        .startsWith("Does holding back help?\n\nThis run is not finished")
        .containsSubsequence(
            "On the same deals, hold-back won about 1 more game",
            "These are programmed players, this card, these rules.",
            "Ways of playing",
            "Chart: ",
            "charts/")
        .doesNotContain("t over deals");
  }

  @ParameterizedTest
  @ValueSource(ints = {40, 61, 100})
  void lines_ofAnyDocument_fitTheWindowAndHoldNoControlCharacters(int width) {
    for (Document document : List.of(SampleDocuments.everyPart(), SampleDocuments.awkward())) {
      String text = ConsoleWriter.text(document, SVG, width, Lettering.UNICODE);
      assertThat(text.lines()).allMatch(line -> line.codePointCount(0, line.length()) <= width);
      assertThat(text.replace("\n", "").codePoints()).noneMatch(Character::isISOControl);
    }
  }
}
