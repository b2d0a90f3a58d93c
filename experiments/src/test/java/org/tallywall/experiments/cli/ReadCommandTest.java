package org.tallywall.experiments.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the others may hold in a position that is typed. */
class ReadCommandTest {
  private static final String FOLDER = "scenes/heron-reach/";
  private static final String FURTHER = "scenes/heron-reach-further/";
  private static final String HER_TILE = FOLDER + "hold-her-tile.txt";

  @TempDir Path folder;

  private static Typed read(String sheet, String... more) {
    List<String> words = new ArrayList<>(List.of("read", sheet, "--worlds", "400"));
    words.addAll(List.of("--card", FOLDER + "card.json"));
    words.addAll(List.of(more));
    return Typed.run(words.toArray(new String[0]));
  }

  private String write(String text) throws IOException {
    return Files.writeString(folder.resolve("mine.txt"), text).toString();
  }

  /** Seat 2 shows NNNJ SSS: one line is left to her, and 1b 5b 9b are what she lacks. */
  @Test
  void read_aTurn_saysWhomToWatchAndWhatIsSafe() {
    Typed typed = read(HER_TILE);

    assertThat(typed.err()).isEmpty();
    assertThat(typed.code()).isZero();
    assertThat(typed.out())
        .startsWith(
            "What the others may hold: hold-her-tile\n\nWatch seat 2: her NNNJ and SSS leave")
        .contains("one line of 10, Winds and dragons H1")
        .contains("most careful with is 9b", "nobody can take W, whatever the others hold.")
        .contains("- 6c, 2d, 3d, 4d, G, 0, F – a fact: seat 2 cannot take it: no hand left by her")
        .contains(
            "- 5d – a fact: seat 2 cannot take it: each hand left that needs it also needs 1d, ")
        .contains("- W – a fact: no line of this card has it.")
        .contains("\nSeat 1\n", "\nSeat 2\n", "\nSeat 3\n", "strategies/CALIBRATION.md")
        .containsPattern("\nW +never +never ");
    assertThat(typed.out().lines()).allMatch(line -> line.length() <= 100);
  }

  @Test
  void read_twice_isTheSame_andAnotherSeedIsNot() {
    String once = read(HER_TILE).out();

    assertThat(read(HER_TILE).out()).isEqualTo(once);
    assertThat(read(HER_TILE, "--seed", "2").out()).isNotEqualTo(once);
  }

  @Test
  void read_short_isThreeSentences() {
    Typed typed = read(HER_TILE, "--short");

    assertThat(typed.code()).isZero();
    String text = typed.out().replace('\n', ' ').strip();
    assertThat(text.split("\\. (?=[A-Z])")).hasSize(3);
    assertThat(text)
        .startsWith("Watch seat 2: ")
        .endsWith(
            "These are 400 guesses of the hidden tiles, with the others played by watchful:"
                + " programmed players, points, and one card, not people or stakes.");
  }

  /** Evidence is not called a fact: she threw a 7d long ago, and a 7c has just gone around. */
  @Test
  void read_tilesThatWentBy_areEvidence() {
    Typed typed = read(FURTHER + "her-seven-has-just-gone-round.txt");

    assertThat(typed.out())
        .contains(
            "- 7c – evidence only: each of the others threw one or let one go by with the rack")
        .contains("- 7d – evidence only: seat 1 threw one earlier.")
        .containsPattern("\n7c .* just went around\n");
  }

  /** All four 1d are on this rack, so the only line of seat 3 is dead and she cannot know it. */
  @Test
  void read_aLineThatTheOwnRackRulesOut_isStillWhatShePlays() {
    Typed typed = read(FURTHER + "two-on-the-table-are-not-two-on-one-rack.txt");

    assertThat(typed.out())
        .contains("Her 999d leaves one line of 10, Winds and dragons H1. With the tiles of this")
        .contains("it\ncannot be made any more, which she cannot see.")
        .contains("seat 3 cannot take it: all other 1d are in view, and no hand left needs just");
  }

