package org.tallywall.experiments.school;

/**
 * A decision that was looked at. What the choice made loses is measured in worlds that had no part
 * in finding the other choice.
 *
 * @param number its number, from 0
 * @param kind its kind
 * @param deal the deal of its game
 * @param seat who decided, 0 to 3
 * @param wall tiles left in the wall
 * @param moment the question in the words of a sheet
 * @param made the choice made
 * @param choices how many choices were looked at; 0 where the position could not be played on from
 * @param other the choice that did best of the others, or an empty text where there is none
 * @param first how the two met last before it was decided whether the other is better
 * @param second how they met once more in fresh worlds; never where the other was not ahead
 */
public record Judged(
    int number,
    Kind kind,
    int deal,
    int seat,
    int wall,
    String moment,
    String made,
    int choices,
    String other,
    Met first,
    Met second) {

  /**
   * Whether it counts.
   *
   * @return false where the position could not be played on from
   */
  public boolean counts() {
    return choices > 0;
  }

  /**
   * Whether another choice was found to be ahead, and measured in fresh worlds.
   *
   * @return false where none was
   */
  public boolean differs() {
    return second.worlds() > 0;
  }
}
