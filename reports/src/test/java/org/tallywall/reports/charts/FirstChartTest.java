package org.tallywall.reports.charts;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tallywall.reports.figure.Caption;
import org.tallywall.reports.results.ResultsFolder;
import org.tallywall.reports.results.ThisProgram;

/** The chart beside the answer is the one that answers the question. */
class FirstChartTest {
  @ParameterizedTest
  @CsvSource({
    "arms, differences, More or less than \u201cnever\u201d: games won in 100",
    "until, differences, More or less than \u201ca\u201d: games won in 100",
    "round-robin, where-games-go, Where 100 games go",
    "table, aim-and-win, 'What you aim at, what wins'"
  })
  void firstChart_isAboutTheQuestion(String design, String stem, String title) {
    Path folder = Path.of("src/test/resources/results", design);
    Caption first =
        Charts.first(ResultsFolder.read(folder, new ThisProgram("0.1.0", 1)))
            .orElseThrow()
            .caption();
    assertThat(first.stem()).isEqualTo(stem);
    assertThat(first.title()).isEqualTo(title);
  }

  @ParameterizedTest
  @CsvSource({"sweep, setting", "branch, which-choice-1"})
  void firstChart_ofASettingOrAChoice_isItsOwn(String design, String stem) {
    Path folder = Path.of("src/test/resources/results", design);
    assertThat(
            Charts.first(ResultsFolder.read(folder, new ThisProgram("0.1.0", 1)))
                .orElseThrow()
                .caption()
                .stem())
        .isEqualTo(stem);
  }
}
