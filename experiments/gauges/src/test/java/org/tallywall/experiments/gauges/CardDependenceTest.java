package org.tallywall.experiments.gauges;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tallywall.reports.results.Results;
import org.tallywall.reports.results.ResultsFolder;
import org.tallywall.reports.results.ThisProgram;

/** Ladders of invented strengths on several cards. */
class CardDependenceTest {
  private static final List<String> NAMES = List.of("a", "b", "c");

  @TempDir static Path folder;

  /** Strengths with independent errors of 0.06, 0.08 and 0.1. */
  private static Results card(String name, double a, double b, double c) throws Exception {
    double[] values = {a, b, c};
    double[] errors = {0.06, 0.08, 0.1};
    StringBuilder ratings = new StringBuilder("arm,rating\n");
    StringBuilder differences =
        new StringBuilder("arm,other,difference,difference-low,difference-high,standard-error\n");
    for (int one = 0; one < 3; one++) {
      ratings.append(NAMES.get(one)).append(',').append(values[one]).append('\n');
      for (int other = one + 1; other < 3; other++) {
        boolean above = values[one] > values[other];
        double off = Math.abs(values[one] - values[other]);
        double error = Math.hypot(errors[one], errors[other]);
        differences
            .append(NAMES.get(above ? one : other))
            .append(',')
            .append(NAMES.get(above ? other : one))
            .append(",%s,%s,%s,%s\n".formatted(off, off - 2 * error, off + 2 * error, error));
      }
    }
    Path results = Files.createDirectories(folder.resolve(name));
    Files.writeString(results.resolve("ratings.csv"), ratings);
    Files.writeString(results.resolve("rating-differences.csv"), differences);
    Files.writeString(results.resolve("study.json"), "{ \"confidence\": 0.95, \"deals\": 9 }");
    Files.writeString(
        results.resolve("manifest.json"),
        """
        { "tallywall": "0.1.0", "study": "s", "card": "c", "card-digest": "sha256:2", "deals": 9 }
        """);
    return ResultsFolder.read(results, new ThisProgram("", 1));
  }

  /**
   * With independent errors the statistic is the weighted sum of squares of the changes about their
   * weighted mean; computed here without a matrix.
   */
  @Test
  void together_twoCards_isTheWeightedSumOfSquares() throws Exception {
    double[] changes = {0.1, 0.5, -0.3};
    double[] weights = {1 / (2 * 0.0036), 1 / (2 * 0.0064), 1 / (2 * 0.01)};
    double mean = 0;
    double weight = 0;
    for (int at = 0; at < 3; at++) {
      mean += weights[at] * changes[at];
      weight += weights[at];
    }
    double expected = 0;
    for (int at = 0; at < 3; at++) {
      double off = changes[at] - mean / weight;
      expected += weights[at] * off * off;
    }
    CardDependence test =
        new CardDependence(List.of(card("one", 0.1, 0.0, 0.3), card("two", 0, -0.5, 0.6)));

    assertThat(test.together().statistic()).isCloseTo(expected, within(1e-9));
    assertThat(test.together().degrees()).isEqualTo(2);
  }

  @Test
  void paragraphs_sameStrengths_saySo() throws Exception {
    CardDependence test =
        new CardDependence(List.of(card("same1", 0.3, 0.1, -0.1), card("same2", 0.25, 0.15, -0.1)));

    assertThat(test.paragraphs()).hasSize(2);
    assertThat(test.paragraphs().get(0)).endsWith("So nothing here says that they do.");
    assertThat(test.paragraphs().get(1)).startsWith("No two of them stand clearly");
  }

  @Test
  void paragraphs_oneThatChanges_isNamed_andSoIsThePairThatTurns() throws Exception {
    CardDependence test =
        new CardDependence(List.of(card("turn1", 0.5, 0.0, -1.2), card("turn2", 0.5, 0.0, 1.2)));

    assertThat(test.paragraphs()).hasSize(3);
    assertThat(test.paragraphs().get(0)).contains("So they do");
    assertThat(test.paragraphs().get(1)).contains("c (-1.45, 0.95)");
    assertThat(test.paragraphs().get(2)).endsWith("a and c; b and c.");
  }
}
