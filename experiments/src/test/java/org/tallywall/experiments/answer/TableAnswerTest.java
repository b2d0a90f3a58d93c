package org.tallywall.experiments.answer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.play.TableSetup;
import org.tallywall.experiments.design.PlayedDesign;
import org.tallywall.experiments.design.StudyPlayer;
import org.tallywall.experiments.run.Block;
import org.tallywall.experiments.run.Pulse;
import org.tallywall.experiments.run.RunState;
import org.tallywall.experiments.stats.Proportion;
import org.tallywall.experiments.studies.StudyFile;
import org.tallywall.experiments.study.Changes;
import org.tallywall.experiments.study.Study;
import org.tallywall.experiments.tally.AimTally;
import org.tallywall.experiments.tally.Counts;
import org.tallywall.experiments.tally.StudyTally;
import org.tallywall.reports.csv.CsvWriter;
import org.tallywall.reports.table.Cell;
import org.tallywall.reports.table.Column;
import org.tallywall.reports.table.Table;
import org.tallywall.strategies.catalog.Catalog;

/** The tables of a study: their figures add up, and their intervals are those of the counts. */
class TableAnswerTest {
  private static final int DEALS = 400;

  /** The 0.975 quantile of t with 399 degrees of freedom. */
  private static final double T_399 = 1.965927;

  private static final String CARD =
      """
      { "card": "Bollard test card", "families": [
        { "family": "Ladders", "lines": [
          { "tiles": "FF 11x 222x 333x 4444x", "slide": "any", "value": 25, "say": "the plank" },
          { "tiles": "22x 33y 444x 555y 6666x", "slide": "any", "value": 30 } ] },
        { "family": "Towers", "lines": [
          { "tiles": "NNNNNN WWWWWW SS", "value": 75, "concealed": true } ] } ] }
      """;
  private static final String STUDY =
      """
      { "study": "bollard", "card": "card.json", "seed": 3, "deals": 400,
        "table": ["nearest", "nearest", "nearest",
                  {"player": "reckoner", "aim.targets": 2}] }
      """;

  @TempDir static Path folder;

  private static final class Played {
    private static Study study;
    private static ConcreteHands hands;
    private static StudyTally tally;
    private static StudyAnswer answer;
  }

  @BeforeAll
  static void play() throws IOException {
    Files.writeString(folder.resolve("card.json"), CARD);
    Path file = Files.writeString(folder.resolve("study.json"), STUDY);
    Played.study = StudyFile.read(file, Changes.NONE, Catalog.standard());
    Played.hands = new ConcreteHands(Played.study.card());
    StudyPlayer table =
        new StudyPlayer(
            Played.study, new TableSetup(Played.hands, Played.study.rules()), new Pulse());
    Played.tally = table.play(Block.of(0, DEALS, 500), new RunState(DEALS, 500, 0)).tally();
    Played.answer = new StudyAnswer(Played.study, Played.hands, Played.tally, Optional.empty());
  }

  private static Table table(String stem) {
    return PlayedDesign.of(Played.study).allTables(Played.answer).stream()
        .filter(table -> table.stem().equals(stem))
        .findFirst()
        .orElseThrow();
  }

  private static double number(Table table, int row, String column) {
    Table plain = table.spread();
    int at = plain.columns().stream().map(Column::name).toList().indexOf(column);
    Cell cell = plain.rows().get(row).get(at);
    return cell instanceof Cell.Whole whole ? whole.value() : ((Cell.Decimal) cell).value();
  }

  private static double sum(Table table, String column) {
    double sum = 0;
    for (int row = 0; row < table.rows().size(); row++) {
      sum += number(table, row, column);
    }
    return sum;
  }

  @Test
  void winRates_whereGamesGo_addUpToAllOfThem() {
    Table rates = table("win-rates");
    for (int row = 0; row < 5; row++) {
      double sum = 0;
      for (String column :
          List.of(
              "won-on-own-draw",
              "won-on-discard",
              "threw-the-winning-tile",
              "only-paid",
              "wall-game",
              "void")) {
        sum += number(rates, row, column);
      }
      assertThat(sum).isEqualTo(number(rates, row, "games"));
      assertThat(number(rates, row, "wins"))
          .isEqualTo(number(rates, row, "won-on-own-draw") + number(rates, row, "won-on-discard"));
      assertThat(number(rates, row, "win-rate"))
          .isCloseTo(number(rates, row, "wins") / number(rates, row, "games"), within(1e-15));
    }
    assertThat(number(rates, 4, "games")).isEqualTo(4 * DEALS);
    assertThat(number(rates, 4, "points")).isZero();
  }

  @Test
  void winRates_intervalOfASeat_isWilsonsOfItsWins() {
    Table rates = table("win-rates");
    long wins = (long) number(rates, 2, "wins");

    assertThat(number(rates, 2, "win-rate-low"))
        .isEqualTo(new Proportion(wins, DEALS).wilson(0.95).low());
    assertThat(CsvWriter.text(rates))
        .contains(",Wilson,", ",t over deals,")
        .contains("table,3,reckoner (aim.targets 2),400,400,");
  }

  @Test
  void handChoice_sharesOfWins_addUpToOne() {
    assertThat(sum(table("hand-choice"), "share-of-wins")).isCloseTo(1, within(1e-12));
    assertThat(sum(table("families"), "share-of-wins")).isCloseTo(1, within(1e-12));
    assertThat(sum(table("hand-choice"), "wins")).isEqualTo(number(table("win-rates"), 4, "wins"));
  }

