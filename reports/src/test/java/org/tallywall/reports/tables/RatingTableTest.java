package org.tallywall.reports.tables;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tallywall.reports.markdown.MarkdownWriter;
import org.tallywall.reports.results.Results;
import org.tallywall.reports.results.ResultsFolder;
import org.tallywall.reports.results.ThisProgram;
import org.tallywall.reports.table.Table;

class RatingTableTest {
  @TempDir Path folder;

  /** The ranges of a and b overlap, that of their difference leaves 0 out; b and c are the same. */
  private Results results() throws IOException {
    Files.writeString(
        folder.resolve("ratings.csv"),
        """
        arm,player,deals,games,win-rate,points,rating,rating-low,rating-high,rating-below,times-average
        a,nearest,336,1344,0.30,5,0.300,0.200,0.400,,1.35
        b,nearest,336,1344,0.25,0,0.150,0.050,0.250,,1.16
        c,nearest,336,1344,0.24,0,0.145,0.045,0.245,,1.16
        d,random-legal,336,1344,0,-38,,,,-3.2517,
        """);
    Files.writeString(
        folder.resolve("rating-differences.csv"),
        """
        arm,other,difference,difference-low,difference-high,standard-error
        a,b,0.15,0.02,0.28,0.066
        a,c,0.155,0.025,0.285,0.066
        b,c,0.005,-0.125,0.135,0.066
        """);
    Files.writeString(folder.resolve("study.json"), "{ \"confidence\": 0.95, \"deals\": 9 }");
    Files.writeString(
        folder.resolve("manifest.json"),
        """
        { "tallywall": "0.1.0", "study": "s", "card": "c", "card-digest": "sha256:2", "deals": 9 }
        """);
    return ResultsFolder.read(folder, new ThisProgram("0.1.0", 1));
  }

  private Table table() throws IOException {
    return RatingTable.of(results());
  }

  @Test
  void above_isTrueWhereTheRangeOfTheDifferenceLeavesOutZero_andEmptyOfUnknownPairs()
      throws IOException {
    RatingNeighbors neighbors = new RatingNeighbors(results());
    assertThat(neighbors.above("a", "c")).contains(true);
    assertThat(neighbors.above("b", "c")).contains(false);
    assertThat(neighbors.above("a", "d")).isEmpty();
  }

  @Test
  void neighbors_areToldApartByTheirDifference_notByWhetherRangesOverlap() throws IOException {
    assertThat(table().notes())
        .anySatisfy(
            note ->
                assertThat(note)
                    .contains("a is above b (by 0.15, 0.02 to 0.28)")
                    .endsWith("Neighbors too close to call: b and c."));
  }

  /** 0 of 336: the limit is 1 - 0.025^(1/336) = 0.010919, rounded up so that it stays a limit. */
  @Test
  void neverWon_isToldByItsDealsAndTheMostThatTheyAllow() throws IOException {
    assertThat(table().notes())
        .contains(
            "“d” won in none of its 336 deals; a player as strong as the limit in its row would win"
                + " 1.1 of 100 games, the most that 0 of 336 allows.")
        .anyMatch(note -> note.contains("0.69 apart the stronger wins twice as often"));
  }

  /** Rounded to the nearest tenth it would claim a lower limit than was found. */
  @Test
  void neverWon_hasALimitThatIsRoundedUp_andNoStrength() throws IOException {
    assertThat(MarkdownWriter.grid(table()).lines().filter(line -> line.startsWith("| d ")))
        .singleElement()
        .satisfies(line -> assertThat(line).contains("|  | -3.2 |  |"));
  }
}
