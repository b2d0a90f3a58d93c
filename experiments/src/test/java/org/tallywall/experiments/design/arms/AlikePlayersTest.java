package org.tallywall.experiments.design.arms;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.apache.commons.math3.distribution.BinomialDistribution;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.play.TableSetup;
import org.tallywall.experiments.answer.Certainty;
import org.tallywall.experiments.answer.Effects;
import org.tallywall.experiments.design.StudyPlayer;
import org.tallywall.experiments.run.Block;
import org.tallywall.experiments.run.Pulse;
import org.tallywall.experiments.run.RunState;
import org.tallywall.experiments.stats.Interval;
import org.tallywall.experiments.studies.StudyFile;
import org.tallywall.experiments.study.Changes;
import org.tallywall.experiments.study.Extent;
import org.tallywall.experiments.study.Measure;
import org.tallywall.experiments.study.Study;
import org.tallywall.experiments.tally.EffectTally;
import org.tallywall.experiments.tally.FiringTally;
import org.tallywall.experiments.tally.StudyTally;
import org.tallywall.strategies.catalog.Catalog;

/**
 * Two players alike in everything but their luck, in 400 studies of 100 deals: the rows of the
 * defense table must not tell them apart more often than ranges of 95 % may.
 *
 * <p>H0, row by row: the mean difference is 0. Seeds are independent, so the sum of a row's
 * differences over the 400 studies, by the root of the sum of their squares, is about standard
 * normal: 4.8916 is left with a chance of 1e-6 (two-sided). H0': a range of 95 % leaves 0 out in at
 * most 5 % of the studies that show one; more than the 1 - 1e-6 quantile of the binomial
 * distribution refute it. With 18 rows a fresh seed fails by chance in fewer than 4 of 100,000
 * tries.
 */
@Tag("long")
class AlikePlayersTest {
  private static final int SEEDS = 400;
  private static final int DEALS = 100;
  private static final double Z = 4.891638476;
  private static final String CARD =
      """
      { "card": "Capstan test card", "families": [
        { "family": "Ladders", "lines": [
          { "tiles": "FF 11x 222x 333x 4444x", "slide": "any", "value": 25 },
          { "tiles": "22x 33y 444x 555y 6666x", "slide": "any", "value": 30 } ] },
        { "family": "Echoes", "lines": [
          { "tiles": "nnnx nnny nnnz FFF (NN|EE)", "value": 25 } ] } ] }
      """;

  /** The others play alike, too, so that one game of each luck serves all four seats. */
  private static final String STUDY =
      """
      { "study": "alike", "card": "card.json", "seed": 0, "deals": 100, "streams": "own",
        "arms": { "one": PLAYER, "the same": PLAYER }, "baseline": "one", "others": PLAYER,
        "primary": "points", "secondary": ["win-rate", "threw-the-winning-tile"] }
      """
          .replace(
              "PLAYER",
              "{ \"player\": \"watchful\","
                  + " \"overlooks\": { \"call\": 0.1, \"exchange\": 0.1, \"win\": 0.05 } }");

  @TempDir Path folder;

  /** What the studies came to in one row. */
  private static final class Row {
    private double sum;
    private double squares;
    private int ranges;
    private int clear;

    void add(FiringTally firing, int measure, Measure what) {
      EffectTally effect = firing.effect(measure);
      double difference = effect.difference().value().doubleValue();
      sum += difference;
      squares += difference * difference;
      Optional<Interval> range =
          Effects.effect(firing, measure, what, new Certainty(0.95, true))
              .flatMap(found -> found.estimate().interval());
      ranges += range.isPresent() ? 1 : 0;
      clear += range.filter(one -> one.low() > 0 || one.high() < 0).isPresent() ? 1 : 0;
    }

    double z() {
      return squares == 0 ? 0 : sum / Math.sqrt(squares);
    }

    int mostByChance() {
      return ranges == 0
          ? 0
          : new BinomialDistribution(null, ranges, 0.05).inverseCumulativeProbability(1 - 1e-6);
    }
  }

  @Test
  void steps_ofPlayersWithLuckOfTheirOwn_areToldApartNoMoreOftenThanRangesMay() throws IOException {
    Files.writeString(folder.resolve("card.json"), CARD);
    Path file = Files.writeString(folder.resolve("study.json"), STUDY);
    Study pattern = StudyFile.read(file, Changes.NONE, Catalog.standard());
    TableSetup setup = new TableSetup(new ConcreteHands(pattern.card()), pattern.rules());
    Map<String, Row> rows = new TreeMap<>();
    for (long seed = 0; seed < SEEDS; seed++) {
      StudyTally tally = play(pattern, setup, seed);
      for (String habit : Habits.names()) {
        for (Measure measure :
            List.of(Measure.POINTS, Measure.WIN_RATE, Measure.THREW_THE_WINNING_TILE)) {
          rows.computeIfAbsent(habit + " " + measure.text(), name -> new Row())
              .add(
                  tally.firing(Habits.names().indexOf(habit)),
                  pattern.question().measures().indexOf(measure),
                  measure);
        }
      }
    }

    assertThat(rows).hasSize(18);
    rows.forEach(
        (name, row) -> {
          assertThat(Math.abs(row.z())).as(name).isLessThan(Z);
          assertThat(row.clear).as(name).isLessThanOrEqualTo(row.mostByChance());
        });
    assertThat(rows.values().stream().mapToInt(row -> row.clear).sum()).isPositive();
  }

  private static StudyTally play(Study pattern, TableSetup setup, long seed) {
    Study study =
        new Study(
            pattern.question(),
            pattern.card(),
            pattern.rules(),
            pattern.design(),
            new Extent(seed, DEALS, 0),
            pattern.source());
    return new StudyPlayer(study, setup, new Pulse())
        .play(Block.of(0, DEALS, DEALS), new RunState(DEALS, DEALS, 0))
        .tally();
  }
}
