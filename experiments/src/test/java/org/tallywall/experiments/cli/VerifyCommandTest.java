package org.tallywall.experiments.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tallywall.experiments.run.Block;
import org.tallywall.experiments.store.Checkpoint;
import org.tallywall.experiments.store.Manifest;

/** Playing blocks of a run once more. */
@Tag("one-jdk")
class VerifyCommandTest {
  private static final String STUDY =
      """
      { "study": "harbour-look", "card": "small.json", "seed": 5,
        "table": ["nearest", "nearest", "random-legal", "nearest"], "deals": 1600, "records": 3 }
      """;

  /** The run that every test copies. */
  @TempDir static Path played;

  @TempDir Path folder;

  private String out;

  @BeforeAll
  static void run() {
    Cards.small(played);
    String study = Cards.write(played, "look.json", STUDY);
    String whole = played.resolve("out").toString();
    assertThat(Typed.run("run", study, "--out", whole, "--without-report").code()).isZero();
  }

  @BeforeEach
  void copy() throws IOException {
    Cards.small(folder);
    Cards.write(folder, "look.json", STUDY);
    out = folder.resolve("out").toString();
    RunCommandTest.copy(played.resolve("out"), Path.of(out));
  }

  @Test
  void soundRun_isTheSame() {
    Typed typed = Typed.run("verify", out, "--blocks", "9", "--seed", "3");

    assertThat(typed.code()).isZero();
    assertThat(typed.out())
        .isEqualTo(
            """
            block 0 (deals 0 to 499): the same bytes
            block 1 (deals 500 to 999): the same bytes
            block 2 (deals 1,000 to 1,499): the same bytes
            block 3 (deals 1,500 to 1,599): the same bytes
            4 of 4 blocks played again are the same; 4 blocks are stored; chosen by seed 3
            """);
  }

  @Test
  void seed_choosesTheBlocks() {
    String first = Typed.run("verify", out, "--blocks", "1", "--seed", "3").out();

    assertThat(Typed.run("verify", out, "--blocks", "1", "--seed", "3").out()).isEqualTo(first);
    assertThat(first).contains("1 of 1 block played again");
  }

  /** A block with another block's counts, sealed as if it were right. */
  @Test
  void forgedBlock_isFound() throws IOException {
    byte[] run = Manifest.read(Path.of(out)).orElseThrow().digest();
    Path first = Path.of(out, "blocks/0000001.block");
    Path second = Path.of(out, "blocks/0000002.block");
    byte[] content =
        Checkpoint.read(run, new Block(1, 500, 500), Files.readAllBytes(first)).content();
    Files.write(second, Checkpoint.file(run, new Block(2, 1000, 500), content));
    Files.write(Path.of(out, "blocks/0000003.block"), new byte[] {1, 2, 3});
    Files.copy(
        first,
        Path.of(out, "blocks/0000000.block"),
        java.nio.file.StandardCopyOption.REPLACE_EXISTING);

    Typed typed = Typed.run("verify", out, "--blocks", "4", "--seed", "1");

    assertThat(typed.code()).isEqualTo(1);
    assertThat(typed.out())
        .contains("block 0 (deals 0 to 499): the file belongs to another run")
        .contains("block 1 (deals 500 to 999): the same bytes")
        .contains("block 2 (deals 1,000 to 1,499): NOT what comes out now")
        .contains("block 3 (deals 1,500 to 1,599): the file is damaged")
        .contains("1 of 4 blocks played again are the same");
  }

  @Test
  void changedCard_isRefused() {
    Cards.write(folder, "small.json", Cards.SMALL.replace("\"value\": 25", "\"value\": 30"));

    Typed typed = Typed.run("verify", out);

    assertThat(typed.code()).isEqualTo(2);
    assertThat(typed.err())
        .contains("cannot be played again as it was")
        .contains("the card \"Little Harbour test card\" has been changed");
  }

  @Test
  void wrongInput_isExplained() throws IOException {
    assertComplains("has no results in it", "verify", folder.toString());
    assertComplains("--blocks is 1 or more, not 0", "verify", out, "--blocks", "0");
    assertComplains("--threads is 1 to 1000", "verify", out, "--threads", "0");
    for (int block = 0; block < 4; block++) {
      Files.delete(Path.of(out, "blocks/000000" + block + ".block"));
    }
    assertComplains("has no blocks left", "verify", out);
    Files.delete(Path.of(out, "blocks/lock"));
    Files.delete(Path.of(out, "blocks"));
    assertComplains("has no blocks left", "verify", out);
  }

  private static void assertComplains(String words, String... typed) {
    Typed answer = Typed.run(typed);
    assertThat(answer.err()).contains(words).doesNotContain("Exception");
    assertThat(answer.code()).isEqualTo(2);
  }
}
