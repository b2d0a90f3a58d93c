package org.tallywall.experiments.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Wrong usage gives one clear message and 2, never the inside of the program. */
class ProgramTest {

  @Test
  void version_asked_isOneLine() {
    Typed typed = Typed.run("--version");

    assertThat(typed.code()).isZero();
    assertThat(typed.out()).startsWith("tallywall ").hasLineCount(1).endsWith("\n");
    assertThat(typed.err()).isEmpty();
  }

  @Test
  void command_misspelt_nearestIsNamed() {
    Typed typed = Typed.run("rakc", "card.json");

    assertThat(typed.code()).isEqualTo(2);
    assertThat(typed.out()).isEmpty();
    assertThat(typed.err()).startsWith("tallywall: there is no command \"rakc\"");
    assertThat(typed.err()).contains("did you mean \"rack\"?");
  }

  @Test
  void commandOfCards_misspelt_nearestIsNamed() {
    Typed typed = Typed.run("card", "chek", "card.json");

    assertThat(typed.code()).isEqualTo(2);
    assertThat(typed.err()).contains("did you mean \"check\"?");
  }

  @Test
  void option_misspelt_nearestIsNamed() {
    Typed typed = Typed.run("rack", "card.json", "--expsed", "FFF");

    assertThat(typed.code()).isEqualTo(2);
    assertThat(typed.err()).contains("no option \"--expsed\"", "did you mean \"--exposed\"?");
  }

  @ParameterizedTest
  @ValueSource(strings = {"card", "study"})
  void command_missing_isAskedFor(String words) {
    Typed typed = Typed.run(words);

    assertThat(typed.code()).isEqualTo(2);
    assertThat(typed.err()).startsWith("tallywall: name what to do").doesNotContain("Exception");
  }

  @Test
  void argument_missing_isNamed() {
    assertThat(Typed.run("card", "check").err()).startsWith("tallywall: FILE is missing");
  }

  @Test
  void argument_tooMany_isExplained() {
    assertThat(Typed.run("card", "check", "a", "b").err()).contains("unexpected \"b\"");
  }

  static Iterable<String> commands() {
    return new Program(
            new Console(
                OutputStream.nullOutputStream(), OutputStream.nullOutputStream(), 100, false))
        .names();
  }

  @ParameterizedTest
  @MethodSource("commands")
  void help_ofEveryCommand_isShort(String command) {
    Typed typed = Typed.run(command, "--help");

    assertThat(typed.code()).isZero();
    assertThat(typed.out()).startsWith("Usage: tallywall " + command);
    assertThat(typed.out().lines().count()).isLessThan(40);
    assertThat(typed.out()).doesNotContain("java", "Exception");
  }

  /** These words are looked for wherever the program must not break. */
  @Test
  void program_thatBreaks_saysSoInOneLine() {
    OutputStream broken =
        new OutputStream() {
          private boolean before;

          @Override
          public void write(int letter) {
            if (!before) {
              before = true;
              throw new IllegalStateException("broken");
            }
          }
        };
    ByteArrayOutputStream err = new ByteArrayOutputStream();

    int code = new Program(new Console(broken, err, 100, false)).run("completion");

    assertThat(code).isEqualTo(1);
    assertThat(err.toString(StandardCharsets.UTF_8))
        .startsWith("tallywall: internal error; please report it")
        .hasLineCount(1);
  }

  @Test
  void output_notWritable_saysSo() {
    OutputStream full =
        new OutputStream() {
          @Override
          public void write(int letter) throws IOException {
            throw new IOException("No space left on device");
          }
        };
    ByteArrayOutputStream err = new ByteArrayOutputStream();

    int code = new Program(new Console(full, err, 100, false)).run("--version");

    assertThat(code).isEqualTo(1);
    assertThat(err.toString(StandardCharsets.UTF_8))
        .isEqualTo("tallywall: standard output could not be written; is the disk full?\n");
  }
}
