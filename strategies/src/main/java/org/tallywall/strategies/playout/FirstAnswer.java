package org.tallywall.strategies.playout;

import java.util.ArrayDeque;
import java.util.Deque;
import org.tallywall.core.play.ClaimChoice;
import org.tallywall.core.play.ForwardingPlayer;
import org.tallywall.core.play.OpenTable;
import org.tallywall.core.play.PassChoice;
import org.tallywall.core.play.PassStep;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.SeesOpenTable;
import org.tallywall.core.play.TurnChoice;
import org.tallywall.core.random.RandomStream;

/**
 * Gives answers that were set beforehand to the first questions, and then plays as another player
 * would. An answer is given once, to the next question of its kind.
 */
public final class FirstAnswer extends ForwardingPlayer implements SeesOpenTable {
  private final Deque<TurnChoice> turns = new ArrayDeque<>();
  private boolean afterClaim;
  private ClaimChoice claim;
  private PassChoice pass;
  private Boolean stops;
  private Integer number;
  private int[] given;

  /**
   * A player with nothing set.
   *
   * @param then who plays on
   */
  public FirstAnswer(Player then) {
    super(then);
  }

  /** Forgets what was set and not asked for. */
  public void clear() {
    turns.clear();
    afterClaim = false;
    claim = null;
    pass = null;
    stops = null;
    number = null;
    given = null;
  }

  /**
   * Sets the answer to the discard on offer.
   *
   * @param choice the answer
   */
  public void claim(ClaimChoice choice) {
    claim = choice;
  }

  /**
   * Sets the next answer in a turn; several are given one after the other. Where a claim is set,
   * too, they are given only if it is granted.
   *
   * @param choice the answer
   */
  public void turn(TurnChoice choice) {
    turns.add(choice);
    afterClaim |= claim != null;
  }

  /**
   * Sets what is passed.
   *
   * @param choice the answer
   */
  public void pass(PassChoice choice) {
    pass = choice;
  }

  /**
   * Sets whether to stop the passes.
   *
   * @param yes the answer
   */
  public void stops(boolean yes) {
    stops = yes;
  }

  /**
   * Sets how many tiles to offer across.
   *
   * @param tiles the answer, 0 to 3
   */
  public void courtesyNumber(int tiles) {
    number = tiles;
  }

  /**
   * Sets which tiles to give across.
   *
   * @param tiles the answer
   */
  public void courtesyTiles(int[] tiles) {
    given = tiles.clone();
  }

  @Override
  public void sitAt(OpenTable table) {
    show(table);
  }

  @Override
  public PassChoice pass(SeatView view, PassStep step, RandomStream random) {
    PassChoice first = pass;
    pass = null;
    return first != null ? first : super.pass(view, step, random);
  }

  @Override
  public boolean stops(SeatView view, RandomStream random) {
    Boolean first = stops;
    stops = null;
    return first != null ? first : super.stops(view, random);
  }

  @Override
  public int courtesyNumber(SeatView view, RandomStream random) {
    Integer first = number;
    number = null;
    return first != null ? first : super.courtesyNumber(view, random);
  }

  @Override
  public int[] courtesyTiles(SeatView view, int tiles, RandomStream random) {
    int[] first = given;
    given = null;
    return first != null ? first : super.courtesyTiles(view, tiles, random);
  }

  @Override
  public ClaimChoice claim(SeatView view, RandomStream random) {
    ClaimChoice first = claim;
    claim = null;
    return first != null ? first : super.claim(view, random);
  }

  @Override
  public TurnChoice turn(SeatView view, RandomStream random) {
    if (afterClaim && !view.claimedThisTurn()) {
      turns.clear();
    }
    TurnChoice first = turns.poll();
    return first != null ? first : super.turn(view, random);
  }
}