  @Test
  void handChoice_lineNobodyWinsWith_hasNoMeans() {
    String towers = CsvWriter.text(table("hand-choice")).lines().toList().get(3);

    assertThat(towers).startsWith("table,T1,Towers,,75,yes,1,");
    assertThat(number(table("hand-choice"), 2, "wins")).isZero();
    assertThat(towers).endsWith(",,,,");
  }

  @Test
  void handChoice_intervalOfTheRate_liesAroundIt() {
    Table choice = table("hand-choice");

    for (int row = 0; row < 2; row++) {
      double rate = number(choice, row, "win-rate-when-aimed");
      assertThat(number(choice, row, "win-rate-when-aimed-low")).isLessThan(rate);
      assertThat(number(choice, row, "win-rate-when-aimed-high")).isGreaterThan(rate);
    }
    assertThat(CsvWriter.text(choice)).contains(",ratio over deals,");
  }

  /**
   * Of all racks, four a deal, and with the deal as its unit: t of what a deal's four add up to.
   */
  @Test
  void handChoice_sharesOfAims_areOfAllRacks() {
    Table choice = table("hand-choice");
    for (int row = 0; row < 2; row++) {
      Counts<AimTally.Count> counts = Played.tally.arm(0).line(row).counts();
      double aimed = number(choice, row, "aimed-after-passes");
      double share = number(choice, row, "aimed-share");
      double spread = counts.get(AimTally.Count.AIMED_SQUARED) - aimed * aimed / DEALS;
      double error = Math.sqrt(spread / (DEALS - 1) / DEALS) / 4;

      assertThat(share).isCloseTo(aimed / (4 * DEALS), within(1e-12));
      assertThat(number(choice, row, "aimed-share-high") - share)
          .isCloseTo(T_399 * error, within(1e-6));
      assertThat(number(choice, row, "aimed-after-deal-share"))
          .isCloseTo(number(choice, row, "aimed-after-deal") / (4 * DEALS), within(1e-12));
    }
    assertThat(sum(choice, "aimed-share")).isCloseTo(1, within(1e-12));
  }

  /** A table plays one game a deal, but up to four players of it aim at one line. */
  @Test
  void handChoice_wonWithIt_isAShareOfItsOwnWithARange() {
    Table choice = table("hand-choice");
    for (int row = 0; row < 2; row++) {
      double aimed = number(choice, row, "aimed-after-passes");
      double withIt = number(choice, row, "aimed-and-won-with-it");
      double rate = number(choice, row, "win-rate-with-it");

      assertThat(rate).isCloseTo(withIt / aimed, within(1e-12)).isPositive();
      assertThat(rate).isLessThan(number(choice, row, "win-rate-when-aimed"));
      assertThat(number(choice, row, "win-rate-with-it-low")).isLessThan(rate);
      assertThat(number(choice, row, "win-rate-with-it-high")).isGreaterThan(rate);
      double half = number(choice, row, "win-rate-with-it-high") - rate;
      assertThat(half).isCloseTo(T_399 * errorWithIt(row, rate), within(1e-6));
    }
  }

  /** The ratio's error over deals, once more in plain numbers. */
  private static double errorWithIt(int line, double rate) {
    Counts<AimTally.Count> counts = Played.tally.arm(0).line(line).counts();
    double residuals =
        counts.get(AimTally.Count.WON_WITH_IT_SQUARED)
            - 2 * rate * counts.get(AimTally.Count.WON_WITH_IT_TIMES_AIMED)
            + rate * rate * counts.get(AimTally.Count.AIMED_SQUARED);
    return Math.sqrt(residuals * DEALS / (DEALS - 1)) / counts.get(AimTally.Count.AFTER_PASSES);
  }

  /** Few aim at it or nobody wins: the exact interval of a share. */
  @Test
  void wonWithIt_whereFewAimed_hasTheExactRange() {
    AimTally aim = Played.tally.arm(0).line(2);
    long aimed = aim.counts().get(AimTally.Count.AFTER_PASSES);

    assertThat(aim.counts().get(AimTally.Count.AIMED_AND_WON_WITH_IT)).isZero();
    assertThat(aimed).isPositive();
    assertThat(Measures.winRateWithIt(aim, DEALS, 0.95).interval().orElseThrow())
        .isEqualTo(new Proportion(0, aimed).clopperPearson(0.95));
  }

  @Test
  void endings_allRows_addUpToTheGames() {
    Table endings = table("endings");

    assertThat(endings.rows()).hasSize(100);
    assertThat(number(endings, 0, "wall")).isEqualTo(99);
    assertThat(sum(endings, "games")).isEqualTo(DEALS);
  }

  @Test
  void passes_everyStep_hasItsRow() {
    String text = CsvWriter.text(table("passes"));

    assertThat(text.lines().map(line -> line.split(",", -1)[1]))
        .containsExactly(
            "step",
            "right-1",
            "across-1",
            "left-1",
            "stop",
            "left-2",
            "across-2",
            "right-2",
            "courtesy");
    assertThat(number(table("passes"), 0, "games")).isEqualTo(DEALS);
    assertThat(number(table("passes"), 0, "away-after"))
        .isLessThan(number(table("passes"), 0, "away-before"));
  }
}
