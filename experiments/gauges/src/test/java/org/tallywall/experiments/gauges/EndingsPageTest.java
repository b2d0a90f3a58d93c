package org.tallywall.experiments.gauges;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tallywall.reports.results.Results;
import org.tallywall.reports.results.ResultsFolder;
import org.tallywall.reports.results.ThisProgram;
import org.tallywall.reports.table.Cell;

class EndingsPageTest {
  @TempDir Path folder;

  /** Wins at 50, 50, 40 and 20 tiles, and six wall games of ten. */
  @Test
  void cells_tenGames_areWhatPaperGives() throws IOException {
    Files.writeString(
        folder.resolve("endings.csv"),
        """
        arm,wall,games,won-by-draw,won-by-exchange,won-on-discard,won-before-play,wall-games
        table,50,2,1,0,1,0,0
        table,40,1,0,1,0,0,0
        table,20,1,0,0,0,1,0
        table,0,6,0,0,0,0,6
        """);
    Files.writeString(folder.resolve("study.json"), "{ \"confidence\": 0.95, \"deals\": 10 }");
    Files.writeString(
        folder.resolve("manifest.json"),
        """
        { "tallywall": "0.1.0", "study": "s", "card": "c", "card-digest": "sha256:2", "deals": 10 }
        """);
    Results results = ResultsFolder.read(folder, new ThisProgram("", 1));

    // mean 40, sum of squares 600, standard error sqrt(600 / 3 / 4), t with 3 degrees 3.182446
    Cell.Interval wall = (Cell.Interval) EndingsPage.wall(results);
    assertThat(wall.estimate()).isEqualTo(40);
    assertThat(wall.high()).isCloseTo(40 + 3.182446 * Math.sqrt(50), within(1e-4));
    // Wilson by hand: (0.6 + z^2 / 20 + z sqrt(0.024 + z^2 / 400)) / (1 + z^2 / 10), z = 1.959964
    Cell.Interval none = (Cell.Interval) EndingsPage.wallGames(results);
    assertThat(none.estimate()).isCloseTo(60, within(1e-9));
    assertThat(none.high()).isCloseTo(83.1823, within(0.01));
  }
}
