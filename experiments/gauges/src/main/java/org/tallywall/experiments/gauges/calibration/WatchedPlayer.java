package org.tallywall.experiments.gauges.calibration;

import org.tallywall.core.play.ClaimChoice;
import org.tallywall.core.play.PassChoice;
import org.tallywall.core.play.PassStep;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.TurnChoice;
import org.tallywall.core.random.RandomStream;

/** A player whose discards are noted before they lie on the table; it plays as it always does. */
final class WatchedPlayer implements Player {
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

  private final Player player;
  private final Notes notes;

  /**
   * Watches a player.
   *
   * @param player who plays
   * @param notes who hears
   */
  WatchedPlayer(Player player, Notes notes) {
    this.player = player;
    this.notes = notes;
  }

  @Override
  public TurnChoice turn(SeatView view, RandomStream random) {
    TurnChoice choice = player.turn(view, random);
    if (choice instanceof TurnChoice.Discard discard) {
      notes.discards(view, discard.tile());
    }
    return choice;
  }

  @Override
  public boolean declares(SeatView view, RandomStream random) {
    return player.declares(view, random);
  }

  @Override
  public PassChoice pass(SeatView view, PassStep step, RandomStream random) {
    return player.pass(view, step, random);
  }

  @Override
  public boolean stops(SeatView view, RandomStream random) {
    return player.stops(view, random);
  }

  @Override
  public int courtesyNumber(SeatView view, RandomStream random) {
    return player.courtesyNumber(view, random);
  }

  @Override
  public int[] courtesyTiles(SeatView view, int number, RandomStream random) {
    return player.courtesyTiles(view, number, random);
  }

  @Override
  public ClaimChoice claim(SeatView view, RandomStream random) {
    return player.claim(view, random);
  }

  @Override
  public int aim(SeatView view) {
    return player.aim(view);
  }
}
