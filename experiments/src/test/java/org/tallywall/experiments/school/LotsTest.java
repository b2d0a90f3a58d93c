package org.tallywall.experiments.school;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Which decisions are drawn. */
class LotsTest {
  private static final int GAMES = 4;

  /** Throws of four games: none, one, two and five; a stop in each. */
  private static Counts counts() {
    int[][] counts = new int[Kind.values().length][GAMES];
    counts[Kind.THROW_EARLY.ordinal()] = new int[] {0, 1, 2, 5};
    counts[Kind.STOP.ordinal()] = new int[] {4, 4, 4, 4};
    return new Counts(counts);
  }

  /**
   * The first throw drawn is any of the eight, all as likely: 8,000 seeds, Pearson's chi-square
   * with 7 degrees of freedom, critical value 43.8 (upper 2.3e-7; Wilson and Hilferty's formula, so
   * a fresh seed fails once in some millions).
   */
  @Test
  void everyDecision_isAsLikelyAsAnyOther() {
    int[][] drawn = new int[GAMES][5];
    int seeds = 8_000;
    for (int seed = 0; seed < seeds; seed++) {
      Lots.Lot lot =
          Lots.draw(counts(), seed, 1).stream()
              .filter(one -> one.kind() == Kind.THROW_EARLY)
              .findFirst()
              .orElseThrow();
      drawn[lot.deal()][lot.place()]++;
    }
    double square = 0;
    int found = 0;
    for (int deal = 0; deal < GAMES; deal++) {
      for (int place = 0; place < counts().of(Kind.THROW_EARLY, deal); place++) {
        double apart = drawn[deal][place] - seeds / 8.0;
        square += apart * apart / (seeds / 8.0);
        found += drawn[deal][place];
      }
    }
    assertThat(found).isEqualTo(seeds);
    assertThat(square).isLessThan(43.8);
  }

  /** No game gives two of a kind, and a kind that few games have is drawn no oftener. */
  @Test
  void noGame_givesTwoOfAKind() {
    List<Lots.Lot> lots = Lots.draw(counts(), 5, 10);

    assertThat(lots).hasSize(3 + GAMES);
    assertThat(lots.stream().map(lot -> lot.kind() + " " + lot.deal()).distinct()).hasSize(7);
    assertThat(lots).extracting(Lots.Lot::number).containsExactly(0, 1, 2, 3, 4, 5, 6);
  }

  /** Kinds take turns, and whoever draws fewer has drawn the first of more. */
  @Test
  void fewer_areTheFirstOfMore() {
    List<Lots.Lot> two = Lots.draw(counts(), 5, 2);

    assertThat(two).isEqualTo(Lots.draw(counts(), 5, 10).subList(0, 4));
    assertThat(two.stream().map(Lots.Lot::kind).collect(Collectors.toList()))
        .containsExactly(Kind.STOP, Kind.THROW_EARLY, Kind.STOP, Kind.THROW_EARLY);
  }
}
