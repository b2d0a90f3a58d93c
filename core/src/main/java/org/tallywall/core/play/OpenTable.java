package org.tallywall.core.play;

/** The whole table laid open, for whoever counts, records or checks games. Players never see it. */
public interface OpenTable {
  /**
   * The card and the rules.
   *
   * @return what lies on the table
   */
  TableSetup setup();

  /**
   * The deal that is being played.
   *
   * @return the wall and the dice
   */
  Deal deal();

  /**
   * What a seat knows, its rack included.
   *
   * @param seat 0 to 3
   * @return the seat's live view
   */
  SeatView view(int seat);

  /**
   * How many tiles are left in the wall.
   *
   * @return 0 to 99
   */
  int wallLeft();

  /**
   * The kinds on which a seat may declare mahjong if another player throws one now, by the same
   * rules as the window that follows a discard: no seat whose hand is dead, no mahjong on a discard
   * where the wall is cold, no joker unless the rules let it be claimed. What would complete a hand
   * after a joker exchange only does not count, as by rule 3.5.5.
   *
   * @param seat 0 to 3
   * @return a mask of kinds; bit 0 is kind 0. None for a seat that holds 14 tiles, or 12 or fewer
   */
  long winsOn(int seat);
}
