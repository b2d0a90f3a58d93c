package org.tallywall.experiments.design.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.play.TableSetup;
import org.tallywall.experiments.design.StudyPlayer;
import org.tallywall.experiments.run.Block;
import org.tallywall.experiments.run.BlockResult;
import org.tallywall.experiments.run.Pulse;
import org.tallywall.experiments.run.RunState;
import org.tallywall.experiments.stats.Interval;
import org.tallywall.experiments.stats.Proportion;
import org.tallywall.experiments.studies.StudyFile;
import org.tallywall.experiments.study.Changes;
import org.tallywall.experiments.study.Study;
import org.tallywall.reports.csv.CsvWriter;
import org.tallywall.reports.table.Table;
import org.tallywall.strategies.catalog.Catalog;

/** Figures over all games of a table, counted again from the records alone. */
class OverallTest {
  private static final int DEALS = 150;
  private static final Pattern HOW = Pattern.compile("\"how\":\"([a-z-]+)\"");
  private static final Pattern WALL = Pattern.compile("\"wall\":(\\d+)}?[^\"]*$");

  @TempDir private Path folder;
  private List<String> records;
  private List<String[]> rows;

  @BeforeEach
  void play() throws IOException {
    Files.writeString(
        folder.resolve("card.json"),
        """
        { "card": "Bollard test card", "families": [
          { "family": "Ladders", "lines": [
            { "tiles": "FF 11x 222x 333x 4444x", "slide": "any", "value": 25 },
            { "tiles": "22x 33y 444x 555y 6666x", "slide": "any", "value": 30 } ] } ] }
        """);
    Path file =
        Files.writeString(
            folder.resolve("study.json"),
            """
            { "study": "bollard", "card": "card.json", "seed": 5, "deals": 150, "records": 150,
              "table": ["nearest", "nearest", "nearest", "newcomer"] }
            """);
    Study study = StudyFile.read(file, Changes.NONE, Catalog.standard());
    ConcreteHands hands = new ConcreteHands(study.card());
    BlockResult result =
        new StudyPlayer(study, new TableSetup(hands, study.rules()), new Pulse())
            .play(Block.of(0, DEALS, 500), new RunState(DEALS, 500, 0));
    records = result.records();
    Table table = Overall.of(result.tally().arm(0), 0.95);
    rows = CsvWriter.text(table).lines().skip(1).map(line -> line.split(",", -1)).toList();
  }

  @Test
  void ends_ofAllGames_areThoseOfTheRecords() {
    long won = ends().stream().filter(how -> how.equals("mahjong")).count();
    long wall = ends().stream().filter(how -> how.equals("wall-game")).count();

    assertThat(records).hasSize(DEALS);
    assertThat(won + wall).isEqualTo(DEALS);
    Interval range = new Proportion(won, DEALS).wilson(0.95);
    assertThat(figure("won", "")).containsExactly((double) won / DEALS, range.low(), range.high());
    assertThat(figure("wall-game", "")[0]).isCloseTo((double) wall / DEALS, within(1e-12));
  }

  @Test
  void half_ofAllGames_isTheMiddleOfTheRecords() {
    List<Integer> walls = new ArrayList<>();
    for (String record : records) {
      Matcher wall = WALL.matcher(record);
      assertThat(wall.find()).isTrue();
      walls.add(Integer.parseInt(wall.group(1)));
    }
    walls.sort(Collections.reverseOrder());
    double[] half = figure("half-over", "");
    assertThat(half[0]).isEqualTo(walls.get(DEALS / 2 - 1).doubleValue());
    // ranks 63 and 88 of 150 at 95 %: the sum of the binomial chances up to 62 is 0.0205
    assertThat(half[2]).isEqualTo(walls.get(62).doubleValue());
    assertThat(half[1]).isEqualTo(walls.get(87).doubleValue());

    double parts = 0;
    for (String part : List.of("99-76", "75-61", "60-46", "45-31", "30-16", "15-1", "0")) {
      parts += figure("ended", part)[0];
    }
    assertThat(parts).isCloseTo(1, within(1e-12));
    long early = walls.stream().filter(left -> left >= 61 && left <= 75).count();
    assertThat(figure("ended", "75-61")[0]).isCloseTo((double) early / DEALS, within(1e-12));
  }

  @Test
  void passes_bringRacksNearer_withinTheirRanges() {
    double[] before = figure("away-before", "right-1");
    double[] after = figure("away-after", "right-1");
    assertThat(before[1]).isLessThan(before[0]);
    assertThat(before[2]).isGreaterThan(before[0]);
    assertThat(after[0]).isLessThan(before[0]);
    assertThat(figure("away-before", "across-1")).containsExactly(after);
  }

  private List<String> ends() {
    List<String> ends = new ArrayList<>();
    for (String record : records) {
      Matcher how = HOW.matcher(record);
      assertThat(how.find()).isTrue();
      ends.add(how.group(1));
    }
    return ends;
  }

  private double[] figure(String figure, String part) {
    String[] row =
        rows.stream()
            .filter(cells -> cells[0].equals(figure) && cells[1].equals(part))
            .findFirst()
            .orElseThrow();
    return new double[] {
      Double.parseDouble(row[4]), Double.parseDouble(row[5]), Double.parseDouble(row[6])
    };
  }
}
