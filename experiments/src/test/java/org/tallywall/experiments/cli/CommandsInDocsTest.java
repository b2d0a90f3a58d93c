package org.tallywall.experiments.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import picocli.CommandLine;

/**
 * Every command that the README or a help text shows is typed into a shell as it stands there, and
 * does what it should. Only the number of deals is kept small.
 */
@DisabledOnOs(value = OS.WINDOWS, disabledReason = "the commands are typed into a shell")
@Tag("long")
class CommandsInDocsTest {
  @TempDir Path folder;

  private ShellDesk desk;

  @BeforeEach
  void open() throws IOException {
    desk = ShellDesk.in(folder);
  }

  @AfterEach
  void clear() throws IOException {
    desk.clear();
  }

  static List<List<String>> readme() throws IOException {
    List<List<String>> blocks =
        new ArrayList<>(TypedLines.ofMarkdown(Files.readAllLines(Path.of("../README.md"))));
    blocks.addAll(TypedLines.ofMarkdown(Files.readAllLines(Path.of("../strategies/README.md"))));
    return blocks;
  }

  @ParameterizedTest
  @MethodSource
  void readme(List<String> block) throws IOException, InterruptedException {
    for (String command : block) {
      assertDone(command, desk.type(command));
    }
  }

  static List<List<String>> help() {
    List<List<String>> footers = new ArrayList<>();
    Console nowhere =
        new Console(OutputStream.nullOutputStream(), OutputStream.nullOutputStream(), 100, false);
    collect(Commands.all(nowhere), footers);
    return footers;
  }

  private static void collect(CommandLine command, List<List<String>> footers) {
    List<String> shown =
        TypedLines.ofFooter(command.getCommandSpec().usageMessage().footer()).stream()
            .filter(line -> !line.contains("tallywall help COMMAND"))
            .toList();
    if (!shown.isEmpty()) {
      footers.add(shown);
    }
    command.getSubcommands().values().forEach(below -> collect(below, footers));
  }

  @ParameterizedTest
  @MethodSource
  void help(List<String> footer) throws IOException, InterruptedException {
    for (String command : footer) {
      assertDone(command, desk.type(command));
    }
  }

  private static void assertDone(String command, Typed typed) {
    assertThat(typed.code()).as(command + "\n" + typed.err()).isZero();
  }

  @Test
  void commands_thatFail_areFound() throws IOException, InterruptedException {
    List<List<String>> blocks =
        TypedLines.ofMarkdown(
            List.of(
                "    ./tallywall rack my-card.json \"113b\"   too few",
                "text",
                "```",
                "$ tallywall players  all of them",
                "other",
                "```"));

    assertThat(blocks)
        .containsExactly(
            List.of("./tallywall rack my-card.json \"113b\""), List.of("tallywall players"));
    assertThat(desk.type(blocks.get(0).get(0)).code()).isEqualTo(Program.WRONG_INPUT);
    assertThat(desk.type(blocks.get(1).get(0)).code()).isZero();
  }

  @Test
  void commands_areFoundWhereTheyStand() throws IOException {
    assertThat(readme().stream().mapToInt(List::size).sum()).isGreaterThan(10);
    assertThat(help().stream().mapToInt(List::size).sum()).isGreaterThan(10);
  }
}
