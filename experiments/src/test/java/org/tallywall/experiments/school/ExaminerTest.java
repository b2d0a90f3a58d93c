package org.tallywall.experiments.school;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.sheet.Move;
import org.tallywall.core.tile.TileText;
import org.tallywall.experiments.review.Considered;
import org.tallywall.experiments.review.TinyTable;
import org.tallywall.experiments.review.TinyTable.AtRandom;
import org.tallywall.experiments.review.TinyTable.ThrowsWhatItDraws;
import org.tallywall.experiments.run.RunLimits;
import org.tallywall.experiments.stats.Moments;

/**
 * Decisions of which it is known what they lose. A mean is held against the truth by its standard
 * error over decisions that share no luck; a fresh seed leaves the window of five of them once in
 * 1.7 million (the normal distribution: two tails of 2.9e-7).
 */
@Tag("long")
class ExaminerTest {
  private static final double WINDOW = 5;
  private static final int DECISIONS = 300;
  private static final int WORLDS = 64;
  private static final RunLimits STILL = new RunLimits(1, 60_000, () -> 0);
  private static final TableSetup WAITS =
      TinyTable.setup(
          "111x 333x 555x 777x 99x", "111x 333x 555x 777x 99y", "2222x 444x 666x 8888x");
  private static final String WAITING =
      """
      seat 0
      moment turn
      rack 111333555777b 9b 9c
      exposed 1 2222c 444c
      exposed 2 111d 333d
      exposed 3 555d 777d
      unseen 222244446666888b %s 1111333355557777c 22224444d NNNNEEEEWWWW
      """;

  /** Both waits have two tiles left: no choice is better than the other. */
  private static final String ALIKE = WAITING.formatted("99b 99c");

  /** Three 9b against two 9c: worked out in the exact positions of reviews. */
  private static final String THREE_AGAINST_TWO = WAITING.formatted("999b 99c");

  private static final double COST = 150 * (0.427235534775 - 0.307909604520);

  private static SchoolQuestion question(long seed) {
    return new SchoolQuestion(
        WAITS,
        TinyTable.four("plain", () -> new ThrowsWhatItDraws(false)),
        (players, kinds) -> new AtRandom(),
        seed,
        1,
        1,
        WORLDS);
  }

  /** So many decisions in one position, each with luck of its own. */
  private static List<Judged> judged(String sheet, String threw, String... others) {
    Examiner examiner =
        new Examiner(
            question(1),
            STILL,
            (position, asked, made) -> {
              List<Considered> all = new ArrayList<>(List.of(TinyTable.discard(threw)));
              for (String other : others) {
                all.add(TinyTable.discard(other));
              }
              return all;
            });
    List<Judged> all = new ArrayList<>();
    for (int number = 0; number < DECISIONS; number++) {
      Move made = new Move.Discard(TileText.tile(threw));
      all.add(
          examiner.judge(
              new Found(new Lots.Lot(number, Kind.THROW_LATE, number, 0), 0, 10, made, sheet)));
    }
    return all;
  }

  private static double errors(List<Long> sums, int worlds, double truth) {
    Moments moments = Moments.of(sums.stream().mapToLong(sum -> sum).toArray());
    return (moments.mean() - truth * worlds) / moments.standardError();
  }

  private static List<Judged> ahead(List<Judged> all) {
    return all.stream().filter(Judged::differs).toList();
  }

  private static List<Long> fresh(List<Judged> all) {
    return all.stream().map(one -> one.second().sum()).toList();
  }

  /**
   * Where no choice is better, nothing is lost: the mean over all decisions is 0 within its range,
   * though in the games by which the other was picked it looked better by far.
   */
  @Test
  void alike_nothingIsLost() {
    List<Judged> all = judged(ALIKE, "9b", "9c");
    List<Judged> ahead = ahead(all);

    assertThat(ahead.size()).isBetween(20, 90);
    assertThat(errors(fresh(all), 2 * WORLDS, 0)).isBetween(0 - WINDOW, WINDOW);
    assertThat(errors(fresh(ahead), 2 * WORLDS, 0)).isBetween(0 - WINDOW, WINDOW);
    List<Long> seemed = ahead.stream().map(one -> one.first().sum()).toList();
    assertThat(errors(seemed, WORLDS, 0)).isGreaterThan(WINDOW);
  }

  /** What is measured where the better choice is ahead is what the other one truly costs. */
  @Test
  void worseChoice_losesWhatItCosts() {
    List<Judged> all = judged(THREE_AGAINST_TWO, "9b", "9c", "9c", "9c", "9c");
    List<Judged> ahead = ahead(all);

    assertThat(ahead.size()).isGreaterThan(DECISIONS / 2);
    assertThat(ahead).allMatch(one -> one.other().equals("discard 9c") && one.choices() == 5);
    assertThat(errors(fresh(ahead), 2 * WORLDS, COST)).isBetween(0 - WINDOW, WINDOW);
    Lost lost = Lost.of(all, 0.95);
    assertThat(lost.mean()).isBetween(COST / 2, COST);
    assertThat(lost.range().orElseThrow().low()).isPositive();
  }

  /** The better choice is hardly ever found to lose, and then the fresh games take it back. */
  @Test
  void betterChoice_losesNothing() {
    List<Judged> all = judged(THREE_AGAINST_TWO, "9c", "9b");

    assertThat(ahead(all).size()).isLessThan(DECISIONS / 20);
    assertThat(all.stream().mapToLong(one -> one.second().sum()).sum()).isLessThanOrEqualTo(0);
  }

  @Test
  void onlyChoice_losesNothingAndPlaysNothing() {
    Judged one = judged(ALIKE, "9b").get(0);

    assertThat(one.counts()).isTrue();
    assertThat(one.other()).isEmpty();
    assertThat(one.first()).isEqualTo(Met.NEVER);
    assertThat(one.second()).isEqualTo(Met.NEVER);
  }

  /** The luck of one decision says nothing of another's. */
  @Test
  void decisions_shareNoLuck() {
    assertThat(judged(ALIKE, "9b", "9c").stream().map(Judged::first).distinct().count())
        .isGreaterThan(DECISIONS / 4);
  }
}
