package org.tallywall.core.play;

/**
 * A player that is shown the whole table, wall included, when it sits down: a yardstick for how
 * much is luck, never a way of playing. The game hands the table over; it does not come with the
 * questions, and no {@link SeatView} leads to it.
 */
public interface SeesOpenTable extends Player {
  /**
   * Shows the table.
   *
   * @param table the live table of the games that will be played at it
   */
  void sitAt(OpenTable table);
}
