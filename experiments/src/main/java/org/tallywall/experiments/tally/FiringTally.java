package org.tallywall.experiments.tally;

import java.util.Arrays;

/**
 * How often, and when, a habit came into play, and what it did to each measure in those of these
 * games that can be compared. All can where the choice of games is no work of the habit itself; a
 * step of the defense that was reached only after two games of a deal had gone apart is counted,
 * but compared with nothing.
 */
public final class FiringTally {
  private final EffectTally[] effects;
  private long seatGames;
  private long deals;
  private long reached;
  private long games;
  private long compared;
  private long wall;

  /**
   * Nothing counted yet.
   *
   * @param measures number of measures
   */
  public FiringTally(int measures) {
    effects = new EffectTally[measures];
    Arrays.setAll(effects, measure -> new EffectTally());
  }

  /**
   * Counts a deal whose games can all be compared.
   *
   * @param played games of the studied seats in the deal
   * @param fired in how many of them it came into play
   * @param wallLeft tiles left in the wall when it first did, summed over these games
   * @param differences for each measure the sum of the differences over these games
   */
  public void addDeal(int played, int fired, long wallLeft, long[] differences) {
    addDeal(played, fired, wallLeft, fired, differences);
  }

  /**
   * Counts a deal.
   *
   * @param played games of the studied seats in the deal
   * @param fired in how many of them it came into play
   * @param wallLeft tiles left in the wall when it first did, summed over these games
   * @param alike how many of these games can be compared
   * @param differences for each measure the sum of the differences over the games compared
   */
  public void addDeal(int played, int fired, long wallLeft, int alike, long[] differences) {
    deals++;
    seatGames += played;
    games += fired;
    wall += wallLeft;
    compared += alike;
    reached += alike > 0 ? 1 : 0;
    for (int measure = 0; measure < effects.length; measure++) {
      effects[measure].addDeal(differences[measure], alike);
    }
  }

  /** Carries all numbers out or in. */
  void carry(Carrier carrier) {
    for (EffectTally effect : effects) {
      effect.carry(carrier);
    }
    deals = carrier.carry(deals);
    seatGames = carrier.carry(seatGames);
    games = carrier.carry(games);
    wall = carrier.carry(wall);
    compared = carrier.carry(compared);
    reached = carrier.carry(reached);
  }

  /**
   * Adds the deals of another tally.
   *
   * @param other of the same habit and measures
   */
  public void add(FiringTally other) {
    for (int measure = 0; measure < effects.length; measure++) {
      effects[measure].add(other.effects[measure]);
    }
    deals += other.deals;
    seatGames += other.seatGames;
    games += other.games;
    wall += other.wall;
    compared += other.compared;
    reached += other.reached;
  }

  /**
   * One measure.
   *
   * @param measure which, in the order of the study
   * @return live sums
   */
  public EffectTally effect(int measure) {
    return effects[measure];
  }

  /**
   * Deals counted.
   *
   * @return how many, whether or not it came into play
   */
  public long deals() {
    return deals;
  }

  /**
   * Deals on which the effect rests: those with a game that is compared.
   *
   * @return how many
   */
  public long reached() {
    return reached;
  }

  /**
   * Games on which the effect rests.
   *
   * @return how many, at most as many as it came into play in
   */
  public long compared() {
    return compared;
  }

  /**
   * Games of the studied seats.
   *
   * @return how many, whether or not it came into play
   */
  public long seatGames() {
    return seatGames;
  }

  /**
   * Games in which it came into play.
   *
   * @return how many
   */
  public long games() {
    return games;
  }

  /**
   * Tiles left in the wall when it first came into play.
   *
   * @return their sum over these games
   */
  public long wall() {
    return wall;
  }
}
