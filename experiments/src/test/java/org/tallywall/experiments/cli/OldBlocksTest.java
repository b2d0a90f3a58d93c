package org.tallywall.experiments.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tallywall.experiments.run.Block;
import org.tallywall.experiments.store.Checkpoint;
import org.tallywall.experiments.store.Manifest;

/** Blocks that hold other numbers than are counted now: said in a sentence, never a fault. */
@Tag("one-jdk")
class OldBlocksTest {
  private static final String STUDY =
      """
      { "study": "harbour-look", "card": "small.json", "seed": 5,
        "table": ["nearest", "nearest", "nearest", "nearest"], "deals": 600 }
      """;
  private static final int BLOCKS = 2;
  private static final int DEALS = 500;

  private enum Age {
    EARLIER_FORMAT,
    LATER_FORMAT,
    OTHER_LAYOUT,
    NO_LAYOUT
  }

  @TempDir Path folder;

  private String study;
  private Path out;

  @BeforeEach
  void run() {
    Cards.small(folder);
    out = folder.resolve("out");
    study = Cards.write(folder, "look.json", STUDY);
    assertThat(again("fail").code()).isZero();
  }

  private void age(Age age) throws IOException {
    byte[] run = Manifest.read(out).orElseThrow().digest();
    for (int number = 0; number < BLOCKS; number++) {
      Path file = out.resolve("blocks/000000" + number + ".block");
      Block block = Block.of(number, 600, DEALS);
      byte[] content = Checkpoint.read(run, block, Files.readAllBytes(file)).content();
      Files.write(file, aged(age, run, block, content));
    }
  }

  private static byte[] aged(Age age, byte[] run, Block block, byte[] content) {
    byte[] changed = content.clone();
    return switch (age) {
      case EARLIER_FORMAT -> sealed(Checkpoint.file(run, block, content), Checkpoint.FORMAT - 1);
      case LATER_FORMAT -> sealed(Checkpoint.file(run, block, content), Checkpoint.FORMAT + 1);
      case OTHER_LAYOUT -> {
        changed[20] ^= 1;
        yield Checkpoint.file(run, block, changed);
      }
      case NO_LAYOUT -> {
        Arrays.fill(changed, (byte) 0x81);
        yield Checkpoint.file(run, block, changed);
      }
    };
  }

  /** The number of the format follows the mark of eight letters. */
  private static byte[] sealed(byte[] file, int format) {
    ByteBuffer.wrap(file).putInt(8, format);
    int end = file.length - 32;
    try {
      MessageDigest sha = MessageDigest.getInstance("SHA-256");
      sha.update(file, 0, end);
      System.arraycopy(sha.digest(), 0, file, end, 32);
      return file;
    } catch (NoSuchAlgorithmException impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  private void unfinished() throws IOException {
    Path manifest = out.resolve("manifest.json");
    Files.writeString(manifest, Files.readString(manifest).replace("\"complete\"", "\"stopped\""));
  }

  private Typed again(String onExisting) {
    return Typed.run(
        "run", study, "--out", out.toString(), "--on-existing", onExisting, "--without-report");
  }

  @ParameterizedTest
  @EnumSource(Age.class)
  void unfinishedRun_isNotResumed(Age age) throws IOException {
    age(age);
    unfinished();
    byte[] before = Files.readAllBytes(out.resolve("blocks/0000001.block"));

    Typed typed = again("resume");

    assertThat(typed.code()).isEqualTo(2);
    assertThat(typed.err())
        .isEqualTo(
            "tallywall: the blocks in \""
                + out
                + "\" were stored by a version of tallywall that counts other things, so the run"
                + " cannot go on from them; go on with that version, or write --on-existing"
                + " overwrite to start over\n");
    assertThat(out.resolve("blocks/0000001.block")).hasBinaryContent(before);
  }

  @Test
  void unfinishedRun_overwritten_isPlayed() throws IOException {
    age(Age.OTHER_LAYOUT);
    unfinished();

    assertThat(again("overwrite").code()).isZero();
    assertThat(Typed.run("verify", out.toString()).out()).contains("2 of 2 blocks played again");
  }

  @ParameterizedTest
  @EnumSource(Age.class)
  void completeRun_isToldFromItsFiles(Age age) throws IOException {
    age(age);

    Typed typed = again("resume");

    assertThat(typed.code()).isZero();
    assertThat(typed.out())
        .contains("is complete; nothing was played.", "programmed players", "How sure");
  }

  @ParameterizedTest
  @EnumSource(Age.class)
  void verify_saysThatItCannotTell(Age age) throws IOException {
    age(age);

    Typed typed = Typed.run("verify", out.toString(), "--seed", "1");

    assertThat(typed.code()).isEqualTo(1);
    assertThat(typed.out())
        .contains(
            "block 0 (deals 0 to 499): stored by a version of tallywall that counts other things;"
                + " check it with that one")
        .contains("0 of 2 blocks played again are the same");
    assertThat(typed.err()).isEmpty();
  }
}
