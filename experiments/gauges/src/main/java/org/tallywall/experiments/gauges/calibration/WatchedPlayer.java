package org.tallywall.experiments.gauges.calibration;

import org.tallywall.core.play.ForwardingPlayer;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.TurnChoice;
import org.tallywall.core.random.RandomStream;

/** A player whose discards are noted before they lie on the table; it plays as it always does. */
final class WatchedPlayer extends ForwardingPlayer {
  /** Hears of a discard that is about to be made. */
  @FunctionalInterface
  interface Notes {
    /**
     * A tile is about to be thrown.
     *
     * @param view what the thrower knows
     * @param tile the tile
     */
    void discards(SeatView view, int tile);
  }

  private final Notes notes;

  /**
   * Watches a player.
   *
   * @param player who plays
   * @param notes who hears
   */
  WatchedPlayer(Player player, Notes notes) {
    super(player);
    this.notes = notes;
  }

  @Override
  public TurnChoice turn(SeatView view, RandomStream random) {
    TurnChoice choice = super.turn(view, random);
    if (choice instanceof TurnChoice.Discard discard) {
      notes.discards(view, discard.tile());
    }
    return choice;
  }
}
