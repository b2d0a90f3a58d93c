package org.tallywall.experiments.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What happens to files in the folder of a run: said in plain words, and nothing is lost. */
@Tag("long")
class DamageTest {
  private static final String STUDY =
      """
      { "study": "harbour-look", "card": "small.json", "seed": 5,
        "table": ["nearest", "nearest", "random-legal", "nearest"],
        "deals": 2100, "records": 30 }
      """;

  /** The run that every test copies; nobody changes it. */
  @TempDir static Path played;

  private static Path whole;

  @TempDir Path folder;

  private String study;
  private Path out;

  @BeforeAll
  static void runToItsEnd() {
    Cards.small(played);
    String study = Cards.write(played, "study.json", STUDY);
    whole = played.resolve("whole");
    assertThat(Typed.run("run", study, "--out", whole.toString(), "--without-report").code())
        .isZero();
  }

  @BeforeEach
  void write() {
    Cards.small(folder);
    study = Cards.write(folder, "study.json", STUDY);
    out = folder.resolve("out");
  }

  private Path block(int number) {
    return out.resolve("blocks/000000" + number + ".block");
  }

  /** A run that was killed after its last block and before its results. */
  private void copyUnfinished() throws IOException {
    Files.createDirectories(out.resolve("blocks"));
    for (String name : new String[] {"study.json", "manifest.json"}) {
      Files.copy(whole.resolve(name), out.resolve(name));
    }
    Path manifest = out.resolve("manifest.json");
    Files.writeString(manifest, Files.readString(manifest).replace("\"complete\"", "\"running\""));
    for (int number = 0; number < 5; number++) {
      Files.copy(whole.resolve("blocks/000000" + number + ".block"), block(number));
    }
  }

  private Typed resume() {
    return Typed.run(
        "run", study, "--out", out.toString(), "--on-existing", "resume", "--without-report");
  }

  private void assertAsUndisturbed() throws IOException {
    assertThat(withoutManifest(out)).isEqualTo(withoutManifest(whole));
    for (int number = 0; number < 5; number++) {
      Path wanted = whole.resolve("blocks").resolve(block(number).getFileName());
      assertThat(block(number)).hasSameBinaryContentAs(wanted);
    }
  }

  private static Map<String, String> withoutManifest(Path results) throws IOException {
    Map<String, String> files = RunCommandTest.files(results);
    files.remove("manifest.json");
    return files;
  }

  @Test
  void wholeBlocks_areNotPlayedAgain() throws IOException {
    copyUnfinished();
    Typed resumed = resume();

    assertThat(resumed.code()).isZero();
    assertThat(resumed.err()).isEmpty();
    assertAsUndisturbed();
  }

  @Test
  void truncatedBlock_isReportedAndPlayedAgain() throws IOException {
    copyUnfinished();
    byte[] bytes = Files.readAllBytes(block(2));
    Files.write(block(2), Arrays.copyOf(bytes, bytes.length / 2));

    assertPlayedAgain("block 2 (deals 1,000 to 1,499) is damaged and is played again");
  }

  @Test
  void flippedBit_isReportedAndPlayedAgain() throws IOException {
    copyUnfinished();
    byte[] bytes = Files.readAllBytes(block(4));
    bytes[bytes.length / 2] ^= 4;
    Files.write(block(4), bytes);

    assertPlayedAgain("block 4 (deals 2,000 to 2,099) is damaged and is played again");
  }

  @Test
  void blockOfAnotherRun_isReportedAndPlayedAgain() throws IOException {
    String other = folder.resolve("other").toString();
    Typed.run("run", study, "--out", other, "--seed", "6", "--deals", "500");
    copyUnfinished();
    Files.delete(block(0));
    Files.copy(Path.of(other, "blocks/0000000.block"), block(0));

    assertPlayedAgain("block 0 (deals 0 to 499) belongs to another run and is played again");
  }

