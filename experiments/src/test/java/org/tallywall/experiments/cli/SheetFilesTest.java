package org.tallywall.experiments.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A position may come from standard input, and its card from beside it. */
class SheetFilesTest {
  private static final Path SCENES = Path.of("scenes/heron-reach");
  private static final Path SCENE = SCENES.resolve("call-to-be-one-away.txt");
  private static final String CARD = SCENES.resolve("card.json").toString();

  @TempDir Path folder;

  private static Typed send(byte[] text, String... words) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    Console console = Console.withoutProgress(new ByteArrayInputStream(text), out, err, 100);
    int code = new Program(console).run(words);
    return new Typed(
        code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
  }

  @Test
  void position_fromStandardInput_isAnsweredAsTheFileIs() throws IOException {
    Typed sent = send(Files.readAllBytes(SCENE), "ask", "-", "--card", CARD);

    assertThat(sent.err()).isEmpty();
    assertThat(sent).isEqualTo(Typed.run("ask", SCENE.toString(), "--card", CARD));
  }

  @Test
  void position_fromStandardInput_hasItsFaultsNamed() {
    Typed sent = send("seat 9".getBytes(StandardCharsets.UTF_8), "ask", "-", "--card", CARD);

    assertThat(sent.code()).isEqualTo(Program.WRONG_INPUT);
    assertThat(sent.err()).contains("standard input:1:6: there is no seat \"9\"");
  }

  @Test
  void player_notNamed_isTheWatchfulOne() {
    assertThat(Typed.run("ask", SCENE.toString(), "--card", CARD))
        .isEqualTo(Typed.run("ask", SCENE.toString(), "--card", CARD, "--player", "watchful"));
  }

  @Test
  void card_besideThePosition_isTaken() {
    assertThat(Typed.run("ask", SCENE.toString()))
        .isEqualTo(Typed.run("ask", SCENE.toString(), "--card", CARD));
  }

  @Test
  void card_nowhere_isAskedFor() throws IOException {
    Path alone = Files.copy(SCENE, folder.resolve("alone.txt"));

    assertThat(Typed.run("ask", alone.toString()).err())
        .contains("--card my-card.json", "there is no card.json beside the position");
    assertThat(Typed.run("ask", SCENE.toString(), alone.toString()).err())
        .contains("--card my-card.json", "the positions lie in several folders");
  }
}
