package org.tallywall.experiments.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a player knew at a step of a game becomes a sheet that can be asked. */
class SheetOfStepTest {
  private static final String CARD = "cards/saltmarsh-quay.json";

  @TempDir Path folder;

  private Typed game(String... more) {
    List<String> words =
        new ArrayList<>(
            List.of(
                "game",
                "--card",
                CARD,
                "--seed",
                "3",
                "--deal",
                "1",
                "--players",
                "nearest,nearest,reckoner,watchful"));
    words.addAll(List.of(more));
    return Typed.run(words.toArray(new String[0]));
  }

  private String mine() {
    return folder.resolve("mine.txt").toString();
  }

  @Test
  void sheet_ofAStep_isAnsweredByThePlayerAsInTheGame() throws IOException {
    Typed typed = game("--sheet", mine(), "--step", "40");

    assertThat(typed.err()).isEmpty();
    assertThat(typed.code()).isZero();
    assertThat(typed.out())
        .isEqualTo(
            "Wrote "
                + mine()
                + "\nWhat seat 3 knew after step 40, asked: turn drew 4d. In the game: discard 9d.\n");
    assertThat(Files.readString(Path.of(mine())))
        .startsWith("// Deal 1, seed 3, step 40, card Saltmarsh Quay practice card\n")
        .contains("// In the game: discard 9d\nseat     3\nmoment   turn drew 4d\n")
        .contains("plays    2 reckoner\nplays    3 watchful\n")
        .doesNotContain("--rules");
    Typed asked = Typed.run("ask", mine(), "--card", CARD, "--player", "watchful");
    assertThat(asked.code()).isZero();
    assertThat(asked.out()).contains("watchful: discard 9d\n");
  }

  /** A record gives the same sheet as the game itself. */
  @Test
  void sheet_ofARecord_isThatOfTheGame() throws IOException {
    String record = folder.resolve("one.jsonl").toString();
    String other = folder.resolve("other.txt").toString();
    game("--record", record);
    game("--sheet", mine(), "--step", "2", "--asked", "1");
    Typed replayed =
        Typed.run(
            "replay", record, "--card", CARD, "--sheet", other, "--step", "2", "--asked", "1");

    assertThat(replayed.err()).isEmpty();
    assertThat(replayed.code()).isZero();
    assertThat(Files.readString(Path.of(other)))
        .contains("moment   pass across-1\n")
        .isEqualTo(Files.readString(Path.of(mine())));
  }

  @Test
  void step_atWhichNobodyOrSeveralDecide_isRefusedWithThoseWhoDo() {
    assertThat(refused("--sheet", mine(), "--step", "3"))
        .isEqualTo(
            "tallywall: several decide after step 3; write --asked and one of these seats: 0, 1, 2,"
                + " 3\n");
    assertThat(refused("--sheet", mine(), "--step", "40", "--asked", "0"))
        .startsWith(
            "tallywall: seat 0 does not decide after step 40; steps with a decision: 1, 2, 3,");
    assertThat(refused("--sheet", mine(), "--step", "4000"))
        .startsWith("tallywall: --step takes a number from 1 to ");
    assertThat(refused("--sheet", mine())).contains("--sheet needs --step NUMBER");
    assertThat(refused("--step", "4")).contains("--step belongs to --sheet");
    assertThat(refused("--sheet", mine(), "--step", "4", "--asked", "4"))
        .contains("--asked takes a seat from 0 (East) to 3, not 4");
    assertThat(Path.of(mine())).doesNotExist();
  }

  private String refused(String... more) {
    Typed typed = game(more);
    assertThat(typed.code()).isEqualTo(2);
    return typed.err();
  }
}
