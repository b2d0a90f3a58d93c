package org.tallywall.experiments.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The chart and the table that the README shows are those of its first study, to the last digit.
 */
@Tag("long")
class ReadmeFiguresTest {
  private static final Path STUDIES = Path.of("studies");

  @TempDir private Path folder;

  @Test
  void readme_showsTheDemoStudy_asItComesOutToday() throws IOException {
    Path out = folder.resolve("does-defense-help");
    Typed typed =
        Typed.run(
            "run", STUDIES.resolve("does-defense-help.json").toString(), "--out", out.toString());
    assertThat(typed.code()).isZero();

    assertThat(STUDIES.resolve("does-defense-help-differences.svg"))
        .hasSameTextualContentAs(out.resolve("charts/differences.svg"));
    List<String> table =
        Files.readAllLines(out.resolve("notes.md")).stream()
            .filter(line -> line.startsWith("| "))
            .toList();
    assertThat(table).hasSize(5);
    assertThat(Files.readAllLines(Path.of("../README.md"))).containsSubsequence(table);
  }

  @Test
  void readme_showsTheAnswerOfItsReview_asItComesOutToday() throws IOException {
    String readme = Files.readString(Path.of("../README.md"));
    Typed typed =
        Typed.run(
            "review",
            "positions/12-call-with-the-last-joker.txt",
            "--card",
            "cards/saltmarsh-quay.json",
            "--playouts",
            "20000");
    assertThat(typed.code()).isZero();
    String quoted =
        readme.lines().filter(line -> line.startsWith("> **Best: ")).findFirst().orElseThrow();
    String answer = quoted.replace("> **", "").replace("**", "");
    assertThat(typed.out().replaceAll("\\s+", " ")).contains(answer);
  }
}
