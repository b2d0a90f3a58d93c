package org.tallywall.experiments.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * One bit of a stored night is another: a block is played again, and what the manifest said follows
 * from the study; the results are the same bytes.
 */
@Tag("long")
class FlippedBitsTest {
  private static final String STUDY =
      """
      { "study": "look", "card": "small.json", "seed": 5, "deals": 1010, "records": 3,
        "arms": { "near": "nearest", "lot": "random-legal" },
        "baseline": "near", "others": "nearest", "seats": 1, "primary": "points" }
      """;

  /** The night that every test copies; nobody changes it. */
  @TempDir static Path played;

  private static Path whole;

  @TempDir Path folder;

  private String study;

  @BeforeAll
  static void play() {
    Cards.small(played);
    String study = Cards.write(played, "look.json", STUDY);
    whole = played.resolve("whole");
    assertThat(Typed.run("run", study, "--out", whole.toString(), "--without-report").code())
        .isZero();
  }

  @BeforeEach
  void write() {
    Cards.small(folder);
    study = Cards.write(folder, "look.json", STUDY);
  }

  /** A copy of the night as it was before its results were written. */
  private Path stopped(String name) throws IOException {
    Path copy = folder.resolve(name);
    Files.createDirectories(copy.resolve("blocks"));
    try (Stream<Path> blocks = Files.list(whole.resolve("blocks"))) {
      for (Path block : blocks.toList()) {
        Files.copy(block, copy.resolve("blocks").resolve(block.getFileName()));
      }
    }
    Files.copy(whole.resolve("study.json"), copy.resolve("study.json"));
    Files.writeString(
        copy.resolve("manifest.json"),
        Files.readString(whole.resolve("manifest.json")).replace("\"complete\"", "\"stopped\""));
    return copy;
  }

  private String assertGoesOn(Path copy, String what) throws IOException {
    Typed resumed =
        Typed.run(
            "run", study, "--out", copy.toString(), "--on-existing", "resume", "--without-report");
    assertThat(resumed.code()).as(what + ": " + resumed.err()).isZero();
    assertThat(results(copy)).as(what).isEqualTo(results(whole));
    return resumed.err();
  }

  private static Map<String, String> results(Path folder) throws IOException {
    Map<String, String> files = new TreeMap<>(RunCommandTest.files(folder));
    files.remove("manifest.json");
    return files;
  }

  private void assertFlipsAreHealed(int flips, long seed) throws IOException {
    Random random = new Random(seed);
    for (int flip = 0; flip < flips; flip++) {
      Path copy = stopped("flip-" + flip);
      boolean inBlock = flip % 2 == 1;
      Path file = copy.resolve(inBlock ? "blocks/000000" + flip % 3 + ".block" : "manifest.json");
      byte[] bytes = Files.readAllBytes(file);
      int at = random.nextInt(bytes.length);
      bytes[at] ^= (byte) (1 << random.nextInt(8));
      Files.write(file, bytes);
      String said = assertGoesOn(copy, file + ", byte " + at + " of " + bytes.length);
      assertThat(said.contains("is damaged and is played again")).isEqualTo(inBlock);
      delete(copy);
    }
  }

  private static void delete(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(file);
      }
    }
  }

  @Test
  void flippedBits_costNothing() throws IOException {
    assertFlipsAreHealed(12, 20261130);
  }

  @Test
  @Tag("long")
  void twoHundredFlippedBits_costNothing() throws IOException {
    assertFlipsAreHealed(200, 1);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "null",
        "[]",
        "{}",
        "{\"state\": 1e9999999999}",
        "{\"files\": [null, \"a\\u0000b\"]}"
      })
  void manifestOfAnotherKind_costsNothing(String text) throws IOException {
    Path copy = stopped("other");
    Files.writeString(copy.resolve("manifest.json"), text);
    assertGoesOn(copy, text);
  }

  @Test
  void manifestThatIsGone_costsNothing() throws IOException {
    Path copy = stopped("gone");
    Files.delete(copy.resolve("manifest.json"));
    assertGoesOn(copy, "gone");
  }

  @Test
  void manifestOfAnotherStudy_isStillRefused() throws IOException {
    Path copy = stopped("other");
    Files.writeString(copy.resolve("manifest.json"), "{");
    Typed other =
        Typed.run("run", study, "--seed", "6", "--out", copy.toString(), "--on-existing", "resume");
    assertThat(other.code()).isEqualTo(Program.WRONG_INPUT);
    assertThat(other.err()).contains("cannot be read, and no stored block of this study");
    assertThat(copy.resolve("blocks/0000000.block")).exists();
  }
}
