package org.tallywall.experiments.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tallywall.experiments.error.FailedException;
import org.tallywall.experiments.error.WrongInputException;
import org.tallywall.experiments.studies.StudyFile;
import org.tallywall.experiments.study.Changes;
import org.tallywall.experiments.study.Study;
import org.tallywall.experiments.study.StudyJson;
import org.tallywall.strategies.catalog.Catalog;

/** What may be done with a folder, and what lies in it at every moment. */
class RunFolderTest {
  private static final String CARD =
      """
      { "card": "Little Harbour test card",
        "families": [ { "family": "Vanes", "lines": [
          { "tiles": "NNNN EEE WWWW RRR", "value": 30 } ] } ] }
      """;
  private static final String STUDY =
      """
      { "study": "look", "card": "card.json", "seed": 5, "deals": 40,
        "table": ["nearest", "nearest", "nearest", "nearest"] }
      """;

  @TempDir Path folder;

  private Path target;

  @BeforeEach
  void write() throws IOException {
    Files.writeString(folder.resolve("card.json"), CARD);
    target = folder.resolve("deep/er/look");
  }

  private RunFolder open(OnExisting onExisting) {
    return open(onExisting, STUDY, "1.0");
  }

  private RunFolder open(OnExisting onExisting, String text, String version) {
    try {
      Path file = Files.writeString(folder.resolve("study.json"), text);
      Study study = StudyFile.read(file, Changes.NONE, Catalog.standard());
      Manifest wanted =
          Manifest.begin(study, version, List.of("tallywall", "run"), 1, Instant.EPOCH);
      return RunFolder.open(target, onExisting, wanted, StudyJson.text(study, target), () -> {});
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  private static void block(RunFolder run, String content) throws IOException {
    Files.writeString(run.blocks().resolve("0000000.block"), content);
  }

  private static Map<String, WholeFile.Filler> table(String text) {
    Map<String, WholeFile.Filler> files = new LinkedHashMap<>();
    files.put("win-rates.csv", part -> Files.writeString(part, text));
    return files;
  }

  private void runToItsEnd(String text) throws IOException {
    try (RunFolder run = open(OnExisting.OVERWRITE)) {
      block(run, text);
      run.complete(table(text), new Manifest.Done(40, 40, 0));
    }
  }

  private List<String> inside() throws IOException {
    try (Stream<Path> files = Files.walk(target)) {
      return files
          .filter(Files::isRegularFile)
          .map(file -> target.relativize(file).toString())
          .sorted()
          .toList();
    }
  }

  @Test
  void newRun_hasItsOwnNameAndSaysThatItIsRunning() throws IOException {
    try (RunFolder run = open(OnExisting.FAIL)) {
      assertThat(run.resumed()).isFalse();
      assertThat(inside()).containsExactly("blocks/lock", "manifest.json", "study.json");
      assertThat(Manifest.read(target).orElseThrow().state()).isEqualTo(Manifest.State.RUNNING);
      block(run, "x");
    }
    assertThat(Manifest.read(target).orElseThrow().state()).isEqualTo(Manifest.State.RUNNING);
  }

  @Test
  void complete_manifestIsLast() throws IOException {
    try (RunFolder run = open(OnExisting.FAIL)) {
      Map<String, WholeFile.Filler> files = table("a");
      files.put(
          "columns.md",
          part -> {
            assertThat(target.resolve("win-rates.csv")).hasContent("a");
            Manifest soFar = Manifest.read(target).orElseThrow();
            assertThat(soFar.state()).isEqualTo(Manifest.State.RUNNING);
            assertThat(soFar.files()).containsExactly("win-rates.csv", "columns.md");
            Files.writeString(part, "b");
          });
      run.complete(files, new Manifest.Done(40, 40, 0));
      assertThat(run.complete()).isTrue();
    }
    Manifest manifest = Manifest.read(target).orElseThrow();
    assertThat(manifest.state()).isEqualTo(Manifest.State.COMPLETE);
    assertThat(manifest.number("deals")).isEqualTo(40);
  }

  @Test
  void close_nothingKept_leavesNothingBehind() throws IOException {
    open(OnExisting.FAIL).close();
    assertThat(folder.resolve("deep")).doesNotExist();

    Files.createDirectories(target);
    open(OnExisting.RESUME).close();
    assertThat(target).isEmptyDirectory();
  }

  @Test
  void emptyFolderOrOneOfARunThatDiedAtOnce_countsAsNew() throws IOException {
    for (OnExisting policy : OnExisting.values()) {
      Files.createDirectories(target.resolve("blocks"));
      Files.deleteIfExists(target.resolve("blocks/lock"));
      Files.createFile(target.resolve("blocks/lock"));
      try (RunFolder run = open(policy)) {
        assertThat(run.resumed()).isFalse();
      }
    }
  }

  @Test
  void existingRun_isRefusedWithWhatToWriteInstead() throws IOException {
    try (RunFolder run = open(OnExisting.FAIL)) {
      block(run, "x");
      run.stopped(new Manifest.Done(20, 20, 0));
    }
    assertThatThrownBy(() -> open(OnExisting.FAIL))
        .isInstanceOf(WrongInputException.class)
        .hasMessageContaining("holds a run that is not complete")
        .hasMessageContaining("--on-existing resume to go on with it");

    runToItsEnd("old");
    assertThatThrownBy(() -> open(OnExisting.FAIL))
        .isInstanceOf(WrongInputException.class)
        .hasMessageContaining("is there already")
        .hasMessageContaining("--on-existing overwrite to replace it");
    assertThat(target.resolve("win-rates.csv")).hasContent("old");
  }

  @Test
  void overwrite_takesAwayResultsAndBlocksButNothingElse() throws IOException {
    runToItsEnd("old");
    Files.writeString(target.resolve("my-notes.txt"), "mine");

    try (RunFolder run = open(OnExisting.OVERWRITE)) {
      assertThat(inside())
          .containsExactly("blocks/lock", "manifest.json", "my-notes.txt", "study.json");
      assertThat(run.manifest().files()).isEmpty();
    }
  }

  @Test
  void resume_keepsBlocksAndTakesHalfTheResultsAway() throws IOException {
    try (RunFolder run = open(OnExisting.FAIL)) {
      block(run, "x");
      Map<String, WholeFile.Filler> files = table("whole");
      files.put(
          "columns.md",
          part -> {
            throw new IOException("No space left on device");
          });
      assertThatThrownBy(() -> run.complete(files, new Manifest.Done(40, 40, 0)))
          .isInstanceOf(FailedException.class)
          .hasMessageContaining("columns.md\" could not be written: No space left on device");
    }
    Files.writeString(target.resolve("blocks/0000001.block.part"), "half");
    Files.createFile(target.resolve("stop"));

    try (RunFolder run = open(OnExisting.RESUME)) {
      assertThat(run.resumed()).isTrue();
      assertThat(run.manifest().number("resumed")).isEqualTo(1);
      assertThat(inside())
          .containsExactly("blocks/0000000.block", "blocks/lock", "manifest.json", "study.json");
    }
  }

  @Test
  void resume_ofACompleteRun_changesNothing() throws IOException {
    runToItsEnd("whole");
    String manifest = Files.readString(target.resolve("manifest.json"));

    try (RunFolder run = open(OnExisting.RESUME)) {
      assertThat(run.complete()).isTrue();
    }

    assertThat(target.resolve("manifest.json")).hasContent(manifest);
    assertThat(target.resolve("win-rates.csv")).hasContent("whole");
  }

  @Test
  void resume_ofAnotherRun_saysWhatDiffers() throws IOException {
    runToItsEnd("whole");

    assertDiffers(STUDY.replace("\"seed\": 5", "\"seed\": 6"), "1.0", "\"seed\" (there 5, now 6)");
    assertDiffers(STUDY.replace("40", "50"), "1.0", "\"deals\" (there 40, now 50)");
    assertDiffers(STUDY.replace("[\"nearest\"", "[\"random-legal\""), "1.0", "\"table\"");
    assertDiffers(
        STUDY.replace("\"seed\"", "\"rules\": {\"wall.cold\": \"NO_CLAIM\"}, \"seed\""),
        "1.0",
        "\"rules\"");
    assertDiffers(STUDY, "1.1", "the program's version (there 1.0, now 1.1)");
    Files.writeString(folder.resolve("card.json"), CARD.replace("30", "35"));
    assertDiffers(STUDY, "1.0", "the card \"Little Harbour test card\" has been changed");
  }

  private void assertDiffers(String study, String version, String words) {
    assertThatThrownBy(() -> open(OnExisting.RESUME, study, version))
        .isInstanceOf(WrongInputException.class)
        .hasMessageContaining("holds another run, which cannot go on as this one; different: ")
        .hasMessageContaining(words);
  }

  /** What a study bears of its players changes no number, so a run may go on with more patience. */
  @Test
  void resume_withMorePatience_isTheSameRun() throws IOException {
    try (RunFolder run = open(OnExisting.FAIL)) {
      block(run, "x");
    }
    String patient = STUDY.replace("\"seed\"", "\"failed-deals-allowed\": 9, \"seed\"");

    try (RunFolder run = open(OnExisting.RESUME, patient, "1.0")) {
      assertThat(run.resumed()).isTrue();
      assertThat(Files.readString(target.resolve("study.json")))
          .contains("\"failed-deals-allowed\" : 9");
    }
  }

  @Test
  void folderInUse_isRefusedWhateverIsWanted() throws IOException {
    try (RunFolder run = open(OnExisting.FAIL)) {
      block(run, "x");
      for (OnExisting policy : List.of(OnExisting.RESUME, OnExisting.OVERWRITE)) {
        assertThatThrownBy(() -> open(policy))
            .isInstanceOf(WrongInputException.class)
            .hasMessageContaining("another run is going on in \"" + target);
      }
      assertThat(inside()).contains("blocks/0000000.block");
    }
    open(OnExisting.RESUME).close();
  }

  @Test
  void folderOfSomethingElse_isNeverUsed() throws IOException {
    Files.createDirectories(target);
    Files.writeString(target.resolve("to-mother.txt"), "Dear");
    for (OnExisting policy : OnExisting.values()) {
      assertThatThrownBy(() -> open(policy))
          .isInstanceOf(WrongInputException.class)
          .hasMessageContaining("holds no results of a run");
    }
    target = target.resolve("to-mother.txt");
    assertThatThrownBy(() -> open(OnExisting.OVERWRITE))
        .isInstanceOf(WrongInputException.class)
        .hasMessageContaining("is a file");
    target = target.resolve("look");
    assertThatThrownBy(() -> open(OnExisting.FAIL))
        .isInstanceOf(FailedException.class)
        .hasMessageContaining("could not be written");
  }

  @Test
  void unreadableManifest_canOnlyBeReplaced() throws IOException {
    runToItsEnd("whole");
    Files.writeString(target.resolve("manifest.json"), "{ \"state\": \"comp");

    assertThatThrownBy(() -> open(OnExisting.RESUME))
        .isInstanceOf(WrongInputException.class)
        .hasMessageContaining("has a manifest.json that cannot be read");
    open(OnExisting.OVERWRITE).close();
  }

  /** No file of a manifest that somebody wrote by hand leads out of the folder. */
  @Test
  void overwrite_manifestThatNamesFilesElsewhere_leavesThemAlone() throws IOException {
    runToItsEnd("whole");
    Path manifest = target.resolve("manifest.json");
    Path precious = Files.writeString(folder.resolve("precious.csv"), "mine");
    Files.writeString(
        manifest, Files.readString(manifest).replace("win-rates.csv", "../../../precious.csv"));

    open(OnExisting.OVERWRITE).close();

    assertThat(precious).hasContent("mine");
  }

  /** On Linux nobody, root included, can make a folder there. */
  @Test
  void folderThatMayNotBeWrittenTo_isReportedInPlainWords() {
    target = Path.of("/sys/look");
    Assumptions.assumeTrue(Files.isDirectory(target.getParent()), "a file system for reading only");

    assertThatThrownBy(() -> open(OnExisting.FAIL))
        .isInstanceOf(FailedException.class)
        .hasMessageMatching(
            "\"/sys/look\" could not be written: (Operation not permitted"
                + "|this folder may not be written to|Read-only file system)");
  }

  @Test
  void overwriting_thatIsRefusedForLackOfRoom_leavesTheOldRunAsItWas() throws IOException {
    runToItsEnd("old");
    List<String> before = inside();
    byte[] manifest = Files.readAllBytes(target.resolve("manifest.json"));
    Study study = study(STUDY);
    Manifest wanted = Manifest.begin(study, "1.0", List.of(), 1, Instant.EPOCH);
    assertThatThrownBy(
            () ->
                RunFolder.open(
                    target,
                    OnExisting.OVERWRITE,
                    wanted,
                    StudyJson.text(study, target),
                    () -> {
                      throw new FailedException("no room");
                    }))
        .hasMessage("no room");
    assertThat(inside()).isEqualTo(before);
    assertThat(target.resolve("manifest.json")).hasBinaryContent(manifest);
    assertThat(target.resolve("win-rates.csv")).hasContent("old");
  }

  @Test
  void folderThatIsALinkToNowhere_isNamedAsOne() throws IOException {
    Files.createDirectories(target.getParent());
    Files.createSymbolicLink(target, folder.resolve("gone"));
    assertThatThrownBy(() -> open(OnExisting.FAIL))
        .hasMessageContaining("a link that leads nowhere");
  }

  @Test
  void folderNamedStop_stopsNothing() throws IOException {
    Files.createDirectories(target.resolve("stop/inside"));
    runAgain();
    runAgain();
    assertThat(target.resolve("stop/inside")).isDirectory();
  }

  private void runAgain() throws IOException {
    Files.writeString(target.resolve("manifest.json"), "{\"state\": \"stopped\"}");
    runToItsEnd("new");
  }

  private Study study(String text) throws IOException {
    Path file = Files.writeString(folder.resolve("study.json"), text);
    return StudyFile.read(file, Changes.NONE, Catalog.standard());
  }
}
