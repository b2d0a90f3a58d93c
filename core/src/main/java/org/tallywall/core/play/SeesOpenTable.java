package org.tallywall.core.play;

/**
 * A player that is shown the whole table, wall included, before each game: a yardstick for how much
 * is luck, never a way of playing. The game hands the table over; it does not come with the
 * questions, and no {@link SeatView} leads to it.
 */
public interface SeesOpenTable extends Player {
  /**
   * Shows the table, before each game.
   *
   * @param table the live table of the game that begins
   */
  void sitAt(OpenTable table);
}
