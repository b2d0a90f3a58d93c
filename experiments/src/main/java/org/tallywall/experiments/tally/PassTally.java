package org.tallywall.experiments.tally;

import java.util.Arrays;

/** The Charleston, pass by pass. */
public final class PassTally {
  /** Number of passes, the courtesy pass included. */
  public static final int PASSES = 7;

  /** Index of the courtesy pass; those before are the six steps in their order. */
  public static final int COURTESY = 6;

  /** Numbers of tiles that can be passed blind, asked for or given: 0 to 3. */
  public static final int NUMBERS = 4;

  private final long[] games = new long[PASSES];
  private final long[] voids = new long[PASSES];
  private final long[][] blind = new long[PASSES][NUMBERS];
  private final long[] asked = new long[NUMBERS];
  private final long[] gave = new long[NUMBERS];
  private final long[] racks = new long[PASSES];
  private final long[] before = new long[PASSES];
  private final long[] after = new long[PASSES];
  private final long[] beforeSquared = new long[PASSES];
  private final long[] afterSquared = new long[PASSES];
  private long stopAsked;
  private long stopped;
  private long stoppers;

  /** No games yet. */
  public PassTally() {}

  void addPass(int pass, int counted, int awayBefore, int awayAfter) {
    games[pass]++;
    racks[pass] += counted;
    before[pass] += awayBefore;
    after[pass] += awayAfter;
    beforeSquared[pass] += (long) awayBefore * awayBefore;
    afterSquared[pass] += (long) awayAfter * awayAfter;
  }

  void addBlind(int pass, int tiles) {
    blind[pass][tiles]++;
  }

  void addVoid(int pass) {
    voids[pass]++;
  }

  void addStop(boolean anybody, int players) {
    stopAsked++;
    stopped += anybody ? 1 : 0;
    stoppers += players;
  }

  void addCourtesy(int number, int given) {
    asked[number]++;
    gave[given]++;
  }

  /** Carries all numbers out or in. */
  void carry(Carrier carrier) {
    for (long[] numbers : new long[][] {games, voids, asked, gave, racks, before, after}) {
      carrier.carry(numbers);
    }
    carrier.carry(beforeSquared);
    carrier.carry(afterSquared);
    for (long[] numbers : blind) {
      carrier.carry(numbers);
    }
    stopAsked = carrier.carry(stopAsked);
    stopped = carrier.carry(stopped);
    stoppers = carrier.carry(stoppers);
  }

  /**
   * Adds the games of another tally.
   *
   * @param other the other tally
   */
  public void add(PassTally other) {
    addTo(games, other.games);
    addTo(voids, other.voids);
    for (int pass = 0; pass < PASSES; pass++) {
      addTo(blind[pass], other.blind[pass]);
    }
    addTo(asked, other.asked);
    addTo(gave, other.gave);
    addTo(racks, other.racks);
    addTo(before, other.before);
    addTo(after, other.after);
    addTo(beforeSquared, other.beforeSquared);
    addTo(afterSquared, other.afterSquared);
    stopAsked += other.stopAsked;
    stopped += other.stopped;
    stoppers += other.stoppers;
  }

  private static void addTo(long[] sums, long[] more) {
    Arrays.setAll(sums, at -> sums[at] + more[at]);
  }

  /**
   * Games in which a pass was made.
   *
   * @param pass index of the pass
   * @return how many
   */
  public long games(int pass) {
    return games[pass];
  }

  /**
   * Games in which all four passed blind, so that no tile moved.
   *
   * @param pass index of the pass
   * @return how many
   */
  public long voids(int pass) {
    return voids[pass];
  }

  /**
   * Players that passed so many tiles blind.
   *
   * @param pass index of the pass
   * @param tiles 0 to 3
   * @return how many
   */
  public long blind(int pass, int tiles) {
    return blind[pass][tiles];
  }

  /**
   * Players that asked for so many tiles in the courtesy pass.
   *
   * @param number 0 to 3
   * @return how many
   */
  public long asked(int number) {
    return asked[number];
  }

  /**
   * Players that gave so many tiles in the courtesy pass.
   *
   * @param number 0 to 3
   * @return how many
   */
  public long gave(int number) {
    return gave[number];
  }

  /**
   * Racks measured before and after a pass.
   *
   * @param pass index of the pass
   * @return the games times the seats counted
   */
  public long racks(int pass) {
    return racks[pass];
  }

  /**
   * Tiles away before a pass, summed over the racks measured.
   *
   * @param pass index of the pass
   * @return the sum
   */
  public long before(int pass) {
    return before[pass];
  }

  /**
   * Tiles away after a pass, summed over the racks measured.
   *
   * @param pass index of the pass
   * @return the sum
   */
  public long after(int pass) {
    return after[pass];
  }

  /**
   * Squares of a game's tiles away before a pass, summed over games.
   *
   * @param pass index of the pass
   * @return the sum of squares; a game's number is the sum over its racks measured
   */
  public long beforeSquared(int pass) {
    return beforeSquared[pass];
  }

  /**
   * Squares of a game's tiles away after a pass, summed over games.
   *
   * @param pass index of the pass
   * @return the sum of squares; a game's number is the sum over its racks measured
   */
  public long afterSquared(int pass) {
    return afterSquared[pass];
  }

  /**
   * Games in which the stop question was asked.
   *
   * @return how many
   */
  public long stopAsked() {
    return stopAsked;
  }

  /**
   * Games in which somebody stopped.
   *
   * @return how many
   */
  public long stopped() {
    return stopped;
  }

  /**
   * Players counted that stopped, over all games.
   *
   * @return how many
   */
  public long stoppers() {
    return stoppers;
  }
}
