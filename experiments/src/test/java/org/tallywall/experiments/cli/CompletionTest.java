package org.tallywall.experiments.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** A bash that has read the script completes commands, and those below them, and options. */
@DisabledOnOs(value = OS.WINDOWS, disabledReason = "the script is for bash and zsh")
class CompletionTest {
  @TempDir Path folder;

  /** What bash offers for words of a command, as its own completion would ask for it. */
  private String offered(String program, String... words) throws Exception {
    Typed script = Typed.run("completion");
    assertThat(script.err()).isEmpty();
    assertThat(script.code()).isZero();
    Path file = Files.writeString(folder.resolve("completion"), script.out());
    StringBuilder typed = new StringBuilder("COMP_WORDS=('" + program + "'");
    for (String word : words) {
      typed.append(" '").append(word).append("'");
    }
    String ask =
        """
        set -u; eval "$(cat '%s')"; set +u
        %s)
        COMP_CWORD=%s
        command=${COMP_WORDS[0]##*/}
        set -- $(complete -p "$command")
        while [ "$1" != -F ]; do shift; done
        "$2" "$command" "${COMP_WORDS[COMP_CWORD]}" ""
        echo "${COMPREPLY[@]}"
        """
            .formatted(file, typed, words.length);
    return shell(ask);
  }

  private String shell(String script) throws IOException, InterruptedException {
    Path out = folder.resolve("out");
    Process bash =
        new ProcessBuilder("bash", "--norc", "-c", script)
            .redirectOutput(out.toFile())
            .redirectError(folder.resolve("err").toFile())
            .start();
    assertThat(bash.waitFor(10, TimeUnit.MINUTES)).isTrue();
    String said = Files.readString(out);
    assertThat(bash.exitValue()).as(Files.readString(folder.resolve("err"))).isZero();
    return said.strip();
  }

  @Test
  void commands_areCompleted() throws Exception {
    assertThat(offered("tallywall", "ru")).isEqualTo("run rules");
    assertThat(offered("./tallywall", "card", "ch")).isEqualTo("check");
    assertThat(offered("tallywall", "study", "new", "--o")).isEqualTo("--out");
  }

  @Test
  void words_ofWhichOneIsWanted_areCompleted() throws Exception {
    assertThat(offered("tallywall", "run", "--on-existing", "")).isEqualTo("fail resume overwrite");
    assertThat(offered("tallywall", "run", "a.json", "--on-existing", "re")).isEqualTo("resume");
    assertThat(offered("tallywall", "players", "wat")).isEqualTo("watchful");
    assertThat(offered("tallywall", "ask", "a.txt", "--player", "wat")).isEqualTo("watchful");
  }

  @Test
  void script_isGoodBash() throws Exception {
    Path file = Files.writeString(folder.resolve("completion"), Typed.run("completion").out());

    assertThat(shell("bash -n '" + file + "'")).isEmpty();
  }
}
