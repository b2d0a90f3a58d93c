package org.tallywall.experiments.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A player that sees more than a seat may, in a single game, on a sheet, and in the list. */
class KnowingGameTest {
  private static final String CARD = "scenes/heron-reach/card.json";
  private static final String MARK = "sees more than a seat may";

  @TempDir Path folder;
  private String knowing;

  @BeforeEach
  void write() throws IOException {
    knowing =
        Files.writeString(
                folder.resolve("knowing.json"),
                "{ \"player\": \"reckoner\", \"knows.racks\": true }")
            .toString();
  }

  private Typed game(String... more) {
    String[] words = {"game", "--card", CARD, "--seed", "3", "--deal", "1", "--players"};
    String[] all = new String[words.length + 1 + more.length];
    System.arraycopy(words, 0, all, 0, words.length);
    all[words.length] = knowing + ",nearest,reckoner,nearest";
    System.arraycopy(more, 0, all, words.length + 1, more.length);
    return Typed.run(all);
  }

  @Test
  void game_saysWhoSeesMore() {
    Typed told = game();

    assertThat(told.out())
        .contains("East: reckoner (" + MARK + ")", "across from East: reckoner\n");
  }

  @Test
  void page_saysWhoSeesMore() throws IOException {
    Path page = folder.resolve("game.html");
    assertThat(game("--html", page.toString()).code()).isZero();

    assertThat(Files.readString(page))
        .contains("reckoner with settings of its own (" + MARK + ")", "across from East reckoner,");
  }

  @Test
  void sheet_isNotPutToWhoSeesMore() {
    Typed asked =
        Typed.run(
            "ask", "scenes/heron-reach/hold-her-tile.txt", "--card", CARD, "--player", knowing);

    assertThat(asked.code()).isEqualTo(2);
    assertThat(asked.err()).contains("\"reckoner\" " + MARK + ", which no sheet shows");
  }

  @Test
  void settings_areListedAsYardsticks() {
    assertThat(Typed.run("players", "watchful", "knows").out())
        .contains("yardsticks, not ways of playing", "knows.racks (true or false; usually false)");
  }
}
