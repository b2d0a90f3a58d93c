package org.tallywall.experiments.benchmarks;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.openjdk.jmh.results.Result;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.Options;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;
import org.tallywall.core.card.Card;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.rules.TableRules;
import org.tallywall.experiments.design.PlayedDesign;
import org.tallywall.experiments.design.StudyPlayer;
import org.tallywall.experiments.design.table.TableDesign;
import org.tallywall.experiments.run.BlockKeeper;
import org.tallywall.experiments.run.LocalRun;
import org.tallywall.experiments.run.RunLimits;
import org.tallywall.experiments.run.RunState;
import org.tallywall.experiments.study.Extent;
import org.tallywall.experiments.study.Source;
import org.tallywall.experiments.study.Study;
import org.tallywall.experiments.study.StudyQuestion;
import org.tallywall.experiments.tally.StudyTally;
import org.tallywall.strategies.catalog.Catalog;
import org.tallywall.strategies.catalog.PlayerSpec;

/**
 * How cost grows: time per game with the number of concrete hands, games a second with threads, and
 * memory with the number of deals. Prints a table and draws the first of these as a chart.
 */
final class Growth {
  private static final List<Integer> HANDS = List.of(200, 1_000, 5_000, 20_000);
  private static final List<Long> DEALS = List.of(2_000L, 8_000L, 32_000L, 128_000L);
  private static final int ROUNDS = 5;
  private static final long DEALS_OF_A_ROUND = 60_000;

  private Growth() {}

  /** Measures everything, or threads alone; the first word is the folder for the chart. */
  public static void main(String[] words) throws IOException, RunnerException {
    if (words.length > 1 && words[1].equals("threads")) {
      byThreads();
      return;
    }
    List<Measured> byHands = byHands();
    byHands.forEach(
        one -> say("| %,d hands | %.1f ± %.1f µs a game |", one.at(), one.value(), one.error()));
    byThreads();
    byDeals();
    Files.writeString(
        Path.of(words[0]).resolve("growth.svg"), GrowthChart.svg(byHands), StandardCharsets.UTF_8);
  }

  /**
   * A number measured.
   *
   * @param at number of hands
   * @param value microseconds a game
   * @param error half the width of its range, by the harness
   */
  record Measured(int at, double value, double error) {}

  private static void say(String form, Object... values) {
    System.out.println(String.format(Locale.ROOT, form, values));
  }

  private static List<Measured> byHands() throws RunnerException {
    Options options =
        new OptionsBuilder()
            .include("GameBenchmark.game$")
            .param("player", "nearest")
            .param("hands", HANDS.stream().map(String::valueOf).toArray(String[]::new))
            .warmupIterations(5)
            .warmupTime(TimeValue.seconds(1))
            .measurementIterations(7)
            .measurementTime(TimeValue.seconds(1))
            .forks(1)
            .build();
    List<Measured> found = new ArrayList<>();
    for (RunResult run : new Runner(options).run()) {
      Result<?> result = run.getPrimaryResult();
      int hands = Integer.parseInt(run.getParams().getParam("hands"));
      found.add(new Measured(hands, result.getScore(), result.getScoreError()));
    }
    found.sort((a, b) -> Integer.compare(a.at(), b.at()));
    return found;
  }

  /** The best of five rounds each, one thread and two taking turns. */
  private static void byThreads() {
    double[] best = {Double.MAX_VALUE, Double.MAX_VALUE};
    play(DEALS_OF_A_ROUND, 2);
    for (int round = 0; round < ROUNDS; round++) {
      for (int threads = 1; threads <= 2; threads++) {
        long start = System.nanoTime();
        play(DEALS_OF_A_ROUND, threads);
        best[threads - 1] = Math.min(best[threads - 1], (System.nanoTime() - start) / 1e9);
      }
    }
    say(
        "| one thread %,.0f games a second, two threads %,.0f | %.2f times |",
        DEALS_OF_A_ROUND / best[0], DEALS_OF_A_ROUND / best[1], best[0] / best[1]);
  }

  private static void byDeals() {
    Runtime memory = Runtime.getRuntime();
    for (long deals : DEALS) {
      StudyTally tally = play(deals, 2);
      for (int time = 0; time < 4; time++) {
        System.gc();
      }
      double kept = (memory.totalMemory() - memory.freeMemory()) / 1e6;
      say("| %,d deals counted | %.1f MB of heap in use afterwards |", tally.deals(), kept);
    }
  }

  private static StudyTally play(long deals, int threads) {
    Study study = study(deals);
    TableSetup setup = new TableSetup(BenchmarkCards.demo(), study.rules());
    StudyTally sum = new StudyTally(PlayedDesign.planOf(study), setup);
    new LocalRun(
            pulse -> new StudyPlayer(study, setup, pulse),
            new RunState(deals, study.extent().blockSize(), 0),
            RunLimits.of(threads),
            BlockKeeper.NONE)
        .play(
            result -> {
              sum.add(result.tally());
              return true;
            });
    return sum;
  }

  private static Study study(long deals) {
    Card card = BenchmarkCards.demo().card();
    PlayerSpec nearest = new PlayerSpec(Catalog.standard().type("nearest").orElseThrow(), Map.of());
    Path nowhere = Path.of("growth.json");
    return new Study(
        new StudyQuestion("growth", "", Optional.empty(), List.of(), 0.95),
        card,
        TableRules.STANDARD,
        new TableDesign(List.of(nearest, nearest, nearest, nearest), Optional.empty()),
        new Extent(1, deals, 0),
        new Source(nowhere, nowhere, Optional.empty(), Optional.empty()));
  }
}
