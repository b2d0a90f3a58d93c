package org.tallywall.experiments.school;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.apache.commons.math3.distribution.BinomialDistribution;
import org.apache.commons.math3.distribution.TDistribution;
import org.apache.commons.math3.random.Well19937c;
import org.junit.jupiter.api.Test;
import org.tallywall.core.card.CardFile;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.rules.TableRules;
import org.tallywall.experiments.review.Guesses;
import org.tallywall.experiments.review.Seated;
import org.tallywall.experiments.stats.Interval;
import org.tallywall.reports.csv.CsvWriter;
import org.tallywall.strategies.catalog.Catalog;
import org.tallywall.strategies.catalog.PlayerSpec;

/** What decisions add up to, on numbers made up. */
class SchoolResultTest {
  private static final int WORLDS = 8;
  private static final SchoolQuestion QUESTION =
      new SchoolQuestion(
          new TableSetup(
              new ConcreteHands(CardFile.read(Path.of("cards/saltmarsh-quay.json")).orThrow()),
              TableRules.STANDARD),
          Collections.nCopies(
              4, Seated.of(new PlayerSpec(Catalog.standard().find("nearest"), Map.of()))),
          Guesses.USUAL,
          1,
          2,
          20,
          WORLDS / 2);

  private final List<Judged> all = new ArrayList<>();

  private void decision(Kind kind, long seemed, long lost) {
    Met met = seemed > 0 ? new Met(WORLDS, lost, lost * lost) : Met.NEVER;
    Met first = new Met(WORLDS / 2, seemed, seemed * seemed / 4);
    all.add(
        new Judged(all.size(), kind, all.size(), 0, 99, "stop", "go on", 2, "stop", first, met));
  }

  /** Stops: 16 in two games, 2 a game for one player. Throws: 8 and 16, 3 a game for one. */
  private static Counts counts() {
    int[][] counts = new int[Kind.values().length][2];
    counts[Kind.STOP.ordinal()] = new int[] {8, 8};
    counts[Kind.THROW_LATE.ordinal()] = new int[] {8, 16};
    return new Counts(counts);
  }

  private SchoolResult result() {
    return SchoolResult.of(QUESTION, all.size(), counts(), all);
  }

  private void stopsThatLose() {
    for (int at = 0; at < 20; at++) {
      decision(Kind.STOP, 40 + at, 80 + (at % 2 == 0 ? 8 : -8));
      decision(Kind.THROW_LATE, 0, 0);
    }
  }

  /** Stops lose 80 / 8 = 10 points, give or take 1 (of 20 values ±1 the spread is √(20/19)). */
  @Test
  void kinds_areCountedByTheGame() {
    stopsThatLose();
    SchoolResult result = result();
    KindResult stop = result.kinds().get(0);
    double half = new TDistribution(19).inverseCumulativeProbability(0.975) * Math.sqrt(1 / 19.0);

    assertThat(result.kinds())
        .extracting(KindResult::kind)
        .containsExactly(Kind.STOP, Kind.THROW_LATE);
    assertThat(stop.perGame()).isEqualTo(2);
    assertThat(stop.lost()).isCloseTo(10, within(1e-12));
    assertThat(stop.lostPerGame()).isCloseTo(20, within(1e-12));
    assertThat(stop.lostRange().orElseThrow().high()).isCloseTo(10 + half, within(1e-9));
    assertThat(stop.lostPerGameRange().orElseThrow().low()).isCloseTo(20 - 2 * half, within(1e-9));
    assertThat(stop.clear()).isTrue();
    assertThat(result.kinds().get(1).perGame()).isEqualTo(3);
    assertThat(result.kinds().get(1).lostRange()).isEmpty();
    assertThat(result.lostPerGame()).isCloseTo(20, within(1e-12));
    assertThat(result.lostPerGameRange().orElseThrow().low())
        .isCloseTo(20 - 2 * half, within(1e-9));
    assertThat(SchoolWords.headline(result))
        .contains(
            "One kind of decision clearly loses (points a game): stop the passes, or go on, 20");
    assertThat(CsvWriter.text(SchoolTable.kinds(result)).lines()).hasSize(4);
  }

