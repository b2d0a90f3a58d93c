package org.tallywall.experiments.design.roundrobin;

import java.util.ArrayList;
import java.util.List;

/**
 * The tables of a round-robin: every four of the players, and the six orders in which four can sit
 * around a table. A deal is played four times, everybody once in each seat.
 */
public final class RoundRobinTables {
  /** Deals in a block of a round-robin. */
  public static final int BLOCK = 600;

  /** Orders in which four players can sit around a table. */
  public static final int ORDERS = 6;

  private static final int[][] CYCLES = {
    {0, 1, 2, 3}, {0, 1, 3, 2}, {0, 2, 1, 3}, {0, 2, 3, 1}, {0, 3, 1, 2}, {0, 3, 2, 1}
  };

  private final List<List<Integer>> tables = new ArrayList<>();

  /**
   * The tables of so many players.
   *
   * @param players four or more
   */
  public RoundRobinTables(int players) {
    for (int a = 0; a < players; a++) {
      for (int b = a + 1; b < players; b++) {
        for (int c = b + 1; c < players; c++) {
          for (int d = c + 1; d < players; d++) {
            tables.add(List.of(a, b, c, d));
          }
        }
      }
    }
  }

  /**
   * After how many deals everybody has sat with everybody in every order equally often.
   *
   * @param players four or more
   * @return six times the number of tables
   */
  public static long round(int players) {
    return (long) ORDERS * new RoundRobinTables(players).count();
  }

  /**
   * How many tables there are.
   *
   * @return 1 or more
   */
  public int count() {
    return tables.size();
  }

  /**
   * The table of a deal.
   *
   * @param deal the deal's number
   * @return the table's number
   */
  public int of(long deal) {
    return (int) (deal / ORDERS % tables.size());
  }

  /**
   * Who sits at a table.
   *
   * @param table its number
   * @return four players, ascending
   */
  public List<Integer> players(int table) {
    return tables.get(table);
  }

  /**
   * Who sits where.
   *
   * @param deal the deal's number; it chooses the order around the table
   * @param game which of the deal's four games, 0 to 3; everybody moves one seat to the right
   * @return which of the table's four players, 0 to 3, sits at each seat
   */
  public static int[] seating(long deal, int game) {
    int[] cycle = CYCLES[(int) (deal % ORDERS)];
    int[] seats = new int[4];
    for (int seat = 0; seat < 4; seat++) {
      seats[(seat + game) % 4] = cycle[seat];
    }
    return seats;
  }
}
