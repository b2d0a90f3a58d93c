package org.tallywall.experiments.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Papers are made of the tables that runs of every design write. A column that a paper asks for and
 * a file lacks is a fault that names both, never a hole in the paper.
 */
@Tag("long")
class PapersOfEveryDesignTest {
  private static final Map<String, String> DESIGNS =
      Map.of(
          "table",
          "\"table\": [\"nearest\", \"nearest\", \"nearest\", \"nearest\"]",
          "arms",
          "\"arms\": { \"a\": \"nearest\", \"b\": \"newcomer\" }, \"baseline\": \"a\","
              + " \"others\": \"nearest\", \"primary\": \"points\"",
          "sweep",
          "\"sweep\": { \"player\": \"reckoner\", \"setting\": \"aim.targets\", \"values\": [1, 2],"
              + " \"baseline\": 1 }, \"others\": \"nearest\", \"primary\": \"points\"",
          "round-robin",
          "\"round-robin\": { \"a\": \"nearest\", \"b\": \"nearest\", \"c\": \"newcomer\","
              + " \"d\": \"random-legal\" }",
          "branch",
          "\"branch\": { \"at\": \"discard\", \"when\": { \"exposures-on-one-rack\": [1],"
              + " \"away\": [3], \"wall\": [60] }, \"options\": [\"own-need\", \"safest\"],"
              + " \"player\": \"watchful\" }, \"primary\": \"points\"");

  @TempDir private Path folder;

  @ParameterizedTest
  @CsvSource({
    "table, win-rates exchanges, families win-rate-with-it, hand-choice share-of-wins,"
        + " endings void-games, passes away-after, overall part, rules usual",
    "arms, win-rates one-away-reached, differences gain, differences role, defense games-compared,"
        + " defense deals-compared, families aimed-share, passes share-of-games",
    "sweep, sweep compared-with, differences discordant, defense mean-wall, win-rates seat,"
        + " families family, hand-choice nickname, passes step",
    "round-robin, ratings times-average, rating-differences other, ratings rating-below,"
        + " win-rates points, families ways, endings wall, hand-choice value",
    "branch, branch p-holm, branch deals-reached, branch method, branch difference-low,"
        + " win-rates void, families switched-to, hand-choice concealed"
  })
  void column_thatAPaperAsksFor_isThereOrAFault(
      String design,
      String first,
      String second,
      String third,
      String fourth,
      String fifth,
      String sixth,
      String seventh)
      throws IOException {
    Cards.small(folder);
    String study =
        Cards.write(
            folder,
            "study.json",
            "{ \"study\": \"s\", \"card\": \"small.json\", \"seed\": 1, \"deals\": 40, "
                + DESIGNS.get(design)
                + " }");
    Path out = folder.resolve("out");
    Typed run = Typed.run("run", study, "--out", out.toString(), "--threads", "1");
    assertThat(run.err()).isEmpty();
    assertThat(run.code()).isZero();
    for (String pair : new String[] {first, second, third, fourth, fifth, sixth, seventh}) {
      String[] name = pair.split(" ");
      Path file = out.resolve(name[0] + ".csv");
      String text = Files.readString(file);
      Files.writeString(file, text.replaceFirst("(?<=^|,)" + name[1] + "(?=,|\n)", "renamed"));
      Typed page = Typed.run("report", out.toString(), "--format", "page");
      assertThat(page.err())
          .as(pair)
          .contains(name[0] + ".csv", "the column \"" + name[1] + "\" is missing");
      assertThat(page.code()).as(pair).isEqualTo(2);
      Files.writeString(file, text);
    }
    assertThat(Typed.run("report", out.toString(), "--format", "page").code()).isZero();
  }
}
