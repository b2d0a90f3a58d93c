package org.tallywall.experiments.design.arms;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.apache.commons.math3.distribution.BinomialDistribution;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.play.Deal;
import org.tallywall.core.play.Game;
import org.tallywall.core.play.GameListener;
import org.tallywall.core.play.Outcome;
import org.tallywall.core.play.TableSetup;
import org.tallywall.experiments.design.StudyPlayer;
import org.tallywall.experiments.run.Block;
import org.tallywall.experiments.run.Pulse;
import org.tallywall.experiments.run.RunState;
import org.tallywall.experiments.stats.Interval;
import org.tallywall.experiments.stats.Moments;
import org.tallywall.experiments.studies.StudyFile;
import org.tallywall.experiments.study.Changes;
import org.tallywall.experiments.study.Extent;
import org.tallywall.experiments.study.Measure;
import org.tallywall.experiments.study.Study;
import org.tallywall.experiments.tally.PairTally;
import org.tallywall.experiments.tally.StudyTally;
import org.tallywall.strategies.catalog.Catalog;
import org.tallywall.strategies.catalog.PlayerSpec;

/** Ways of playing on the same deals, against games played one by one by new players. */
@Tag("one-jdk")
class ArmDealsTest {
  private static final int DEALS = 30;
  private static final String CARD =
      """
      { "card": "Capstan test card", "families": [
        { "family": "Ladders", "lines": [
          { "tiles": "FF 11x 222x 333x 4444x", "slide": "any", "value": 25 },
          { "tiles": "22x 33y 444x 555y 6666x", "slide": "any", "value": 30 } ] },
        { "family": "Echoes", "lines": [
          { "tiles": "nnnx nnny nnnz FFF (NN|EE)", "value": 25 } ] } ] }
      """;

  @TempDir Path folder;

  private Study study(String arms, String more) throws IOException {
    String others = more.contains("others") ? "" : "\"others\": \"reckoner\"";
    Files.writeString(folder.resolve("card.json"), CARD);
    String text =
        """
        { "study": "s", "card": "card.json", "seed": 5, "deals": %d, "primary": "points",
          "arms": %s, "baseline": "a", %s }
        """
            .formatted(DEALS, arms, others + more);
    return StudyFile.read(
        Files.writeString(folder.resolve("study.json"), text), Changes.NONE, Catalog.standard());
  }

  private static StudyTally play(Study study) {
    TableSetup setup = new TableSetup(new ConcreteHands(study.card()), study.rules());
    return new StudyPlayer(study, setup, new Pulse())
        .play(new Block(0, 0, DEALS), new RunState(DEALS, DEALS, 0))
        .tally();
  }

  @Test
  void arms_sharedTablesAndPlayers_giveTheGamesOfNewPlayers() throws IOException {
    Study study =
        study(
            "{\"a\": \"reckoner\", \"b\": {\"player\": \"watchful\", \"aim.targets\": 1},"
                + " \"c\": \"nearest\"}",
            "");
    ArmsDesign design = (ArmsDesign) study.design();

    StudyTally tally = play(study);

    assertThat(tally.games()).isEqualTo(DEALS * 9L);
    int points = study.question().measures().indexOf(Measure.POINTS);
    for (int pair = 0; pair < 2; pair++) {
      PairTally counted = tally.pair(pair, points);
      PairTally again = new PairTally();
      for (long deal = 0; deal < DEALS; deal++) {
        again.addDeal(points(study, design, pair + 1, deal), points(study, design, 0, deal));
      }
      assertThat(counted).usingRecursiveComparison().isEqualTo(again);
    }
  }

  /** What an arm's player gets at each seat, each time in a game of four new players. */
  private static long[] points(Study study, ArmsDesign design, int arm, long number) {
    TableSetup setup = new TableSetup(new ConcreteHands(study.card()), study.rules());
    long[] points = new long[4];
    for (int seat = 0; seat < 4; seat++) {
      List<PlayerSpec> four = new ArrayList<>(Collections.nCopies(4, design.others()));
      four.set(seat, design.arms().get(arm).player());
      Outcome outcome =
          new Game(setup, four.stream().map(PlayerSpec::make).toList(), GameListener.NONE)
              .play(Deal.of(5, number, study.rules().tiles()));
      points[seat] = outcome.points().get(seat);
    }
    return points;
  }

