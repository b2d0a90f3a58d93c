package org.tallywall.experiments.studies;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tallywall.core.text.FaultyFileException;
import org.tallywall.experiments.study.Changes;
import org.tallywall.experiments.study.Study;
import org.tallywall.experiments.study.StudyJson;
import org.tallywall.strategies.catalog.Catalog;

/** What a study of one fixed table is asked about: its field "show". */
class ShowFieldTest {
  private static final String FAMILY =
      "{ \"family\": \"%s\", \"lines\": [ { \"tiles\": \"FF 11x 222x 333x 4444x\","
          + " \"slide\": \"any\", \"value\": 25 } ] }";
  private static final String TABLE =
      "\"table\": [\"nearest\", \"nearest\", \"nearest\", \"nearest\"]";
  private static final String ARMS =
      "\"arms\": { \"a\": \"nearest\", \"b\": \"reckoner\" }, \"baseline\": \"a\","
          + " \"others\": \"nearest\", \"primary\": \"points\"";

  @TempDir Path folder;

  private Study read(String design, String show, String... families) throws IOException {
    String all = "";
    for (String family : families) {
      all += (all.isEmpty() ? "" : ", ") + FAMILY.formatted(family);
    }
    Files.writeString(
        folder.resolve("card.json"),
        "{ \"card\": \"Capstan test card\", \"families\": [ " + all + " ] }");
    String field = show.isEmpty() ? "" : ", \"show\": " + show;
    Path file =
        Files.writeString(
            folder.resolve("study.json"),
            "{ \"study\": \"s\", \"card\": \"card.json\", \"seed\": 3, \"deals\": 4, %s%s }"
                .formatted(design, field));
    return StudyFile.read(file, Changes.NONE, Catalog.standard());
  }

  private String written(Study study) {
    return StudyJson.text(study, folder);
  }

  @ParameterizedTest
  @ValueSource(strings = {"lines", "families", "seats", "endings", "passes"})
  void everyWord_isRead_andWrittenOut(String word) throws IOException {
    Study study = read(TABLE, "\"" + word + "\"", "Ladders");

    assertThat(written(study)).contains("\"show\" : \"" + word + "\"");
    assertThat(read(TABLE, "", "Ladders").digest()).isEqualTo(study.digest());
  }

  /** What the results are told about is no part of what is played. */
  @Test
  void nothingSaid_theCardDecides() throws IOException {
    assertThat(written(read(TABLE, "", "Ladders"))).contains("\"show\" : \"lines\"");
    assertThat(written(read(TABLE, "", "Ladders", "Towers"))).contains("\"show\" : \"families\"");
    assertThat(written(read(ARMS, "", "Ladders", "Towers"))).doesNotContain("\"show\"");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "\"ending\" ! nothing to show is called \"ending\"; did you mean \"endings\"? (known: lines, families, seats, endings, passes)",
        "3 ! \"show\" is one of lines, families, seats, endings, passes"
      })
  void anotherWord_isRefusedWithTheList(String show, String fault) {
    assertThatThrownBy(() -> read(TABLE, show, "Ladders"))
        .isInstanceOf(FaultyFileException.class)
        .hasMessageContaining(fault);
  }

  @Test
  void withAnotherDesign_isRefused() {
    assertThatThrownBy(() -> read(ARMS, "\"seats\"", "Ladders"))
        .isInstanceOf(FaultyFileException.class)
        .hasMessageContaining("\"show\" has no meaning for a \"arms\"; take it out");
  }
}
