package org.tallywall.experiments.dist;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/**
 * Guards the promise that the zip file runs with a Java runtime alone, wherever it is unpacked. The
 * starter for Windows cannot be run here; only its form is looked at.
 */
@Tag("zip")
@DisabledOnOs(value = OS.WINDOWS, disabledReason = "the starter tried here is the one for a shell")
class DistributionZipTest {

  @TempDir static Path machine;

  private static UnpackedZip unpacked;
  private static String starter;

  @BeforeAll
  static void unpack() throws IOException {
    unpacked = UnpackedZip.on(machine);
    starter = unpacked.home().resolve("tallywall").toString();
  }

  @Test
  void machine_ofTheseTests_hasNeitherCompilerNorMaven() {
    UnpackedZip.Outcome outcome =
        unpacked.run(machine, "/usr/bin/env", "bash", "-c", "type javac; type mvn; type java");

    assertThat(outcome.errors()).contains("javac: not found", "mvn: not found");
    assertThat(outcome.output()).contains(unpacked.runtime().toString());
  }

  @Test
  void starter_inFolderWithUmlautBlanksAndAmpersand_starts() {
    assertStarts(unpacked.run(unpacked.home(), "./tallywall", "--version"));
  }

  @Test
  void starter_fromAnotherFolder_starts() {
    assertStarts(unpacked.run(machine, starter, "--version"));
  }

  @Test
  void starter_throughSymbolicLink_starts() throws IOException {
    Path link = Files.createSymbolicLink(machine.resolve("link to it"), Path.of(starter));

    assertStarts(unpacked.run(machine, link.toString(), "--version"));
  }

  @Test
  void starter_withJavaHomeAlone_starts() {
    Map<String, String> environment =
        Map.of("PATH", unpacked.tools(), "JAVA_HOME", unpacked.runtime().toString());

    assertStarts(unpacked.run(machine, environment, starter, "--version"));
  }

  @Test
  void starter_withOptionsForJava_handsThemOn() {
    Map<String, String> environment =
        Map.of(
            "PATH", unpacked.tools(),
            "JAVA_HOME", unpacked.runtime().toString(),
            "TALLYWALL_JAVA_OPTS", "-Xmx100m -showversion");

    UnpackedZip.Outcome outcome = unpacked.run(machine, environment, starter, "--version");

    assertThat(outcome.exitCode()).isZero();
    assertThat(outcome.errors()).contains("version \"");
  }

  @Test
  void starter_withoutJava_saysSoInOneLine() {
    assertComplains(unpacked.run(machine, Map.of("PATH", unpacked.tools()), starter), "no Java");
  }

  @Test
  void starter_withWrongJavaHome_saysSoInOneLine() {
    Map<String, String> environment = Map.of("PATH", unpacked.tools(), "JAVA_HOME", "/nowhere");

    assertComplains(unpacked.run(machine, environment, starter), "\"/nowhere\"");
  }

  @Test
  void starter_withJavaThatRefusesTheOption_saysItIsTooOld() throws IOException {
    Path old = Files.createDirectories(machine.resolve("old java/bin")).resolve("java");
    Files.writeString(old, "#!/usr/bin/env bash\necho 'Unrecognized option' >&2\nexit 1\n");
    Files.setPosixFilePermissions(old, Files.getPosixFilePermissions(Path.of(starter)));
    Map<String, String> environment =
        Map.of("PATH", unpacked.tools(), "JAVA_HOME", machine.resolve("old java").toString());

    assertComplains(unpacked.run(machine, environment, starter), "too old");
  }

  @Test
  void zip_cardsScenesAndStudies_areThoseOfTheSourceTree() throws IOException {
    for (String folder : new String[] {"cards", "scenes", "studies"}) {
      assertThat(names(unpacked.home().resolve(folder))).isEqualTo(names(Path.of(folder)));
    }
  }

  @Test
  void windowsStarter_everyLine_endsAsWindowsWantsIt() throws IOException {
    String text = Files.readString(unpacked.home().resolve("tallywall.cmd"));

    assertThat(text).contains("%~dp0lib\\tallywall.jar").endsWith("\r\n");
    assertThat(text.replace("\r\n", "")).doesNotContain("\n", "\r");
    assertThat(text.chars()).allMatch(character -> character < 128);
  }

  private static void assertStarts(UnpackedZip.Outcome outcome) {
    assertThat(outcome.errors()).isEmpty();
    assertThat(outcome.output()).startsWith("tallywall " + version()).endsWith("\n");
    assertThat(outcome.exitCode()).isZero();
  }

  private static void assertComplains(UnpackedZip.Outcome outcome, String what) {
    assertThat(outcome.output()).isEmpty();
    assertThat(outcome.errors()).startsWith("tallywall: ").contains(what).hasLineCount(1);
    assertThat(outcome.exitCode()).isEqualTo(2);
  }

  private static String version() {
    return unpacked.home().getFileName().toString().replace("tallywall-", "");
  }

  private static Set<String> names(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      Set<String> names = new TreeSet<>();
      files.filter(Files::isRegularFile).forEach(f -> names.add(folder.relativize(f).toString()));
      return names;
    }
  }
}
