package org.tallywall.experiments.dist;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.spi.ToolProvider;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** Guards the promise that the zip file with a Java runtime inside needs no Java on the machine. */
@Tag("image")
@DisabledOnOs(value = OS.WINDOWS, disabledReason = "the starter tried here is the one for a shell")
class ImageTest {
  @TempDir static Path machine;

  private static UnpackedZip unpacked;

  @BeforeAll
  static void unpack() throws IOException {
    unpacked = UnpackedZip.on(machine, Path.of(System.getProperty("tallywall.image")));
  }

  private static UnpackedZip.Outcome start(Map<String, String> more, String... words) {
    Map<String, String> environment = new TreeMap<>(more);
    environment.put("PATH", unpacked.tools());
    String[] command = new String[words.length + 1];
    command[0] = unpacked.home().resolve("tallywall").toString();
    System.arraycopy(words, 0, command, 1, words.length);
    return unpacked.run(machine, environment, command);
  }

  @Test
  void machine_hasNoJava() {
    UnpackedZip.Outcome outcome =
        unpacked.run(
            machine, Map.of("PATH", unpacked.tools()), "/usr/bin/env", "bash", "-c", "type java");

    assertThat(outcome.errors()).contains("java: not found");
  }

  @Test
  void starter_withoutJava_starts() {
    UnpackedZip.Outcome outcome = start(Map.of(), "--version");

    assertThat(outcome.errors()).isEmpty();
    assertThat(outcome.output()).startsWith("tallywall ");
    assertThat(outcome.exitCode()).isZero();
  }

  @Test
  void starter_withTheWrongJavaHome_takesItsOwnJava() {
    assertThat(start(Map.of("JAVA_HOME", "/nowhere"), "--version").exitCode()).isZero();
  }

  /** A run makes pages and charts, for which the runtime must hold what draws. */
  @Test
  void study_small_isPlayedWithAllItsPapers() throws IOException {
    Path results = machine.resolve("results");

    UnpackedZip.Outcome outcome =
        start(
            Map.of(),
            "run",
            unpacked.home().resolve("studies/first-look.json").toString(),
            "--deals",
            "4",
            "--out",
            results.toString());

    assertThat(outcome.exitCode()).as(outcome.errors()).isZero();
    assertThat(results.resolve("report.html")).isNotEmptyFile();
    assertThat(results.resolve("charts/where-games-go.png")).isNotEmptyFile();
    assertThat(Files.readString(results.resolve("manifest.json"))).contains("\"complete\"");
  }

  @Test
  void runtime_holdsEveryModuleThatTheProgramUses() throws IOException {
    StringWriter found = new StringWriter();
    PrintWriter out = new PrintWriter(found);
    Path jar = unpacked.home().resolve("lib/tallywall.jar");
    int code =
        ToolProvider.findFirst("jdeps")
            .orElseThrow()
            .run(out, out, "--ignore-missing-deps", "--print-module-deps", jar.toString());

    assertThat(code).as(found.toString()).isZero();
    String release = Files.readString(unpacked.home().resolve("runtime/release"));
    List<String> modules = List.of(release.replaceAll("(?s).*MODULES=\"|\".*", "").split(" "));
    assertThat(modules).contains(found.toString().strip().split(",")).contains("jdk.unsupported");
  }
}