  /** A run that was killed between its last file and its manifest. */
  @Test
  void recordsOfARunThatIsNotComplete_areNotTakenForResults() throws IOException {
    copyUnfinished();
    Files.copy(whole.resolve("records.jsonl.gz"), out.resolve("records.jsonl.gz"));
    Typed replayed = Typed.run("replay", out.resolve("records.jsonl.gz").toString());
    Typed reported = Typed.run("report", out.toString());

    assertThat(replayed.code()).isEqualTo(2);
    assertThat(replayed.err()).contains("is not complete; go on with it by --on-existing resume");
    assertThat(reported.code()).as(reported.err()).isZero();
    assertThat(reported.out()).contains("Made in " + out.resolve("provisional"), "PROVISIONAL: ");
    assertThat(out.resolve("report.html")).doesNotExist();
    assertThat(resume().code()).isZero();
    assertAsUndisturbed();
  }

  @Test
  void missingBlock_isPlayedAgainWithoutWords() throws IOException {
    copyUnfinished();
    Files.delete(block(1));

    assertThat(resume().err()).isEmpty();
    assertAsUndisturbed();
  }

  private void assertPlayedAgain(String words) throws IOException {
    Typed resumed = resume();

    assertThat(resumed.code()).isZero();
    assertThat(resumed.err()).isEqualTo("tallywall: " + words + "\n");
    assertAsUndisturbed();
  }

  @Test
  void completeRun_resumed_saysSoAndPrintsItsAnswerAgain() throws IOException {
    RunCommandTest.copy(whole, out);
    String manifest = Files.readString(whole.resolve("manifest.json"));
    Typed resumed = resume();

    assertThat(resumed.code()).isZero();
    assertThat(resumed.out())
        .startsWith("The run in " + out + " is complete; nothing was played.\n")
        .contains("came with Ladders", "Everything is in " + out);
    assertThat(out.resolve("manifest.json")).hasContent(manifest);

    Files.delete(block(3));
    Typed without = resume();

    assertThat(without.code()).isZero();
    assertThat(without.out()).isEqualTo(resumed.out());
    assertThat(block(3)).doesNotExist();
  }

  /** A folder that is not empty stands in the place where a file grows. */
  @Test
  void blockThatCannotBeWritten_keepsTheOthersAndSaysHowToGoOn() throws IOException {
    assertGoesOn("blocks/0000003.block.part", 3);
  }

  @Test
  void recordsThatCannotBeWritten_keepTheBlocksAndSayHowToGoOn() throws IOException {
    assertGoesOn("blocks/records.jsonl.gz.part", 0);
  }

  @Test
  void tableThatCannotBeWritten_keepsTheBlocksAndSaysHowToGoOn() throws IOException {
    assertGoesOn("columns.md.part", 5);
  }

  private void assertGoesOn(String growing, int atLeast) throws IOException {
    Clumsy.Failure failure = Clumsy.failure(study, out, folder -> obstruct(folder, growing));

    assertThat(failure.message())
        .contains("could not be written: ")
        .contains("Everything played so far is kept; go on with: tallywall run")
        .endsWith("--on-existing resume");
    assertThat(Files.readString(out.resolve("manifest.json"))).contains("\"stopped\"");
    assertThat(out.resolve("columns.md")).doesNotExist();
    assertThat(Child.blocks(out)).isGreaterThanOrEqualTo(atLeast);
    Files.delete(out.resolve(growing).resolve("inside"));
    Files.delete(out.resolve(growing));
    assertThat(resume().code()).isZero();
    assertAsUndisturbed();
  }

  private static void obstruct(Path results, String name) {
    try {
      Files.createFile(Files.createDirectory(results.resolve(name)).resolve("inside"));
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  @Test
  void folderForReadingOnly_isReportedInPlainWords() {
    Assumptions.assumeTrue(Files.isDirectory(Path.of("/sys")), "a file system for reading only");
    Typed typed = Typed.run("run", study, "--out", "/sys/look");

    assertThat(typed.code()).isEqualTo(1);
    assertThat(typed.err())
        .startsWith("tallywall: \"/sys/look\" could not be written: ")
        .doesNotContain("Exception");
  }
}