  @Test
  void arms_aPlayerAndItsRenamedCopy_differNowhere() throws IOException {
    Study study = study("{\"a\": \"nearest\", \"b\": \"nearest\"}", "");

    StudyTally tally = play(study);

    for (int measure = 0; measure < Measure.values().length; measure++) {
      assertThat(tally.pair(0, measure).differences().squares().value()).isZero();
    }
    assertThat(tally.firing(0).games()).isZero();
  }

  @Test
  void arms_luckOfTheirOwn_differOnTheSameWalls() throws IOException {
    Study study =
        study("{\"a\": \"random-legal\", \"b\": \"random-legal\"}", ", \"streams\": \"own\"");

    StudyTally tally = play(study);

    assertThat(tally.firing(0).games()).isEqualTo(4L * DEALS);
  }

  /**
   * H0: the 95 % range of the difference between a player and its renamed copy with other luck
   * holds zero in 95 % of studies. 100 studies of 20 deals at four seats, seeds 0 to 99; more
   * misses than the 1 - 1e-6 quantile of the binomial distribution (100, 0.05) refute it.
   */
  @Test
  @Tag("long")
  void arms_luckOfTheirOwn_rangesHoldZeroAboutAsOftenAsTheySay() throws IOException {
    Study pattern =
        study(
            "{\"a\": \"random-legal\", \"b\": \"random-legal\"}",
            "\"others\": \"nearest\", \"streams\": \"own\"");
    int bound = new BinomialDistribution(null, 100, 0.05).inverseCumulativeProbability(1 - 1e-6);
    TableSetup setup = new TableSetup(new ConcreteHands(pattern.card()), pattern.rules());
    int missed = 0;
    for (long seed = 0; seed < 100; seed++) {
      Study study =
          new Study(
              pattern.question(),
              pattern.card(),
              pattern.rules(),
              pattern.design(),
              new Extent(seed, 20, 0),
              pattern.source());
      PairTally points =
          new StudyPlayer(study, setup, new Pulse())
              .play(new Block(0, 0, 20), new RunState(20, 20, 0))
              .tally()
              .pair(0, 0);
      Interval range =
          new Moments(
                  30, points.differences().sum().value(), points.differences().squares().value())
              .estimate(0.95, 4)
              .interval()
              .orElseThrow();
      missed += range.low() > 0 || range.high() < 0 ? 1 : 0;
    }

    assertThat(missed).isPositive().isLessThanOrEqualTo(bound);
  }

  @Test
  void effects_ofAHabit_countOnlyGamesThatWentAnotherWay() throws IOException {
    Study study =
        study(
            "{\"a\": \"reckoner\", \"b\": {\"player\": \"reckoner\","
                + " \"defense\": {\"hold-back\": true}}}",
            "");

    StudyTally tally = play(study);

    long differed = tally.firing(0).games();
    assertThat(differed).isBetween(1L, 4L * DEALS - 1);
    assertThat(tally.firing(0).effect(0).difference().value())
        .isEqualTo(tally.pair(0, 0).differences().sum().value());
    int holdBack = Habits.names().indexOf("hold-back");
    assertThat(tally.firing(holdBack).games()).isGreaterThanOrEqualTo(differed);
  }

  @Test
  void oneSeat_isPlayedAlone() throws IOException {
    Study study = study("{\"a\": \"reckoner\", \"b\": \"nearest\"}", ", \"seats\": 2");

    StudyTally tally = play(study);

    assertThat(tally.games()).isEqualTo(2L * DEALS);
    assertThat(tally.arm(1).seat(2).wins().sum().value().longValueExact()).isPositive();
    assertThat(tally.arm(1).seat(1).wins().sum().value().longValueExact()).isZero();
  }
}
