package org.tallywall.experiments.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A club's tally is compared from the command line. */
class ClubCommandTest {
  private static final String CARD = "cards/pebble-cove.json";

  @TempDir Path folder;

  private Path tally() throws IOException {
    Path file = folder.resolve("tally.csv");
    return Files.writeString(file, "games, 40\nwall games, 5\nself-picked wins, 12\n");
  }

  private Typed club(String tally, String... more) {
    String[] words = new String[6 + more.length];
    System.arraycopy(
        new String[] {"club", tally, "--card", CARD, "--games", "100"}, 0, words, 0, 6);
    System.arraycopy(more, 0, words, 6, more.length);
    return Typed.run(words);
  }

  @Test
  void club_saysWhichTableIsMostLike_alikeForAnyNumberOfThreads() throws IOException {
    String file = tally().toString();
    Typed one = club(file, "--among", "newcomer,nearest", "--threads", "1");
    Typed three = club(file, "--among", "newcomer,nearest", "--threads", "3");
    assertThat(one.code()).isZero();
    assertThat(one.out())
        .contains("most like", "40 games, counted as you did, are", "about people or stakes")
        .isEqualTo(three.out());
  }

  @Test
  void club_writesPapers() throws IOException {
    Path page = folder.resolve("club.html");
    Path notes = folder.resolve("club.md");
    Path csv = folder.resolve("club.csv");
    Typed typed =
        club(
            tally().toString(),
            "--among",
            "newcomer,nearest",
            "--html",
            page.toString(),
            "--md",
            notes.toString(),
            "--csv",
            csv.toString());
    assertThat(typed.code()).isZero();
    assertThat(page).content().contains("about people or stakes");
    assertThat(notes).content().contains("| newcomer |");
    assertThat(csv).content().startsWith("table,share,wall-games,");
  }

  @Test
  void new_printsATallyOfTheCard() {
    Typed typed = Typed.run("club", "--new", "--card", CARD);
    assertThat(typed.code()).isZero();
    assertThat(typed.out()).contains("\ngames,\n", "\nwon on Stairs,\n");
  }

  @Test
  void wrongInput_isRefusedInASentence() throws IOException {
    String file = tally().toString();
    refused(Typed.run("club", "--card", CARD), "--new");
    refused(Typed.run("club", file, "--card", CARD, "--new"), "--new");
    refused(club(file, "--among", "newcomer"), "two or more");
    refused(club(file, "--among", "newcomer,newcomer"), "each once");
    refused(club(file, "--among", "newcomer,open-tiles"), "sees all racks");
    refused(club(file, "--html", "x.md", "--md", "x.md"), "same file");
    refused(Typed.run("club", file, "--card", CARD, "--games", "99"), "from 100 to 100,000");
    refused(club(folder.resolve("none.csv").toString()), "no such file");
  }

  private static void refused(Typed typed, String said) {
    assertThat(typed.code()).isEqualTo(Program.WRONG_INPUT);
    assertThat(typed.err()).contains(said);
  }
}
