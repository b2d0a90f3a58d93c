package org.tallywall.experiments.run;

import org.tallywall.core.play.ClaimChoice;
import org.tallywall.core.play.OpenTable;
import org.tallywall.core.play.PassChoice;
import org.tallywall.core.play.PassStep;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.SeesOpenTable;
import org.tallywall.core.play.TurnChoice;
import org.tallywall.core.random.RandomStream;

/**
 * A player whose questions and answers show in a pulse.
 *
 * @param player the player that answers
 * @param pulse the pulse of its table
 * @param seat its seat, 0 to 3
 */
record PulsePlayer(Player player, Pulse pulse, int seat) implements SeesOpenTable {
  /** Hands the table on to a yardstick; another player is shown nothing. */
  @Override
  public void sitAt(OpenTable table) {
    if (player instanceof SeesOpenTable yardstick) {
      yardstick.sitAt(table);
    }
  }

  @Override
  public boolean declares(SeatView view, RandomStream random) {
    pulse.asks(seat);
    boolean answer = player.declares(view, random);
    pulse.answered();
    return answer;
  }

  @Override
  public PassChoice pass(SeatView view, PassStep step, RandomStream random) {
    pulse.asks(seat);
    PassChoice answer = player.pass(view, step, random);
    pulse.answered();
    return answer;
  }

  @Override
  public boolean stops(SeatView view, RandomStream random) {
    pulse.asks(seat);
    boolean answer = player.stops(view, random);
    pulse.answered();
    return answer;
  }

  @Override
  public int courtesyNumber(SeatView view, RandomStream random) {
    pulse.asks(seat);
    int answer = player.courtesyNumber(view, random);
    pulse.answered();
    return answer;
  }

  @Override
  public int[] courtesyTiles(SeatView view, int number, RandomStream random) {
    pulse.asks(seat);
    int[] answer = player.courtesyTiles(view, number, random);
    pulse.answered();
    return answer;
  }

  @Override
  public ClaimChoice claim(SeatView view, RandomStream random) {
    pulse.asks(seat);
    ClaimChoice answer = player.claim(view, random);
    pulse.answered();
    return answer;
  }

  @Override
  public TurnChoice turn(SeatView view, RandomStream random) {
    pulse.asks(seat);
    TurnChoice answer = player.turn(view, random);
    pulse.answered();
    return answer;
  }

  @Override
  public int aim(SeatView view) {
    pulse.asks(seat);
    int answer = player.aim(view);
    pulse.answered();
    return answer;
  }
}
