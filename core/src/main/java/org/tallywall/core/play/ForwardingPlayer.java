package org.tallywall.core.play;

import org.tallywall.core.random.RandomStream;

/**
 * Hands every question on to another player. Who wants to change or hear a single answer extends it
 * and writes that one method; who wants to do something about all of them writes {@link #asking}
 * and {@link #answered}.
 */
public abstract class ForwardingPlayer implements Player {
  private final Player player;

  /**
   * Stands in front of a player.
   *
   * @param player who answers
   */
  protected ForwardingPlayer(Player player) {
    this.player = player;
  }

  /**
   * The player behind.
   *
   * @return who answers
   */
  protected final Player behind() {
    return player;
  }

  /** Comes before each question. */
  protected void asking() {}

  /** Comes after each answer; not where the player breaks down. */
  protected void answered() {}

  /**
   * Shows the table to the player behind, if it is one that sees it.
   *
   * @param table the live table of the game that begins
   */
  protected final void show(OpenTable table) {
    if (player instanceof SeesOpenTable yardstick) {
      yardstick.sitAt(table);
    }
  }

  @Override
  public boolean declares(SeatView view, RandomStream random) {
    asking();
    boolean answer = player.declares(view, random);
    answered();
    return answer;
  }

  @Override
  public PassChoice pass(SeatView view, PassStep step, RandomStream random) {
    asking();
    PassChoice answer = player.pass(view, step, random);
    answered();
    return answer;
  }

  @Override
  public boolean stops(SeatView view, RandomStream random) {
    asking();
    boolean answer = player.stops(view, random);
    answered();
    return answer;
  }

  @Override
  public int courtesyNumber(SeatView view, RandomStream random) {
    asking();
    int answer = player.courtesyNumber(view, random);
    answered();
    return answer;
  }

  @Override
  public int[] courtesyTiles(SeatView view, int number, RandomStream random) {
    asking();
    int[] answer = player.courtesyTiles(view, number, random);
    answered();
    return answer;
  }

  @Override
  public ClaimChoice claim(SeatView view, RandomStream random) {
    asking();
    ClaimChoice answer = player.claim(view, random);
    answered();
    return answer;
  }

  @Override
  public TurnChoice turn(SeatView view, RandomStream random) {
    asking();
    TurnChoice answer = player.turn(view, random);
    answered();
    return answer;
  }

  @Override
  public int aim(SeatView view) {
    asking();
    int answer = player.aim(view);
    answered();
    return answer;
  }
}
