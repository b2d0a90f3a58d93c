package org.tallywall.experiments.studies;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tallywall.core.text.FaultyFileException;
import org.tallywall.experiments.design.table.TableDesign;
import org.tallywall.experiments.study.Changes;
import org.tallywall.experiments.study.Extent;
import org.tallywall.experiments.study.Measure;
import org.tallywall.experiments.study.Study;
import org.tallywall.experiments.study.StudyJson;
import org.tallywall.strategies.catalog.Catalog;

/** Study files are read strictly, with every default in place and every fault named. */
class StudyFileTest {
  private static final String CARD =
      """
      { "card": "Slipway card", "families": [ { "family": "One", "lines": [
        { "tiles": "NNNN EEE SSSS RRR", "value": 30 } ] } ] }
      """;

  private static final String STUDY =
      """
      // A study with a comment.
      {
        "study": "small-look",
        "card": "slipway.json",
        "seed": 7,
        "table": ["nearest", {"player": "random-legal"}, "nearest", "nearest"],
        "deals": 20,
      }
      """;

  @TempDir Path folder;

  @BeforeEach
  void writeCard() throws IOException {
    Files.writeString(folder.resolve("slipway.json"), CARD);
  }

  private Path write(String name, String text) {
    try {
      return Files.writeString(folder.resolve(name), text);
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  private Study read(String text) {
    return read(text, Changes.NONE);
  }

  private Study read(String text, Changes changes) {
    return StudyFile.read(write("study.json", text), changes, Catalog.standard());
  }

  private String complaint(String text) {
    return catchThrowableOfType(FaultyFileException.class, () -> read(text)).getMessage();
  }

  @Test
  void study_littleWritten_hasEveryDefault() {
    Study study = read(STUDY);

    assertThat(study.question().name()).isEqualTo("small-look");
    assertThat(study.question().words()).isEmpty();
    assertThat(study.question().primary()).isEmpty();
    assertThat(study.question().confidence()).isEqualTo(0.95);
    assertThat(study.extent()).isEqualTo(new Extent(7, 20, 0));
    assertThat(study.card().name()).isEqualTo("Slipway card");
    assertThat(study.rules().switches()).containsEntry("wall.cold", "OFF");
    assertThat(study.source().derived()).isFalse();
    assertThat(((TableDesign) study.design()).players())
        .extracting(player -> player.type().id())
        .containsExactly("nearest", "random-legal", "nearest", "nearest");
  }

  @Test
  void study_everythingWritten_isTaken() {
    Study study =
        read(
            STUDY.replace(
                "\"deals\": 20,",
                "\"question\": \"Why?\", \"rules\": {\"wall.cold\": \"NO_CLAIM\"}, \"deals\": 20,"
                    + " \"records\": 30, \"confidence\": 0.9, \"primary\": \"points\","
                    + " \"secondary\": [\"win-rate\", \"wall-games\"]"));

    assertThat(study.question().primary()).contains(Measure.POINTS);
    assertThat(study.question().secondary()).containsExactly(Measure.WIN_RATE, Measure.WALL_GAMES);
    assertThat(study.question().confidence()).isEqualTo(0.9);
    assertThat(study.rules().switches()).containsEntry("wall.cold", "NO_CLAIM");
    assertThat(study.extent().recorded()).isEqualTo(20);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "\"seed\": 7, ! ! the field \"seed\" is missing",
        "\"seed\": 7 ! \"seed\": -1 ! \"seed\" is a whole number, 0 or more, not -1",
        "\"seed\": 7 ! \"seed\": 7.5 ! \"seed\" is a whole number",
        "\"seed\": 7 ! \"seed\": \"7\" ! \"seed\" is a whole number, 0 or more, not a text",
        "\"seed\": 7 ! \"seed\": 99999999999999999999 ! \"seed\" is a whole number",
        "\"deals\": 20 ! \"deals\": 0 ! \"deals\" is a whole number from 1 to 500000000, not 0",
        "\"deals\": 20, ! ! the field \"deals\" is missing",
        "\"study\": \"small-look\", ! ! the field \"study\" is missing",
        "small-look ! ../look ! becomes the name of a folder",
        "\"card\": \"slipway.json\", ! ! the field \"card\" is missing",
        "slipway.json ! slipwya.json ! there is no such file",
        "\"random-legal\" ! \"nearset\" ! unknown player \"nearset\"; did you mean \"nearest\"?",
        "{\"player\": \"random-legal\"} ! {\"player\": \"nearest\", \"bold\": 1} ! has no setting \"bold\"",
        "{\"player\": \"random-legal\"}, ! ! four players, East first; this one has 3",
        "{\"player\": \"random-legal\"} ! 5 ! a player is a name in quotes or an object",
        "\"table\" ! \"tabel\" ! unknown field \"tabel\" in a study; did you mean \"table\"?",
        "\"deals\": 20, ! \"deals\": 20, \"rules\": {\"wall.colt\": \"OFF\"} ! did you mean \"wall.cold\"?",
        "\"deals\": 20, ! \"deals\": 20, \"rules\": {\"wall.cold\": \"ON\"} ! may be OFF, NO_MAHJONG_CLAIM, NO_CLAIM; not ON",
        "\"deals\": 20, ! \"deals\": 20, \"rules\": {\"score.kitty\": 25} ! not yet: \"score.kitty\"",
        "\"deals\": 20, ! \"deals\": 20, \"until\": {} ! \"until\" goes with \"arms\" and \"sweep\"",
        "\"deals\": 20, ! \"deals\": 20, \"streams\": \"own\" ! \"streams\" has no meaning for a \"table\"",
        "\"deals\": 20, ! \"deals\": 20, \"confidence\": 95 ! a number between 0 and 1, not 95",
        "\"deals\": 20, ! \"deals\": 20, \"primary\": \"pionts\" ! did you mean \"points\"?",
        "\"deals\": 20, ! \"deals\": 20, \"seats\": 2 ! \"seats\" has no meaning for a \"table\"",
        "\"deals\": 20, ! \"deals\": 20, \"sweep\": {} ! a study has one design; this one has table and sweep",
        "\"deals\": 20, ! \"deals\": 20, \"records\": -3 ! \"records\" is a whole number"
      })
  void study_fault_isNamedWithItsPlaceAndRemedy(String good, String bad, String words) {
    String text = STUDY.replace(good, bad == null ? "" : bad);

    assertThat(text).isNotEqualTo(STUDY);
    assertThat(complaint(text)).contains("study.json:", words).doesNotContain("Exception", "java.");
  }

  @Test
  void study_severalFaults_comeOutAtOnce() {
    String text =
        STUDY.replace("\"seed\": 7", "\"sede\": 7").replace("\"nearest\", {", "\"neerest\", {");

    assertThat(complaint(text))
        .contains("study.json:5:", "\"sede\"", "study.json:6:", "\"neerest\"")
        .doesNotContain("is missing");
  }

  @Test
  void study_noJsonOrNoFile_isSaidSo() {
    assertThat(complaint("study: small")).contains("this is not JSON");
    assertThat(complaint("")).contains("the file is empty");
    assertThatThrownBy(
            () -> StudyFile.read(folder.resolve("none.json"), Changes.NONE, Catalog.standard()))
        .hasMessageContaining("there is no such file");
  }

  @Test
  void study_faultyCard_isNamedByTheCardsOwnPlaces() {
    write("slipway.json", CARD.replace("RRR", "RR"));

    assertThat(complaint(STUDY)).contains("slipway.json:2:", "(O1)", "13 tiles");
  }

  @Test
  void player_namingWhatTheCardDoesNotHave_isRefusedWithWhatItHas() {
    String family =
        STUDY.replace("\"random-legal\"", "\"reckoner\", \"aim.prefer-family\": \"Onne\"");
    String line = STUDY.replace("\"random-legal\"", "\"reckoner\", \"aim.prefer-line\": \"01\"");

    assertThat(complaint(family))
        .contains("study.json:6:", "the setting \"aim.prefer-family\"")
        .contains("the card \"Slipway card\" has no family \"Onne\"; did you mean \"One\"?");
    assertThat(complaint(line)).contains("has no line \"01\"; did you mean \"O1\"?");
  }

  @Test
  void player_namingAPartOfTheCard_isReadInAnyCase_butNotForAnotherCard() {
    String text = STUDY.replace("\"random-legal\"", "\"reckoner\", \"aim.prefer-family\": \"ONE\"");
    Path other = write("other.json", CARD.replace("One", "Two"));
    Changes card =
        new Changes(Optional.of(other), Optional.empty(), Optional.empty(), Optional.empty());

    assertThat(StudyJson.text(read(text), folder)).contains("\"aim.prefer-family\" : \"ONE\"");
    assertThat(read(text).digest()).isNotEqualTo(read(text.replace("ONE", "")).digest());
    assertThatThrownBy(() -> read(text, card)).hasMessageContaining("no family \"ONE\"");
  }

  @Test
  void changes_cardRulesSeedAndDeals_takeThePlaceOfTheStudys() {
    Path card = write("other.json", CARD.replace("Slipway", "Capstan"));
    Path rules = write("rules.json", "{ \"wall.cold\": \"NO_CLAIM\" }");
    Changes changes =
        new Changes(Optional.of(card), Optional.of(rules), Optional.of(9L), Optional.of(3L));
    String withoutItsCard = STUDY.replace("slipway.json", "gone.json");

    Study study = read(withoutItsCard, changes);

    assertThat(study.card().name()).isEqualTo("Capstan card");
    assertThat(study.rules().switches()).containsEntry("wall.cold", "NO_CLAIM");
    assertThat(study.extent()).isEqualTo(new Extent(9, 3, 0));
    assertThat(study.source().derived()).isTrue();
    assertThat(study.digest()).isNotEqualTo(read(STUDY).digest());
  }

  @Test
  void changes_faultyRulesFile_isNamed() {
    Path rules = write("rules.json", "{ \"wall.colt\": \"NO_CLAIM\" }");
    Changes changes =
        new Changes(Optional.empty(), Optional.of(rules), Optional.empty(), Optional.empty());

    assertThatThrownBy(() -> read(STUDY, changes))
        .hasMessageContaining("rules.json:1:")
        .hasMessageContaining("wall.cold");
  }

  @Test
  void digest_commentsAndPlacesOfFiles_doNotCount() throws IOException {
    Path elsewhere = Files.createDirectories(folder.resolve("deep/down"));
    Files.writeString(elsewhere.resolve("card.json"), CARD);
    Path moved =
        Files.writeString(
            elsewhere.resolve("s.json"),
            STUDY.replace("slipway.json", "card.json").replaceFirst("//.*\n", ""));

    assertThat(StudyFile.read(moved, Changes.NONE, Catalog.standard()).digest())
        .isEqualTo(read(STUDY).digest());
    assertThat(read(STUDY.replace("\"seed\": 7", "\"seed\": 8")).digest())
        .isNotEqualTo(read(STUDY).digest());
  }

  @Test
  void text_writtenForAFolder_isTheSameStudyWhenReadThere() throws IOException {
    Study study = read(STUDY);
    Path results = Files.createDirectories(folder.resolve("results/small-look"));

    Path written = Files.writeString(results.resolve("study.json"), StudyJson.text(study, results));
    Study again = StudyFile.read(written, Changes.NONE, Catalog.standard());

    assertThat(Files.readString(written))
        .contains("\"card\" : \"../../slipway.json\"", "\"confidence\" : 0.95", "\"records\" : 0")
        .doesNotContain("\r");
    assertThat(again.digest()).isEqualTo(study.digest());
  }

  @Test
  void text_playerWithSettings_hasThemAllAndKeepsItsDigest() throws IOException {
    Study study =
        read(
            STUDY.replace(
                "{\"player\": \"random-legal\"}",
                "{\"player\": \"watchful\", \"aim.haste\": 0.50,"
                    + " \"defense\": {\"careful\": false, \"hold-back\": {\"away-at-least\": 4}}}"));
    Path written = Files.writeString(folder.resolve("all.json"), StudyJson.text(study, folder));

    Study again = StudyFile.read(written, Changes.NONE, Catalog.standard());

    assertThat(Files.readString(written))
        .contains("\"defense.careful\" : false", "\"defense.hold-back.away-at-least\" : 4")
        .contains("\"passes.courtesy-at-most\" : 3");
    assertThat(again.digest()).isEqualTo(study.digest());
    assertThat(StudyJson.text(again, folder)).isEqualTo(StudyJson.text(study, folder));
  }
}
