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
}
