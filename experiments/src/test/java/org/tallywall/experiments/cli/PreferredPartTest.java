package org.tallywall.experiments.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A family or line of the card in a setting: from the file to the papers, whatever it is called.
 */
class PreferredPartTest {
  /** A formula, a mark-up, a turn of the writing, and the words of sayings. */
  private static final String NAME = "=1+1; <b>this line</b>: |x| (at-once) \\u202Eba";

  private static final String CARD =
      Cards.SMALL.replace("\"Ladders\"", "\"" + NAME + "\"").replace("Vanes", "none");
  private static final String SWEEP =
      """
      { "study": "sweep", "card": "card.json", "seed": 5,
        "sweep": { "player": "reckoner", "setting": "aim.prefer-family",
                   "values": ["", "%s", "Couples"], "baseline": "" },
        "others": "reckoner", "seats": 0, "primary": "points", "deals": 40 }
      """;

  @TempDir Path folder;

  @Test
  void sweepOverFamilies_isPlayedAndTold_whateverTheyAreCalled() throws IOException {
    Cards.write(folder, "card.json", CARD);
    Path out = folder.resolve("out");

    Typed run =
        Typed.run(
            "run", Cards.write(folder, "s.json", SWEEP.formatted(NAME)), "--out", out.toString());

    assertThat(run.err()).isEmpty();
    assertThat(run.code()).isZero();
    assertThat(Typed.run("verify", out.toString()).err()).isEmpty();
    assertThat(Typed.run("report", out.toString()).code()).isZero();
    String notes = Files.readString(out.resolve("notes.md"));
    assertThat(notes).contains("leans toward the family “Couples”");
    assertThat(notes).contains("leans toward no family").doesNotContain("\u202E", "<b>");
    assertThat(Files.readString(out.resolve("report.html"))).doesNotContain("\u202E", "<b>this");
    assertThat(Files.readString(out.resolve("sweep.csv"))).doesNotContain("\n=1", ",=1");
    assertThat(out.resolve("study.json")).content().contains("this line");
  }

  @Test
  void sweepInWhichTwoValuesHaveOneName_isRefused() {
    Cards.write(folder, "card.json", CARD);
    String study = Cards.write(folder, "s.json", SWEEP.formatted("none"));

    Typed run = Typed.run("run", study, "--out", folder.resolve("out").toString());

    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).contains("the value none stands twice");
  }

  @Test
  void nameThatTheCardDoesNotHave_isRefusedBeforeAGameOrAnAnswer() {
    String card = Cards.small(folder);
    String player =
        Cards.write(
            folder, "p.json", "{ \"player\": \"watchful\", \"aim.prefer-line\": \"the pierr\" }");
    String good = "did you mean \"the pier\"?";
    String sheet =
        Cards.write(folder, "p.txt", "seat 0\nmoment turn\nwall 80\nrack 2222333444555b J\n");

    Typed game =
        Typed.run(
            "game",
            "--card",
            card,
            "--seed",
            "1",
            "--deal",
            "0",
            "--players",
            "nearest,nearest,nearest," + player);
    Typed ask = Typed.run("ask", sheet, "--card", card, "--player", player);

    assertThat(game.code()).isEqualTo(2);
    assertThat(game.err()).contains("p.json", "\"aim.prefer-line\"", good);
    assertThat(ask.code()).isEqualTo(2);
    assertThat(ask.err()).contains("p.json", good);
  }
}
