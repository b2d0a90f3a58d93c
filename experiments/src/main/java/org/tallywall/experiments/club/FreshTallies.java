package org.tallywall.experiments.club;

import org.tallywall.core.random.Purpose;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.random.StreamKey;

/**
 * Tallies as a table would fill them: games are drawn out of those played, with every drawn game
 * put back twice (Polya's urn), which gives the compound multinomial distribution exactly. The same
 * things are counted as in the club's tally, over the same number of games or a multiple.
 */
final class FreshTallies {
  private final ClubTally like;
  private final long seed;

  FreshTallies(ClubTally like, long seed) {
    this.like = like;
    this.seed = seed;
  }

  /**
   * One tally.
   *
   * @param table the games played
   * @param number which table it is, to give each its own luck
   * @param which which tally of that table
   * @param times how many times as many games as the club played
   * @return its boxes
   */
  long[][] draw(GameCells table, int number, int which, int times) {
    RandomStream random =
        new RandomStream(new StreamKey(seed, number, Purpose.RESAMPLING, 0, which, times));
    boolean counted = like.wallGames().isPresent();
    int games = times * (counted ? like.games() : like.noted());
    Urn urn = new Urn(table, counted);
    long walls = 0;
    long self = 0;
    long noted = 0;
    long[] families = new long[like.sections().isEmpty() ? 0 : table.cells() / 2];
    boolean allNoted = like.noted() == like.wins();
    for (int game = 0; game < games; game++) {
      int cell = urn.draw(random);
      if (cell == 0) {
        walls++;
      } else {
        self += (cell - 1) % 2;
        if (families.length > 0 && (allNoted || noted < (long) times * like.noted())) {
          families[(cell - 1) / 2]++;
          noted++;
        }
      }
    }
    long wins = games - walls;
    return new long[][] {
      counted ? new long[] {walls, wins} : new long[0],
      like.selfPicked().isPresent() ? new long[] {self, wins - self} : new long[0],
      families
    };
  }

  /** Weights are twice the games, and one for the half game that each cell has before any. */
  private static final class Urn {
    private final int[] weights;
    private int all;

    Urn(GameCells table, boolean withWallGames) {
      weights = new int[table.cells()];
      for (int cell = withWallGames ? 0 : 1; cell < weights.length; cell++) {
        weights[cell] = (int) (2 * table.count(cell) + 1);
        all += weights[cell];
      }
    }

    int draw(RandomStream random) {
      int left = random.below(all);
      int cell = 0;
      while (left >= weights[cell]) {
        left -= weights[cell++];
      }
      weights[cell] += 2;
      all += 2;
      return cell;
    }
  }
}
