package org.tallywall.experiments.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Files that are no positions are named for what they are, before anything is read. */
class SheetFilesTest {
  private static final String CARD = "scenes/heron-reach/card.json";

  @ParameterizedTest
  @ValueSource(strings = {"ask", "review"})
  void records_areNoPosition(String command) {
    Typed typed = Typed.run(command, "games.jsonl.gz", "--card", CARD);
    assertThat(typed.code()).isEqualTo(2);
    assertThat(typed.err().replaceAll("\\s+", " "))
        .contains("a file of records, not a position")
        .contains("review games.jsonl.gz --game 0 --seat 0");
  }

  @Test
  void standardInput_isReadOnce() {
    Typed typed = Typed.run("ask", "-", "-", "--card", CARD);
    assertThat(typed.code()).isEqualTo(2);
    assertThat(typed.err()).contains("can be read once only");
  }
}
