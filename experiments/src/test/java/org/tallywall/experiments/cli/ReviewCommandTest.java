package org.tallywall.experiments.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.locks.LockSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A position typed in plain lines is reviewed. */
class ReviewCommandTest {
  private static final String FOLDER = "scenes/heron-reach/";
  private static final String CARD = FOLDER + "card.json";

  @TempDir Path folder;

  private static Typed review(String sheet, String... more) {
    List<String> words = new ArrayList<>(List.of("review", sheet, "--card", CARD));
    words.addAll(List.of(more));
    return Typed.run(words.toArray(String[]::new));
  }

  /** The choices of the first table, those that go on in a second line put together. */
  private static List<String> choices(Typed typed) {
    List<String> choices = new ArrayList<>();
    List<String> lines = typed.out().lines().toList();
    int at =
        lines.indexOf(lines.stream().filter(line -> line.startsWith("-----")).findFirst().get());
    int wide = lines.get(at).indexOf(' ');
    while (!lines.get(++at).isEmpty()) {
      String line = lines.get(at);
      String word = line.substring(0, Math.min(wide, line.length())).strip();
      boolean begins = line.contains(" (");
      if (begins) {
        choices.add(word);
      } else if (!word.isEmpty()) {
        choices.add(choices.remove(choices.size() - 1) + " " + word);
      }
    }
    return choices;
  }

  private String write(String text) throws java.io.IOException {
    return Files.writeString(folder.resolve("mine.txt"), text).toString();
  }

  @Test
  void review_saysFirstWhatThePlayerWouldDo_thenWhatEachChoiceIsWorth() {
    Typed typed =
        review(FOLDER + "stop-when-twelve-stand.txt", "--playouts", "300", "--players", "nearest");

    assertThat(typed.code()).isZero();
    assertThat(typed.err()).isEmpty();
    assertThat(typed.out())
        .startsWith("stop-when-twelve-stand\n  rack ")
        .contains("\n  watchful: stop\n    stop: heading for R1, 2 away")
        .containsPattern("(Best: |No single best choice: )(stop|go on)")
        .contains("What each choice is worth, by 300 games played on")
        .contains("points a game", "against the best", "verdict")
        .containsPattern("\\nstop +[-0-9.]+ \\([-0-9.]+ to [-0-9.]+\\)")
        .contains("four programmed players of the kind \"nearest\"", "150 ways")
        .contains("says nothing about", "points are those of this card", "not stakes")
        .contains("In 95 of 100 reviews");
    assertThat(typed.out().lines()).allMatch(line -> line.length() <= 100);
  }