  /**
   * The range of a sum holds at its level though most kinds lose seldom: 12 decisions of each of 12
   * kinds, 1 to 20 in 100 of which lose 1 to 10 points on average, with luck of 4 around it; 300
   * streams. At most one in 20 may leave out the truth; the window of the exact binomial
   * distribution leaves out 5e-7. Without the decision that nobody looked at, one in 6 does.
   */
  @Test
  void sum_holdsTheTruthThoughFewLose() {
    Well19937c random = new Well19937c(20261202);
    int out = 0;
    for (int stream = 0; stream < 300; stream++) {
      all.clear();
      int[][] counts = new int[Kind.values().length][2];
      double truth = 0;
      for (Kind kind : List.of(Kind.values()).subList(0, 12)) {
        int held = 1 + random.nextInt(10);
        counts[kind.ordinal()] = new int[] {4 * held, 4 * held};
        double share = 0.01 + 0.19 * random.nextDouble();
        double size = 1 + 9 * random.nextDouble();
        truth += held * share * size;
        for (int at = 0; at < 12; at++) {
          double lost = 0 - size * Math.log(1 - random.nextDouble()) + 4 * random.nextGaussian();
          decision(kind, random.nextDouble() < share ? 1 : 0, Math.round(WORLDS * lost));
        }
      }
      Interval range =
          SchoolResult.of(QUESTION, all.size(), new Counts(counts), all)
              .lostPerGameRange()
              .orElseThrow();
      out += range.low() <= truth && truth <= range.high() ? 0 : 1;
    }
    assertThat(out)
        .isLessThanOrEqualTo(
            new BinomialDistribution(null, 300, 0.05).inverseCumulativeProbability(1 - 5e-7));
  }

  /** How many there are in a game is not known exactly, and the range says so. */
  @Test
  void uncertainCounts_widenTheRange() {
    for (int at = 0; at < 20; at++) {
      decision(Kind.THROW_LATE, 40, 80 + (at % 2 == 0 ? 8 : -8));
    }
    KindResult late = result().kinds().get(0);
    double reach = new TDistribution(19).inverseCumulativeProbability(0.975);
    // Counts for one player: 2 and 4, so their mean 3 has the standard error 1.
    double half = reach * Math.sqrt(3 * 3 / 19.0 + 10 * 10);

    assertThat(late.lostPerGame()).isCloseTo(30, within(1e-12));
    assertThat(late.lostPerGameRange().orElseThrow().high()).isCloseTo(30 + half, within(1e-9));
    assertThat(Math.sqrt(late.variance()) * reach).isCloseTo(half, within(1e-9));
  }

  /** The dearest come in the order of the first games, whatever the fresh ones say. */
  @Test
  void dearest_areOrderedByTheFirstGames() {
    decision(Kind.STOP, 40, 1);
    decision(Kind.STOP, 0, 0);
    decision(Kind.STOP, 80, -5);
    decision(Kind.STOP, 60, 900);

    assertThat(result().dearest()).extracting(Judged::number).containsExactly(2, 3, 0);
  }

  /** A loss that one kind alone could show by luck is not called clear beside another kind. */
  @Test
  void manyKinds_shareTheAllowance() {
    for (int at = 0; at < 20; at++) {
      decision(Kind.STOP, 40, at % 2 == 0 ? 102 : -34);
      decision(Kind.THROW_LATE, 0, 0);
    }
    KindResult stop = result().kinds().get(0);

    assertThat(stop.lostRange().orElseThrow().low()).isPositive();
    assertThat(stop.clear()).isFalse();
    assertThat(SchoolWords.headline(result())).endsWith("clearly a losing one by itself.");
  }
}
