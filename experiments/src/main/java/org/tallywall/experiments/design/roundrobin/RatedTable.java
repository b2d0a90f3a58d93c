package org.tallywall.experiments.design.roundrobin;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.experiments.stats.TopOneRatings.Contests;
import org.tallywall.experiments.tally.ContestTally;

/**
 * One table of a round-robin: who sat there and how its deals went, one entry for each way in which
 * one went. The wall is the last contestant.
 *
 * @param seated the four players
 * @param ways how often each pattern of wins came
 */
record RatedTable(List<Integer> seated, List<Alike> ways) {
  /**
   * Deals that went alike.
   *
   * @param deals how many
   * @param wins games that each of the four won, and the wall last
   */
  record Alike(long deals, int[] wins) {}

  /** The tables of so many players. */
  static List<RatedTable> of(int players, List<ContestTally> tallies) {
    RoundRobinTables tables = new RoundRobinTables(players);
    List<RatedTable> rated = new ArrayList<>();
    for (int table = 0; table < tallies.size(); table++) {
      rated.add(new RatedTable(tables.players(table), ways(tallies.get(table))));
    }
    return rated;
  }

  private static List<Alike> ways(ContestTally tally) {
    List<Alike> ways = new ArrayList<>();
    for (int pattern = 0; pattern < ContestTally.PATTERNS; pattern++) {
      if (tally.deals(pattern) > 0) {
        int[] wins = new int[ContestTally.PLAYERS + 1];
        int left = ContestTally.GAMES;
        for (int at = 0; at < ContestTally.PLAYERS; at++) {
          wins[at] = ContestTally.wins(pattern, at);
          left -= wins[at];
        }
        wins[ContestTally.PLAYERS] = left;
        ways.add(new Alike(tally.deals(pattern), wins));
      }
    }
    return ways;
  }

  long deals() {
    return ways.stream().mapToLong(Alike::deals).sum();
  }

  /** Games that each contestant won here; the wall is {@code wall}. */
  long[] wins(int wall) {
    long[] wins = new long[wall + 1];
    for (Alike way : ways) {
      for (int at = 0; at < way.wins().length; at++) {
        wins[contestant(at, wall)] += way.deals() * way.wins()[at];
      }
    }
    return wins;
  }

  /** Deals in which a player won, that sits at a place. */
  long dealsWon(int place) {
    return ways.stream().filter(way -> way.wins()[place] > 0).mapToLong(Alike::deals).sum();
  }

  int contestant(int place, int wall) {
    return place == ContestTally.PLAYERS ? wall : seated.get(place);
  }

  /** What the fit needs of it, the contestants numbered anew; those numbered −1 are left out. */
  Contests contests(int[] numbers, int contestants) {
    int[] places = new int[contestants];
    long[] won = new long[contestants];
    long[] all = wins(numbers.length - 1);
    for (int place = 0; place <= ContestTally.PLAYERS; place++) {
      int one = contestant(place, numbers.length - 1);
      if (numbers[one] >= 0) {
        places[numbers[one]] = 1;
        won[numbers[one]] = all[one];
      }
    }
    return new Contests(places, won);
  }
}
