package org.tallywall.experiments.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Slips in recorded games, as they are printed and written. */
class MannersCommandTest {
  private static final String CARD = "cards/saltmarsh-quay.json";

  @TempDir Path folder;
  private String records;

  @BeforeEach
  void record() {
    records = folder.resolve("game.jsonl").toString();
    Typed game =
        Typed.run(
            "game",
            "--card",
            CARD,
            "--seed",
            "7",
            "--deal",
            "3",
            "--record",
            records,
            "--players",
            "reckoner,reckoner,reckoner,reckoner");
    assertThat(game.code()).as(game.err()).isZero();
  }

  @Test
  void count_namesEveryKindAndWritesIt() throws IOException {
    Path csv = folder.resolve("slips.csv");
    Typed typed = Typed.run("manners", records, "--card", CARD, "--csv", csv.toString());

    assertThat(typed.err()).isEmpty();
    assertThat(typed.code()).isZero();
    assertThat(typed.out())
        .contains(" in 1 game.", "pair passed", "ready hand broken late", "What is counted");
    assertThat(typed.out().lines()).allMatch(line -> line.length() <= 100);
    assertThat(Files.readAllLines(csv)).hasSize(10);
  }

  @Test
  void wrongInput_isRefusedInASentence() {
    assertThat(Typed.run("manners", folder.toString(), "--card", CARD).code()).isEqualTo(2);
    assertThat(Typed.run("manners", records + "x", "--card", CARD).err()).contains("is no file");
    assertThat(Typed.run("manners", records).err()).contains("--card");
    Typed many = Typed.run("manners", records, "--card", CARD, "--places", "-1");
    assertThat(many.code()).isEqualTo(2);
    assertThat(many.err()).contains("--places takes a number from 0 to 1,000, not -1");
    String other = "cards/kite-hill.json";
    if (Files.exists(Path.of(other))) {
      assertThat(Typed.run("manners", records, "--card", other).code()).isEqualTo(2);
    }
  }
}
