package org.tallywall.strategies.player;

import org.tallywall.core.play.ClaimChoice;
import org.tallywall.core.play.ForwardingPlayer;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.TurnChoice;
import org.tallywall.core.random.RandomStream;

/** Gives one answer that was set beforehand, and then plays as another player would. */
final class FirstAnswer extends ForwardingPlayer {
  private ClaimChoice claim;
  private TurnChoice turn;

  FirstAnswer(Player then) {
    super(then);
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
  public ClaimChoice claim(SeatView view, RandomStream random) {
    ClaimChoice first = claim;
    claim = null;
    return first != null ? first : super.claim(view, random);
  }

  @Override
  public TurnChoice turn(SeatView view, RandomStream random) {
    TurnChoice first = turn;
    turn = null;
    return first != null ? first : super.turn(view, random);
  }
}
