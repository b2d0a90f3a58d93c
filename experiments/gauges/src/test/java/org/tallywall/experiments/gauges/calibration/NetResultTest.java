package org.tallywall.experiments.gauges.calibration;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.tallywall.experiments.stats.Interval;

class NetResultTest {
  private static final Path PAGE = Path.of("../../strategies/CALIBRATION.md");

  private static Bins.Row row(double from, double to, double said, double happened) {
    return new Bins.Row(
        from, to, 1_000, said, happened, new Interval(happened - 0.02, happened + 0.02));
  }

  @Test
  void of_stretches_areJoinedWhereTheyAreOffTheSameWay() {
    List<Bins.Row> rows =
        List.of(
            row(0, 0.1, 0.05, 0.08),
            row(0.1, 0.2, 0.15, 0.19),
            row(0.2, 0.4, 0.3, 0.29),
            row(0.4, 0.6, 0.5, 0.43),
            row(0.6, 0.8, 0.7, 0.56),
            row(0.8, 1, 0.9, 0.6));

    assertThat(NetResult.of(rows))
        .isEqualTo(
            "0 to 20: 3 to 4 too low; 20 to 40: right as far as can be told; 40 to 80: 7 to 14 too"
                + " high; 80 to 100: 30 too high");
  }

  @Test
  void of_smallSizes_areNotWrittenAsZero() {
    Bins.Row small = new Bins.Row(0, 0.001, 1_000, 0.0002, 0.0001, new Interval(0.00009, 0.00011));

    assertThat(NetResult.of(List.of(small))).isEqualTo("0 to 0.1: less than 0.1 too high");
  }

  @Test
  void shownBins_tableOfAPage_isReadBack() {
    Bins bins = new Bins(0, 0.5);
    for (int game = 0; game < 2_000; game++) {
      bins.note(0.25, 0.25, game % 4 == 0);
      bins.note(0.75, 0.75, game % 4 != 0);
      bins.endGame();
    }
    String page =
        "## Four `nearest`\n\n"
            + CalibrationTables.bins(
                "said between",
                row -> InHundred.plain(100 * row.from()) + " to " + InHundred.plain(100 * row.to()),
                "won on it",
                bins);
    List<ShownBins> shown = ShownBins.of(page);

    assertThat(shown).hasSize(1);
    assertThat(shown.get(0).rows()).hasSize(2);
    assertThat(shown.get(0).rows().get(1).said()).isEqualTo(0.75);
    assertThat(shown.get(0).rows().get(1).count()).isEqualTo(2_000);
    assertThat(NetResult.lines(page))
        .containsExactly(
            "A win on a tile thrown, four `nearest`: 0 to 100: right as far as can be told.");
  }

  /** What stands first on the page is what its tables, further down, come to. */
  @Test
  void page_beginsWithWhatItsTablesComeTo() throws IOException {
    String page = Files.readString(PAGE);

    assertThat(NetResult.lines(page)).hasSize(9);
    assertThat(page.contains(NetPage.comesTo(page))).as("the lines of today's tables").isTrue();
    assertThat(page.indexOf("## What it comes to")).isLessThan(page.indexOf("**Hands.**"));
  }
}
