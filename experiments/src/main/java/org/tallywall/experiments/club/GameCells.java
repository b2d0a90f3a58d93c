package org.tallywall.experiments.club;

import java.util.Arrays;

/**
 * Played games in cells: the first holds games that nobody won, then for each family come the wins
 * on another player's discard and those without. So what goes together in a game stays together.
 */
final class GameCells {
  private static final int WALL = 0;

  private final long[] counts;

  /** No game yet. */
  GameCells(int families) {
    counts = new long[1 + 2 * families];
  }

  /** Games counted by somebody else, cell by cell. */
  GameCells(long... counts) {
    this.counts = counts.clone();
  }

  void nobodyWon() {
    counts[WALL]++;
  }

  void won(int family, boolean selfPicked) {
    counts[1 + 2 * family + (selfPicked ? 1 : 0)]++;
  }

  void add(GameCells other) {
    for (int cell = 0; cell < counts.length; cell++) {
      counts[cell] += other.counts[cell];
    }
  }

  int cells() {
    return counts.length;
  }

  long count(int cell) {
    return counts[cell];
  }

  long games() {
    return Arrays.stream(counts).sum();
  }

  long wallGames() {
    return counts[WALL];
  }

  long wins() {
    return games() - wallGames();
  }

  long selfPicked() {
    long all = 0;
    for (int cell = 2; cell < counts.length; cell += 2) {
      all += counts[cell];
    }
    return all;
  }

  long[] families() {
    long[] wins = new long[counts.length / 2];
    for (int family = 0; family < wins.length; family++) {
      wins[family] = counts[1 + 2 * family] + counts[2 + 2 * family];
    }
    return wins;
  }

  /** The same boxes as those of a club's tally. */
  long[][] boxes() {
    return new long[][] {{wallGames(), wins()}, {selfPicked(), wins() - selfPicked()}, families()};
  }
}
