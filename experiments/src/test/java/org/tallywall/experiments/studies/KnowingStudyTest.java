package org.tallywall.experiments.studies;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowable;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tallywall.core.play.SeesOpenTable;
import org.tallywall.core.text.FaultyFileException;
import org.tallywall.experiments.answer.PlayerLabel;
import org.tallywall.experiments.design.PlayedDesign;
import org.tallywall.experiments.design.arms.ArmsDesign;
import org.tallywall.experiments.study.Arm;
import org.tallywall.experiments.study.Changes;
import org.tallywall.experiments.study.Study;
import org.tallywall.experiments.study.StudyJson;
import org.tallywall.strategies.catalog.Catalog;

/** Players whose settings let them see more than a seat may: where they may sit, and their mark. */
class KnowingStudyTest {
  private static final String CARD =
      """
      { "card": "Probe", "families": [ { "family": "Winds", "lines": [
        { "tiles": "NNNN EEEE WWWW SS", "value": 25 } ] } ] }
      """;
  private static final String STUDY =
      """
      { "study": "knowing", "question": "What is it worth to know?", "card": "card.json",
        "seed": 4, "arms": { "plain": "reckoner", "told": %s }, "baseline": "%s",
        "others": %s, "seats": "rotate", "primary": "points", "deals": 20 }
      """;
  private static final String TOLD = "{ \"player\": \"reckoner\", \"knows.racks\": true }";
  private static final String MARKED = "told (sees more than a seat may)";

  @TempDir Path folder;

  private Study read(String text) throws IOException {
    Files.writeString(folder.resolve("card.json"), CARD);
    Path file = Files.writeString(folder.resolve("study.json"), text);
    return StudyFile.read(file, Changes.NONE, Catalog.standard());
  }

  private static List<String> names(Study study) {
    return ((ArmsDesign) study.design()).arms().stream().map(Arm::name).toList();
  }

  @Test
  void arm_thatSeesMore_isCalledSoInAllResults() throws IOException {
    Study study = read(STUDY.formatted(TOLD, "plain", "\"reckoner\""));
    ArmsDesign arms = (ArmsDesign) study.design();

    assertThat(names(study)).containsExactly("plain", MARKED);
    assertThat(PlayerLabel.of(arms.arms().get(1).player()))
        .isEqualTo("reckoner (knows.racks true; sees more than a seat may)");
    assertThat(arms.arms().get(1).player().make()).isInstanceOf(SeesOpenTable.class);
  }

  @ParameterizedTest
  @CsvSource({"told", MARKED})
  void name_isFoundWithAndWithoutItsMark(String name) throws IOException {
    Study study = read(STUDY.formatted(TOLD, name, "\"reckoner\""));

    assertThat(((ArmsDesign) study.design()).baseline()).isEqualTo(1);
    assertThat(((PlayedDesign) study.design()).game(0, name, 2)).isNotNull();
  }

  /** A mark that a study writes itself counts for nothing. */
  @Test
  void mark_ofAPlayerThatSeesNoMore_isTakenAway() throws IOException {
    String study = STUDY.formatted("\"watchful\"", "plain", "\"reckoner\"");

    assertThat(names(read(study.replace("\"told\"", "\"" + MARKED + "\""))))
        .containsExactly("plain", "told");
  }

  @Test
  void study_writtenAndReadAgain_isTheSame() throws IOException {
    Study study = read(STUDY.formatted(TOLD, "told", "\"reckoner\""));
    String written = StudyJson.text(study, folder);

    Study again = read(written);

    assertThat(written).contains(MARKED);
    assertThat(names(again)).isEqualTo(names(study));
    assertThat(again.digest()).isEqualTo(study.digest());
  }

  @Test
  void twoNames_thatDifferInTheirMarkAlone_areRefused() {
    String study = STUDY.formatted(TOLD, "plain", "\"reckoner\"");

    assertThat(
            catchThrowable(
                () ->
                    read(study.replace("\"plain\": \"reckoner\"", "\"" + MARKED + "\": " + TOLD))))
        .isInstanceOf(FaultyFileException.class)
        .hasMessageContaining("the same name");
  }

  @Test
  void othersAndBranches_seeNoMoreThanTheirSeats() {
    assertThat(catchThrowable(() -> read(STUDY.formatted("\"watchful\"", "plain", TOLD))))
        .isInstanceOf(FaultyFileException.class)
        .hasMessageContaining("sees more than a seat may by its settings");
  }
}