  @Test
  void review_sameSeedAndGames_saysTheSameWithAnyNumberOfThreads() {
    String sheet = FOLDER + "call-to-be-one-away.txt";
    String alone = review(sheet, "--playouts", "200", "--threads", "1").out();

    assertThat(review(sheet, "--playouts", "200", "--threads", "2").out()).isEqualTo(alone);
    assertThat(review(sheet, "--playouts", "200", "--threads", "5").out()).isEqualTo(alone);
    assertThat(review(sheet, "--playouts", "200", "--threads", "1", "--seed", "2").out())
        .isNotEqualTo(alone);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          pass-the-strangers | pass 1d N R
          stop-when-twelve-stand | go on
          redeem-with-the-stranger | exchange 8c seat 2 then discard E
          win-by-redeeming | exchange 7d seat 3 then mahjong
          concealed-takes-the-last | mahjong
          call-to-be-one-away | claim 4 jokers 1
          hold-her-tile | discard 6c
          """)
  void review_ofEveryMoment_looksAtTheSoundChoice(String scene, String choice) {
    Typed typed = review(FOLDER + scene + ".txt", "--playouts", "24", "--players", "nearest");
    assertThat(typed.err()).isEmpty();
    assertThat(typed.code()).isZero();
    assertThat(choices(typed)).contains(choice);
  }

  @ParameterizedTest
  @CsvSource({
    "courtesy-give-one-stranger", "courtesy-three-when-far", "first-left-one-of-three",
    "last-right-all-unseen", "second-across-no-choice", "east-passes-no-pair"
  })
  void review_ofThePasses_plays(String scene) {
    Typed typed =
        review(
            "scenes/heron-reach-further/" + scene + ".txt",
            "--playouts",
            "24",
            "--players",
            "nearest");
    assertThat(typed.err()).isEmpty();
    assertThat(typed.code()).isZero();
  }

  @Test
  void review_ofChoicesOfYourOwn_looksAtThemToo() {
    Typed typed =
        review(
            FOLDER + "redeem-with-the-stranger.txt",
            "--playouts",
            "60",
            "--players",
            "nearest",
            "--options",
            "throw 9c; redeem 8c seat 2 then throw 7b");
    assertThat(typed.code()).isZero();
    assertThat(choices(typed)).contains("discard 9c", "exchange 8c seat 2 then discard 7b");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          throw 1b | the rack holds none of 1b
          throw any 9c E | it leaves something open
          redeem 6d seat 2 | no joker stands for 6d
          mahjong | not a hand of the card (rule 5.2)
          claim 3 | a turn is answered by
          pass 1b 2b 3b | a turn is answered by
          dance | the choice
          redeem 8c seat 2 then throw 8c; throw | the tile that is thrown is missing
          redeem 8c seat 2 then redeem 8c seat 2 | no joker is left there that stands for 8c (rule 4.4.1)
          """)
  void review_ofAChoiceThatIsNotAllowed_saysWhy(String option, String why) {
    Typed typed = review(FOLDER + "redeem-with-the-stranger.txt", "--options", option);
    assertThat(typed.code()).isEqualTo(2);
    assertThat(typed.out()).isEmpty();
    assertThat(typed.err()).startsWith("tallywall: --options: ").contains(why);
    assertThat(typed.err().lines()).hasSize(1);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          claim 4 jokers 3 | it takes 3 jokers from the rack, which holds 2 (rule 3.3.5)
          claim 5 jokers 0 | it takes 4 more of 5c from the rack, which holds 2 (rule 3.3.5)
          claim 3 jokers 2 | no line that may be exposed fits all exposures then (rules 3.3.8
          mahjong | not a hand of the card (rule 5.2)
          """)
  void review_ofAClaimThatIsNotAllowed_saysByWhichRule(String option, String why) {
    Typed typed = review(FOLDER + "call-to-be-one-away.txt", "--options", option);
    assertThat(typed.code()).isEqualTo(2);
    assertThat(typed.err()).contains(why);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          pass J J N | a joker may not be passed (rule 2.1.2)
          pass N W blind 1 | at most 0 may go on blind here (rule 2.3.1)
          pass N | 1 tile here; 3 are passed
          """)
  void review_ofAPassThatIsNotAllowed_saysByWhichRule(String option, String why) throws Exception {
    String sheet = write("seat 1\nmoment pass right-1\nrack 33355b 4466c JJ N W\n");
    Typed typed = review(sheet, "--options", option);
    assertThat(typed.code()).isEqualTo(2);
    assertThat(typed.err()).contains(why);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          --seconds 0 | --seconds takes a number from 1 to 86,400
          --seconds 999999999999 | --seconds takes a number from 1 to 86,400
          --seconds -5 | not a whole number
          --playouts 0 | --playouts takes a number from 1 to
          --playouts 99999999999999999999999 | is too large
          --threads 0 | --threads is 1 to
          --players watchful,nearest | --players takes one name, or four
          --players watchful,,nearest,nearest | a player's name is missing
          --players wachful | watchful
          --players open-tiles | sees all racks and the wall
          --among watchful | --among takes 2 to 12 names
          --among nearest,nobody | nobody
          --options ; | the choice is missing
          """)
  void review_ofWrongWords_isRefused(String words, String why) {
    Typed typed = review(FOLDER + "hold-her-tile.txt", words.split(" "));
    assertThat(typed.code()).isEqualTo(2);
    assertThat(typed.out()).isEmpty();
    assertThat(typed.err()).contains(why);
  }

  @Test
  void review_ofTooManyChoices_isRefused() {
    Typed typed = review(FOLDER + "hold-her-tile.txt", "--options", "throw W" + ";".repeat(21));
    assertThat(typed.code()).isEqualTo(2);
    assertThat(typed.err()).contains("--options takes 20 choices at most, not 22");
  }

  @Test
  void review_ofAClaimThatTheSheetGoesOnWith_looksAtItOnce() {
    Typed typed =
        review(FOLDER + "call-to-be-one-away.txt", "--playouts", "9", "--players", "nearest");
    assertThat(choices(typed)).containsOnlyOnce("claim 4 jokers 1").doesNotHaveDuplicates();
    assertThat(choices(typed)).noneMatch(choice -> choice.contains("then"));
  }

  @Test
  void review_ofFewerGamesThanChoices_playsOneAfterEach() {
    Typed typed =
        review(FOLDER + "stop-when-twelve-stand.txt", "--playouts", "1", "--players", "nearest");
    assertThat(typed.code()).isZero();
    assertThat(typed.out()).contains("by 2 games played on", "1 way,");
  }

  @Test
  void review_ofAMomentThatTheRulesDoNotHave_isRefused() throws Exception {
    Path rules =
        Files.writeString(folder.resolve("rules.json"), "{ \"charleston.second\": \"NONE\" }");
    String sheet = write("seat 1\nmoment pass across-2\nrack 33355b 4466c 17d N R\n");
    Typed typed = review(sheet, "--rules", rules.toString());
    assertThat(typed.code()).isEqualTo(2);
    assertThat(typed.out()).isEmpty();
    assertThat(typed.err()).contains("there is no second round (rule 2.1)");
    assertThat(typed.err().lines()).hasSize(1);
  }

  @Test
  void review_amongSeveralTables_setsTheVerdictsSideBySide() {
    Typed typed =
        review(
            FOLDER + "stop-when-twelve-stand.txt",
            "--playouts",
            "200",
            "--among",
            "nearest,newcomer");
    assertThat(typed.code()).isZero();
    assertThat(typed.out())
        .contains("Among nearest. ", "Among newcomer. ")
        .contains("by 100 games played on")
        .contains("among nearest", "among newcomer")
        .containsPattern("(The verdict (depends|does not depend)|At none of these tables)");
  }

  @Test
  void review_sheetThatNamesAPlayer_putsItThere() throws Exception {
    String text = Files.readString(Path.of(FOLDER + "stop-when-twelve-stand.txt"));
    Typed typed =
        review(write(text + "\nplays 3 newcomer\n"), "--playouts", "40", "--players", "nearest");
    assertThat(typed.code()).isZero();
    assertThat(typed.out()).contains("(three \"nearest\" and one \"newcomer\")");
  }

  @Test
  void review_ofSeveralSheets_answersEachInTurn() {
    Typed typed =
        Typed.run(
            "review",
            FOLDER + "stop-when-twelve-stand.txt",
            FOLDER + "concealed-keeps-still.txt",
            "--playouts",
            "40",
            "--players",
            "nearest");
    assertThat(typed.code()).isZero();
    assertThat(typed.out())
        .startsWith("stop-when-twelve-stand\n")
        .contains("\n\nconcealed-keeps-still\n");
  }

  @Test
  void review_sheetThatLeavesOutDiscards_saysHowTheyAreTreated() throws Exception {
    String sheet = write("seat 0\nmoment turn\nwall 60\nrack 33355b 44666c 7d W E J\n");
    Typed typed = review(sheet, "--playouts", "40", "--players", "nearest");
    assertThat(typed.code()).isZero();
    assertThat(typed.out()).contains("The sheet leaves out 39 discards;");
  }

  /** Somebody presses Ctrl-C again and again from the beginning; without it this takes a day. */
  @Test
  void review_thatIsStopped_printsWhatIsKnownSoFar() throws Exception {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    Console console = Console.withoutProgress(out, err, 100);
    AtomicBoolean over = new AtomicBoolean();
    Thread impatient =
        new Thread(
            () -> {
              while (!over.get()) {
                console.interrupts().stop();
                LockSupport.parkNanos(5_000_000);
              }
            });
    impatient.start();
    int code =
        new Program(console).run("review", FOLDER + "pass-the-strangers.txt", "--seconds", "86400");
    over.set(true);
    impatient.join();

    assertThat(code).isEqualTo(130);
    assertThat(out.toString(StandardCharsets.UTF_8))
        .contains("What each choice is worth", "It was stopped; this is what was known by then.");
    assertThat(err.toString(StandardCharsets.UTF_8)).contains("what is known so far follows");
  }
}
