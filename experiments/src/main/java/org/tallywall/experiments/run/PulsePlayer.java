package org.tallywall.experiments.run;

import org.tallywall.core.play.ForwardingPlayer;
import org.tallywall.core.play.OpenTable;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.SeesOpenTable;

/** A player whose questions and answers show in a pulse. */
final class PulsePlayer extends ForwardingPlayer implements SeesOpenTable {
  private final Pulse pulse;
  private final int seat;

  /**
   * Watches a player.
   *
   * @param player the player that answers
   * @param pulse the pulse of its table
   * @param seat its seat, 0 to 3
   */
  PulsePlayer(Player player, Pulse pulse, int seat) {
    super(player);
    this.pulse = pulse;
    this.seat = seat;
  }

  /** Hands the table on to a yardstick; another player is shown nothing. */
  @Override
  public void sitAt(OpenTable table) {
    show(table);
  }

  @Override
  protected void asking() {
    pulse.asks(seat);
  }

  @Override
  protected void answered() {
    pulse.answered();
  }
}
