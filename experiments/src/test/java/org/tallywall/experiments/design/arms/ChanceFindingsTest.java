package org.tallywall.experiments.design.arms;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.distribution.BinomialDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.random.Purpose;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.random.StreamKey;
import org.tallywall.experiments.answer.StudyAnswer;
import org.tallywall.experiments.design.PlayedDesign;
import org.tallywall.experiments.studies.StudyFile;
import org.tallywall.experiments.study.Changes;
import org.tallywall.experiments.study.Measure;
import org.tallywall.experiments.study.Study;
import org.tallywall.experiments.tally.StudyTally;
import org.tallywall.strategies.catalog.Catalog;

/** How often a study in which all ways of playing are alike calls anything clear. */
class ChanceFindingsTest {
  private static final int STUDIES = 400;
  private static final int DEALS = 100;
  private static final String CARD =
      """
      { "card": "Binnacle test card", "families": [ { "family": "Ladders", "lines": [
          { "tiles": "FF 11x 222x 333x 4444x", "slide": "any", "value": 25 } ] } ] }
      """;
  private static final String STUDY =
      """
      { "study": "alike", "card": "card.json", "seed": 3, "deals": 100,
        "arms": { "one": "nearest", "two": "nearest", "three": "nearest" }, "baseline": "one",
        "others": "nearest", "primary": "win-rate",
        "secondary": ["wall-games", "one-away-reached", "only-paid"] }
      """;

  @TempDir private Path folder;

  /**
   * H0: one of the eight declared comparisons is called clear in at most 5 % of studies. 400
   * studies of 100 deals with four seats, in which every game counts by a chance of its own, seed
   * 31; more than the 1 - 1e-6 quantile of the binomial distribution refutes it. Without any
   * adjustment some must come out clear in more than that, or the test could not fail.
   */
  @Test
  void waysThatAreAlike_areCalledClearAsRarelyAsTheNotesSay() throws IOException {
    Files.writeString(folder.resolve("card.json"), CARD);
    Path file = Files.writeString(folder.resolve("study.json"), STUDY);
    Study study = StudyFile.read(file, Changes.NONE, Catalog.standard());
    TableSetup setup = new TableSetup(new ConcreteHands(study.card()), study.rules());
    int clear = 0;
    int clearAlone = 0;
    for (int number = 0; number < STUDIES; number++) {
      StudyTally tally = tally(study, setup, number);
      StudyAnswer answer = new StudyAnswer(study, setup.hands(), tally, Optional.empty());
      clear += differences(answer).stream().anyMatch(one -> one.holm().orElse(1) <= 0.05) ? 1 : 0;
      clearAlone += differences(answer).stream().anyMatch(one -> one.p().orElse(1) <= 0.05) ? 1 : 0;
    }

    int bound =
        new BinomialDistribution(null, STUDIES, 0.05).inverseCumulativeProbability(1 - 1e-6);
    assertThat(clear).isPositive().isLessThanOrEqualTo(bound);
    assertThat(clearAlone).isGreaterThan(bound);
  }

  private static List<Difference> differences(StudyAnswer answer) {
    return Difference.of(answer, ((Comparison) answer.study().design()).ways());
  }

  private static StudyTally tally(Study study, TableSetup setup, int number) {
    StudyTally tally = new StudyTally(PlayedDesign.planOf(study), setup);
    RandomStream random = new RandomStream(new StreamKey(31, number, Purpose.ROLLOUT, 0, 0, 0));
    int measures = study.question().measures().size();
    for (int deal = 0; deal < DEALS; deal++) {
      for (int measure = 0; measure < measures; measure++) {
        long[] baseline = games(study, measure, random);
        for (int pair = 0; pair < 2; pair++) {
          tally.pair(pair, measure).addDeal(games(study, measure, random), baseline);
        }
      }
    }
    return tally;
  }

  private static long[] games(Study study, int measure, RandomStream random) {
    long[] games = new long[4];
    Measure what = study.question().measures().get(measure);
    if (measure == 0 || study.question().secondary().contains(what)) {
      for (int seat = 0; seat < 4; seat++) {
        games[seat] = random.below(4) == 0 ? 1 : 0;
      }
    }
    return games;
  }
}
