package org.tallywall.strategies.player;

import org.tallywall.core.play.ClaimChoice;
import org.tallywall.core.play.PassChoice;
import org.tallywall.core.play.PassStep;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.TurnChoice;
import org.tallywall.core.random.RandomStream;

/** Gives one answer that was set beforehand, and then plays as another player would. */
final class FirstAnswer implements Player {
  private final Player then;
  private ClaimChoice claim;
  private TurnChoice turn;

  FirstAnswer(Player then) {
    this.then = then;
  }

  /** The answer to the next question. */
  void set(ClaimChoice choice) {
    claim = choice;
    turn = null;
  }

  /** The answer to the next question. */
  void set(TurnChoice choice) {
    turn = choice;
    claim = null;
  }

  @Override
  public boolean declares(SeatView view, RandomStream random) {
    return then.declares(view, random);
  }

  @Override
  public PassChoice pass(SeatView view, PassStep step, RandomStream random) {
    return then.pass(view, step, random);
  }

  @Override
  public boolean stops(SeatView view, RandomStream random) {
    return then.stops(view, random);
  }

  @Override
  public int courtesyNumber(SeatView view, RandomStream random) {
    return then.courtesyNumber(view, random);
  }

  @Override
  public int[] courtesyTiles(SeatView view, int number, RandomStream random) {
    return then.courtesyTiles(view, number, random);
  }

  @Override
  public ClaimChoice claim(SeatView view, RandomStream random) {
    ClaimChoice first = claim;
    claim = null;
    return first != null ? first : then.claim(view, random);
  }

  @Override
  public TurnChoice turn(SeatView view, RandomStream random) {
    TurnChoice first = turn;
    turn = null;
    return first != null ? first : then.turn(view, random);
  }
}
