package org.tallywall.experiments.club;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/**
 * Tallies that tables fill themselves are named as often as an exact sum says, and scatter as the
 * compound binomial distribution does. Seeds are fixed; each limit is four standard errors, which a
 * fresh seed would pass beyond in 6 of 100,000 tries (normal distribution).
 */
class TellingTest {
  private static final GameCells FEW_WALLS = new GameCells(10, 110, 80);
  private static final GameCells MANY_WALLS = new GameCells(40, 90, 70);
  private static final int GAMES = 30;
  private static final long SEED = 5;
  private static final int TALLIES = 4_000;

  private static ClubTally walls(int games, int walls) {
    return new ClubTally(games, OptionalInt.of(walls), OptionalInt.empty(), List.of());
  }

  /** The chance of so many wall games, factor by factor. */
  private static double chance(GameCells table, int games, int walls) {
    double half = table.count(0) + 0.5;
    double others = table.games() - table.count(0) + 1.0;
    double chance = 1;
    for (int at = 0; at < games; at++) {
      boolean wall = at < walls;
      double now = wall ? half + at : others + at - walls;
      chance *= now / (half + others + at);
    }
    for (int at = 0; at < walls; at++) {
      chance *= (double) (games - at) / (at + 1);
    }
    return chance;
  }

  @Test
  void draw_meanAndSpread_areThoseOfTheCompoundBinomial() {
    FreshTallies fresh = new FreshTallies(walls(GAMES, 3), SEED);
    double sum = 0;
    double squares = 0;
    for (int which = 0; which < TALLIES; which++) {
      long found = fresh.draw(FEW_WALLS, 0, which, 1)[0][0];
      sum += found;
      squares += found * found;
    }
    double mean = sum / TALLIES;
    double spread = squares / TALLIES - mean * mean;
    double all = FEW_WALLS.games() + 1.5;
    double share = 10.5 / all;
    double exact = GAMES * share * (1 - share) * (all + GAMES) / (all + 1);
    assertThat(mean).isCloseTo(GAMES * share, within(4 * StrictMath.sqrt(exact / TALLIES)));
    assertThat(spread).isCloseTo(exact, within(4 * exact * StrictMath.sqrt(3.0 / TALLIES)));
  }

  @Test
  void right_isAsOftenAsTheExactSumSays() {
    Telling telling = new Telling(List.of(FEW_WALLS, MANY_WALLS), walls(GAMES, 3), SEED);
    double[] exact = new double[2];
    for (int walls = 0; walls <= GAMES; walls++) {
      int named = telling.named(new long[][] {{walls, GAMES - walls}, {}, {}});
      exact[named] += chance(named == 0 ? FEW_WALLS : MANY_WALLS, GAMES, walls);
    }
    double error = 4 * StrictMath.sqrt(0.25 / Telling.TALLIES);
    assertThat(telling.right(0) / (double) Telling.TALLIES).isCloseTo(exact[0], within(error));
    assertThat(telling.right(1) / (double) Telling.TALLIES).isCloseTo(exact[1], within(error));
    assertThat(exact[0]).isBetween(0.7, 0.95);
  }

  /**
   * Under the null, a p-value of 0.1 or less comes in about 10 of 100: 200 clubs, 4 errors of 4.
   */
  @Test
  void chanceOfAsFar_ofAClubThatIsSuchATable_isLowAsRarelyAsItSays() {
    FreshTallies club = new FreshTallies(walls(GAMES, 3), SEED + 1);
    Telling telling = new Telling(List.of(FEW_WALLS, MANY_WALLS), walls(GAMES, 3), SEED);
    int low = 0;
    for (int which = 0; which < 200; which++) {
      low += telling.chanceOfAsFar(0, club.draw(FEW_WALLS, 0, which, 1)) <= 0.1 ? 1 : 0;
    }
    assertThat(low).isLessThanOrEqualTo(37).isPositive();
    assertThat(telling.chanceOfAsFar(0, new long[][] {{20, 10}, {}, {}})).isLessThan(0.005);
  }

  @Test
  void gamesNeeded_growsAsTablesGetMoreAlike() {
    GameCells one = new GameCells(1_000, 10_000, 9_000);
    GameCells near = new GameCells(1_600, 9_700, 8_700);
    GameCells far = new GameCells(9_000, 6_000, 5_000);
    Telling telling = new Telling(List.of(one, near, far), walls(GAMES, 3), SEED);
    assertThat(telling.gamesNeeded(0, 2)).hasValue(GAMES);
    assertThat(telling.gamesNeeded(0, 1).orElseThrow()).isBetween(8 * GAMES, 24 * GAMES);
    assertThat(telling.gamesNeeded(0, 0)).isEmpty();
  }

  @Test
  void draw_countsWhatTheClubCounted() {
    ClubTally sections = new ClubTally(40, OptionalInt.empty(), OptionalInt.of(3), List.of(10, 10));
    long[][] drawn = new FreshTallies(sections, SEED).draw(new GameCells(50, 9, 9, 9, 9), 0, 0, 2);
    assertThat(drawn[0]).isEmpty();
    assertThat(drawn[1][0] + drawn[1][1]).isEqualTo(40);
    assertThat(drawn[2][0] + drawn[2][1]).isEqualTo(40);
    ClubTally someNoted = new ClubTally(40, OptionalInt.of(0), OptionalInt.empty(), List.of(5, 5));
    long[][] some = new FreshTallies(someNoted, SEED).draw(new GameCells(0, 9, 9, 9, 9), 0, 0, 1);
    assertThat(some[2][0] + some[2][1]).isEqualTo(10);
  }
}
