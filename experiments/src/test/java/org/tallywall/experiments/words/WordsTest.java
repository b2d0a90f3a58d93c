package org.tallywall.experiments.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A command that is offered for copying does what it says, whatever its words hold. */
class WordsTest {
  @ParameterizedTest
  @DisabledOnOs(value = OS.WINDOWS, disabledReason = "there is no such shell")
  @ValueSource(
      strings = {
        "plain.json", "my study.json", "$(echo no)", "`echo no`", "a\"b'c", "a\\b$HOME", "~", "!!",
        "a;b|c&d>e<f", "line\nfeed", "Ufer–Größe.json", "*", "'", "", "#x", "(a)"
      })
  void typedWord_isTheWordAgainInAShell(String word) throws IOException, InterruptedException {
    Process shell =
        new ProcessBuilder("sh", "-c", "printf %s " + Words.typed(word))
            .redirectErrorStream(true)
            .start();
    String printed = new String(shell.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(shell.waitFor()).isZero();
    assertThat(printed).isEqualTo(word);
  }

  @Test
  void plainWords_areTypedAsTheyAre() {
    assertThat(Words.typed("results/first-look")).isEqualTo("results/first-look");
    assertThat(Words.typed("my study.json")).isEqualTo("\"my study.json\"");
    assertThat(Words.resuming(List.of("tallywall", "run", "a b", "--on-existing", "fail")))
        .isEqualTo("tallywall run \"a b\" --on-existing resume");
  }
}
