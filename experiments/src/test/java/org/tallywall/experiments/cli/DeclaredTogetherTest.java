package org.tallywall.experiments.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the files of a small study say of chance findings, and of ranges where nothing varies. */
@Tag("long")
class DeclaredTogetherTest {
  private static final String ARMS =
      """
      { "study": "arms", "card": "small.json", "seed": 5,
        "arms": { "near": "nearest", "lot": "random-legal", "same": "nearest",
                  "deaf": { "player": "reckoner", "overlooks": { "call": 0.9 } } },
        "baseline": "near", "others": "nearest", "primary": "points",
        "secondary": ["win-rate", "exposures", "won-on-discard"], "deals": 60 }
      """;

  @TempDir static Path folder;

  private Path out = folder.resolve("out");

  /** Three tests read the same results. */
  @BeforeAll
  static void runOnce() {
    Cards.small(folder);
    run(ARMS, folder.resolve("out"));
  }

  private static void run(String study, Path out) {
    String file = Cards.write(folder, "study.json", study);
    assertThat(Typed.run("run", file, "--out", out.toString()).code()).isZero();
  }

  /** The cells of a file's column, in order; of a name without commas. */
  private List<String> column(String file, String name) throws IOException {
    List<String> lines = Files.readAllLines(out.resolve(file));
    int at = List.of(lines.get(0).split(",", -1)).indexOf(name);
    assertThat(at).as(name).isNotNegative();
    return lines.stream().skip(1).map(line -> line.split(",", -1)[at]).toList();
  }

  /**
   * Holm (Scandinavian Journal of Statistics 6, 1979, 65-70), written out plainly: the adjusted p
   * of a comparison is the largest of p times so many as have no smaller p, over all that are no
   * larger.
   */
  @Test
  void holm_isOverAllThatWasDeclared_primaryAndSecondaryTogether() throws IOException {
    List<String> roles = column("differences.csv", "role");
    List<String> plain = column("differences.csv", "p");
    List<String> adjusted = column("differences.csv", "p-holm");
    List<Double> family = new ArrayList<>();
    for (int row = 0; row < roles.size(); row++) {
      if (!roles.get(row).equals("exploratory")) {
        family.add(plain.get(row).isEmpty() ? 1 : Double.parseDouble(plain.get(row)));
      }
    }

    assertThat(family).hasSize(3 * 4);
    int moved = 0;
    for (int row = 0; row < roles.size(); row++) {
      if (roles.get(row).equals("exploratory") || plain.get(row).isEmpty()) {
        assertThat(adjusted.get(row)).isEmpty();
        continue;
      }
      double p = Double.parseDouble(plain.get(row));
      double holm = 0;
      for (double other : family) {
        if (other <= p) {
          long notSmaller = family.stream().filter(one -> one >= other).count();
          holm = Math.max(holm, Math.min(1, notSmaller * other));
        }
      }
      assertThat(Double.parseDouble(adjusted.get(row))).isCloseTo(holm, within(1e-9));
      moved += roles.get(row).equals("secondary") && holm > 1.01 * p ? 1 : 0;
    }
    assertThat(moved).isPositive();
  }

  /** The shared game of the baseline: all four seats' points are 0 whatever happens. */
  @Test
  void allSeatsOfOneGame_haveNoRange_andEachSeatHas() throws IOException {
    List<String> arms = column("win-rates.csv", "arm");
    List<String> seats = column("win-rates.csv", "seat");
    for (String name : List.of("win-rate-low", "points-high", "win-rate-method")) {
      List<String> cells = column("win-rates.csv", name);
      for (int row = 0; row < seats.size(); row++) {
        boolean shared = seats.get(row).equals("all") && !arms.get(row).matches("lot|deaf");
        assertThat(cells.get(row).isEmpty()).as(arms.get(row) + seats.get(row)).isEqualTo(shared);
      }
    }
  }

  @Test
  void twoThatAreTheSame_haveNoRangeOfPoints_andAreSaidToBe() throws IOException {
    out = folder.resolve("alike");
    run(ARMS.replaceAll("\"lot\".*,\\s+\"deaf\".*", "\"same\": \"nearest\" },"), out);

    assertThat(column("differences.csv", "difference").get(0)).isEqualTo("0");
    assertThat(column("differences.csv", "difference-low").get(0)).isEmpty();
    assertThat(column("differences.csv", "difference-high").get(1)).startsWith("0.0596");
    assertThat(column("differences.csv", "detectable")).allMatch(String::isEmpty);
    assertThat(Files.readString(out.resolve("notes.md")))
        .contains("“same” and “near” came out exactly the same in all 60 deals (points).")
        .contains("They may still differ in up to 6.0 of 100 deals")
        .contains("the same in every deal")
        .doesNotContain("0 (0 to 0)", "would catch", "would notice");
  }

  /** One who throws whatever comes never wins: the limit is 1 - 0.025^(1/60) = 0.0596. */
  @Test
  void whoNeverWon_hasTheExactLimit() throws IOException {
    int row = column("win-rates.csv", "arm").lastIndexOf("lot");

    assertThat(column("win-rates.csv", "wins").get(row)).isEqualTo("0");
    assertThat(column("win-rates.csv", "win-rate-low").get(row)).isEqualTo("0");
    assertThat(column("win-rates.csv", "win-rate-high").get(row)).startsWith("0.0596");
    assertThat(column("win-rates.csv", "win-rate-method").get(row)).isEqualTo("Clopper-Pearson");
  }
}
