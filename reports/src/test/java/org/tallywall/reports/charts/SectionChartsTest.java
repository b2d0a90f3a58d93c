package org.tallywall.reports.charts;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tallywall.reports.results.Results;
import org.tallywall.reports.results.ResultsFolder;
import org.tallywall.reports.results.ThisProgram;

/** How many ways of playing have a chart of sections of their own. */
class SectionChartsTest {
  private static final int WAYS = 11;

  @TempDir private Path folder;

  /** The rows of one way that looks unlike the baseline, again under other names. */
  @Test
  void waysThatPreferASection_haveAllTheirCharts() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("src/test/resources/results/arms"))) {
      for (Path file : files.toList()) {
        Files.copy(file, folder.resolve(file.getFileName()));
      }
    }
    Path families = folder.resolve("families.csv");
    List<String> rows = Files.readAllLines(families);
    StringBuilder text = new StringBuilder(rows.get(0) + "\n");
    rows.stream().filter(row -> row.startsWith("never,")).forEach(row -> text.append(row + "\n"));
    for (int way = 1; way <= WAYS; way++) {
      String name = "way " + way;
      rows.stream()
          .filter(row -> row.startsWith("often,"))
          .forEach(row -> text.append(row.replaceFirst("often", name)).append('\n'));
    }
    Files.writeString(families, text);
    assertThat(charts()).isEqualTo(3);

    Path ways = folder.resolve("ways.csv");
    String settings =
        Files.readString(ways).replace("often,watchful,,", "often,watchful,aim.prefer-family,");
    Files.writeString(ways, settings);
    assertThat(charts()).isEqualTo(WAYS + 1);
  }

  private long charts() {
    Results results = ResultsFolder.read(folder, new ThisProgram("0.1.0", 1));
    return Charts.of(results).stream()
        .map(figure -> figure.caption().stem())
        .filter(stem -> stem.matches("aim-and-win(-\\d+)?"))
        .count();
  }
}
