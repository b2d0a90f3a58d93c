package org.tallywall.experiments.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.NullAndEmptySource;
import org.junit.jupiter.params.provider.ValueSource;

/** What the program tells somebody to type can be typed as it stands, however it was called. */
class CalledAsTest {
  private static final String HERE = "./tallywall";

  @TempDir Path folder;

  @Test
  void commands_areThoseOfTheProgram() {
    Console nowhere =
        new Console(OutputStream.nullOutputStream(), OutputStream.nullOutputStream(), 100, false);

    assertThat(CalledAs.COMMANDS).containsExactlyInAnyOrderElementsOf(new Program(nowhere).names());
  }

  @ParameterizedTest
  @NullAndEmptySource
  @ValueSource(
      strings = {
        "my folder/tallywall",
        "./tally;wall",
        "$(id)/tallywall",
        "-x",
        "t\u00e4lly/wall",
        "a\nb",
        "C:\\tallywall.cmd"
      })
  void anythingButAPlainPath_isTheName(String said) {
    assertThat(CalledAs.of(said).words()).isEqualTo("tallywall");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Next: tallywall run my.json | Next: ../tallywall run my.json",
        "tallywall help lists; tallywall rules | ../tallywall help lists; ../tallywall rules",
        "eval \"$(tallywall completion)\" | eval \"$(../tallywall completion)\"",
        "by a version of tallywall that counts | by a version of tallywall that counts",
        "tallywall: no such file | tallywall: no such file",
        "in /opt/tallywall run by hand | in /opt/tallywall run by hand",
        "tallywall runs | tallywall runs"
      })
  void commandsAlone_areShownAsTheyAreTyped(String text, String shown) {
    assertThat(CalledAs.of("../tallywall").in(text)).isEqualTo(shown);
    assertThat(CalledAs.of("tallywall").in(text)).isEqualTo(text);
  }

  @Test
  void welcomeHelpAndFaults_nameCommandsThatCanBeTyped() {
    for (String[] words :
        List.of(
            new String[] {},
            new String[] {"help"},
            new String[] {"help", "game"},
            new String[] {"rules", "--help"},
            new String[] {"completion", "--help"},
            new String[] {"players"},
            new String[] {"study", "new"},
            new String[] {"players", "jokers"},
            new String[] {"rack", "--wrong"})) {
      Typed plain = Typed.run(words);
      Typed typed = Typed.as(HERE, words);

      assertThat(plain.out() + plain.err()).containsPattern("tallywall [a-z]+");
      assertThat(typed.out() + typed.err())
          .contains(HERE + " ")
          .doesNotContainPattern("(?<!\\./)tallywall [a-z-]");
    }
  }

  @Test
  void completion_isForTheNameAtTheEndOfThePath() {
    String plain = Typed.run("completion").out();

    assertThat(Typed.as(HERE, "completion").out()).isEqualTo(plain);
    assertThat(Typed.as("/opt/bin/tallywall", "completion").out()).isEqualTo(plain);
    assertThat(Typed.as("./tw", "completion").out()).contains("# tw Bash Completion");
  }

  @Test
  void studyToFillIn_isTheSameWhateverTheCaller() {
    assertThat(Typed.as(HERE, "study", "new", "table").out())
        .isEqualTo(Typed.run("study", "new", "table").out())
        .contains("\"tallywall rules\"");
  }

  /** The script that starts the program, with a Java that only says what it was given. */
  @ParameterizedTest
  @DisabledOnOs(value = OS.WINDOWS, disabledReason = "the script is for bash")
  @CsvSource({
    "./tallywall x, ./tallywall",
    "cd lib && ../tallywall x, ../tallywall",
    "bash tallywall x, ./tallywall",
    "PATH=$PWD:$PATH; tallywall x, tallywall",
    "ln -s tallywall tw; ./tw x, ./tw"
  })
  void script_saysHowItWasCalled(String command, String called) throws Exception {
    assertThat(started(command)).contains("-Dtallywall.called-as=" + called + "\n");
  }

  private String started(String command) throws IOException, InterruptedException {
    Path script = folder.resolve("tallywall");
    Files.copy(Path.of("src/main/dist/tallywall"), script);
    program(script);
    Files.writeString(Files.createDirectories(folder.resolve("lib")).resolve("tallywall.jar"), "");
    Path java = Files.createDirectories(folder.resolve("runtime/bin")).resolve("java");
    Files.writeString(java, "#!/usr/bin/env bash\nprintf '%s\\n' \"$@\"\n");
    program(java);
    Path out = folder.resolve("out");
    Process bash =
        new ProcessBuilder("bash", "--norc", "-c", command)
            .directory(folder.toFile())
            .redirectErrorStream(true)
            .redirectOutput(out.toFile())
            .start();
    assertThat(bash.waitFor(10, TimeUnit.MINUTES)).isTrue();
    return Files.readString(out);
  }

  private static void program(Path file) throws IOException {
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rwxr-xr-x"));
  }
}