  @Test
  void read_anOffer_readsTheRackThatIsAsked() {
    Typed typed = read(FOLDER + "call-to-be-one-away.txt");

    assertThat(typed.code()).isZero();
    assertThat(typed.out())
        .startsWith("What the others may hold: call-to-be-one-away\n\nNobody looks close: ")
        .contains("- J – a fact: a discarded joker cannot be claimed.")
        .contains("\nSeat 3\n", "\nSeat 0\n", "\nSeat 1\n")
        .doesNotContain("\nSeat 2\n");
  }

  @Test
  void read_aDeadHand_takesNothing() throws IOException {
    String text = Files.readString(Path.of(HER_TILE)) + "dead 1 3\n";

    Typed typed = read(write(text));

    assertThat(typed.err()).isEmpty();
    assertThat(typed.out())
        .contains("nobody can take 6c, 2d, 3d, or 4d (or 5 more kinds)")
        .contains("Seat 1\n\nHer hand was called dead, so she takes no more tiles.")
        .contains("seat 1 and seat 3 cannot take it: a dead hand takes");
  }

  @Test
  void read_players_areNamed_andTheSheetGoesBefore() throws IOException {
    String sheet = write(Files.readString(Path.of(HER_TILE)) + "plays 2 newcomer\n");

    assertThat(read(sheet, "--players", "nearest", "--short").out().replace('\n', ' '))
        .contains(
            "played by nearest (seat 0), nearest (seat 1), newcomer (seat 2), and nearest (seat 3)");
    assertThat(read(HER_TILE, "--players", "nearest,nearest").err()).contains("four with commas");
    assertThat(read(HER_TILE, "--players", "nobody").err()).contains("unknown player \"nobody\"");
    assertThat(read(HER_TILE, "--players", "open-tiles").err()).contains("sees all racks");
  }

  @Test
  void read_inThePasses_isRefusedInASentence() {
    Typed typed = read(FOLDER + "pass-the-strangers.txt");

    assertThat(typed.code()).isEqualTo(2);
    assertThat(typed.out()).isEmpty();
    assertThat(typed.err())
        .startsWith("tallywall: read looks at a turn or at a discard on offer; ");
    assertThat(typed.err().lines()).hasSize(1);
  }

  @Test
  void read_wrongWords_areRefused() throws IOException {
    assertThat(Typed.run("read", HER_TILE, "--worlds", "99").err())
        .contains("from 100 to 100,000, not 99");
    assertThat(Typed.run("read", HER_TILE, "--worlds", "100001").code()).isEqualTo(2);
    assertThat(read(HER_TILE, "--seed", "x").err()).contains("\"x\" is not a whole number");
    assertThat(Typed.run("read").err()).contains("SHEET is missing");
    assertThat(Typed.run("read", HER_TILE, HER_TILE).code()).isEqualTo(2);
    assertThat(read(write("seat 0\nmoment turn\n")).err()).contains("\"rack\" is missing");
    assertThat(read(folder.resolve("none.txt").toString()).code()).isEqualTo(2);
  }

  @Test
  void read_papers_holdTheSameWords_andTakeNoForeignPlace() throws IOException {
    Path page = folder.resolve("page.html");
    Path notes = folder.resolve("notes.md");
    String[] both = {"--html", page.toString(), "--md", notes.toString()};

    Typed typed = read(HER_TILE, both);

    assertThat(typed.err()).isEmpty();
    assertThat(typed.out()).contains("Wrote " + page, "Wrote " + notes, "notes-danger.svg\n");
    assertThat(Files.readString(page))
        .contains("her NNNJ and SSS leave one line of 10", "href=\"#tile-9b\"", "<svg");
    assertThat(Files.readString(notes))
        .contains("**Watch seat 2: her NNNJ and SSS leave one line of 10")
        .contains("](<notes-danger.svg>)", "| 9b | ");
    assertThat(folder.resolve("notes-danger.svg")).exists();
    assertThat(read(HER_TILE, both).err()).contains("notes.md\" exists already");
    assertThat(read(HER_TILE, "--html", page.toString()).code()).isZero();
    Files.writeString(page, "mine");
    assertThat(read(HER_TILE, "--html", page.toString()).err())
        .contains("exists already and is not the page of a reading");
    assertThat(Files.readString(page)).isEqualTo("mine");
  }
}
