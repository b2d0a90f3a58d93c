package org.tallywall.experiments.design.roundrobin;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.tallywall.core.random.Purpose;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.random.StreamKey;
import org.tallywall.experiments.tally.ContestTally;

/**
 * Round-robins of players of known strength. In half of the games that follow the first of a deal
 * the same one wins again, so that the games of a deal hang together while each by itself goes by
 * the strengths.
 */
final class SimulatedLadder {
  private final double[] logs;
  private final int dealsPerTable;

  /**
   * Such round-robins.
   *
   * @param logs logarithms of the worths, the wall's last
   * @param dealsPerTable deals of each table
   */
  SimulatedLadder(double[] logs, int dealsPerTable) {
    this.logs = logs.clone();
    this.dealsPerTable = dealsPerTable;
  }

  int players() {
    return logs.length - 1;
  }

  List<ContestTally> play(long seed, int run) {
    RandomStream random = new RandomStream(new StreamKey(seed, run, Purpose.RESAMPLING, 0, 0, 0));
    RoundRobinTables tables = new RoundRobinTables(players());
    List<ContestTally> tallies = new ArrayList<>();
    for (int table = 0; table < tables.count(); table++) {
      ContestTally tally = new ContestTally();
      for (int deal = 0; deal < dealsPerTable; deal++) {
        tally.addDeal(deal(tables.players(table), random));
      }
      tallies.add(tally);
    }
    return tallies;
  }

  private int[] deal(List<Integer> four, RandomStream random) {
    int[] wins = new int[5];
    int first = winner(four, random);
    wins[first]++;
    for (int game = 1; game < ContestTally.GAMES; game++) {
      wins[random.below(2) == 0 ? first : winner(four, random)]++;
    }
    return Arrays.copyOf(wins, 4);
  }

  private int winner(List<Integer> four, RandomStream random) {
    double[] worth = new double[5];
    double sum = 0;
    for (int at = 0; at < 5; at++) {
      worth[at] = Math.exp(logs[at == 4 ? players() : four.get(at)]);
      sum += worth[at];
    }
    double left = sum * random.below(1 << 30) / (1 << 30);
    int at = 0;
    while (at < 4 && left >= worth[at]) {
      left -= worth[at];
      at++;
    }
    return at;
  }
}
