package org.tallywall.core.play;

import java.util.List;
import org.tallywall.core.rules.Settlement;

/**
 * Tries what would become of a tile if a seat threw it now, in a position with every hidden tile
 * filled in: who might win on it, what that would cost, and who would lay it open. The position
 * stays as it is. One object serves many trials, one after the other; it is not safe for use by
 * several threads.
 */
public final class TrialDiscard {
  private final GameState state;
  private final Settlement settlement;
  private final ClaimWindow window;
  private final DeadCalls deadCalls;
  private int thrower;

  /**
   * A table at which discards are tried.
   *
   * @param setup the card and the rules
   * @param players who would be asked, four players, East first
   * @throws IllegalArgumentException if there are not four
   */
  public TrialDiscard(TableSetup setup, List<? extends Player> players) {
    if (players.size() != Seats.COUNT) {
      throw new IllegalArgumentException("four players sit at a table, not " + players.size());
    }
    state = new GameState(setup);
    settlement = new Settlement(setup.rules());
    window = new ClaimWindow(state, players.toArray(new Player[0]), settlement);
    deadCalls = new DeadCalls(state);
  }

  /**
   * Throws a tile from the rack of the seat that knows the position, whether it is its turn or not.
   * A tile that is on offer in the position has gone by.
   *
   * @param position the position, with every hidden tile filled in
   * @param tile the kind of a tile on that rack
   */
  public void throwNow(Position position, int tile) {
    state.begin(position);
    thrower = position.view().seat();
    state.discard(thrower, tile);
    if (state.setup.rules().dead().called()) {
      deadCalls.call();
    }
  }

  /**
   * Who may declare mahjong on the tile thrown last. Nobody is asked; a hand that would be complete
   * only after a joker exchange does not count, as by rule 3.5.5.
   *
   * @return a mask of seats; bit 0 is East
   */
  public int mayWin() {
    return window.mayWin();
  }

  /**
   * What each seat would gain or lose if one of them won on the tile thrown last, on the line that
   * pays most. The dice are not known to a position, so they do not double anything.
   *
   * @param winner a seat that {@link #mayWin} names
   * @return four numbers that sum to zero
   */
  public int[] points(int winner) {
    int tile = state.offered;
    int hand = state.wins.best(winner, tile, -1, settlement);
    int jokers = state.wins.jokers(winner, tile);
    int unit = settlement.unit(state.setup.hands().line(state.setup.hands().lineOf(hand)), jokers);
    Settlement.Way way =
        PayAll.applies(state, winner) ? Settlement.Way.DISCARD_PAYING_ALL : Settlement.Way.DISCARD;
    return settlement.win(winner, thrower, way, unit, false);
  }

  /**
   * Asks the players and tells who would claim the tile thrown last for an exposure, whoever gets
   * it.
   *
   * @return a mask of seats; bit 0 is East
   * @throws IllegalMoveException if a player answers with a move that is not legal
   */
  public int laysOpen() {
    int granted = window.open();
    boolean exposes = granted != GameState.NONE && window.granted() instanceof ClaimChoice.Expose;
    return window.also() | (exposes ? 1 << granted : 0);
  }
}
