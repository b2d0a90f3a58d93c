package org.tallywall.strategies.habit;

import org.tallywall.core.sheet.Move;

/**
 * Something that a player could do, as it judges it itself; nothing of it was measured.
 *
 * @param move what it could do; in a pass one tile only
 * @param worth what the rack would be worth, as a share of what it is worth as it is: below 1 it
 *     loses, above 1 it gains
 * @param risk the chance that somebody wins on the tile thrown, 0 to 1, those of the opponents
 *     added up; {@link #UNREAD} for a player that reads nobody, and for what is no discard
 * @param objection what keeps the player from it
 */
public record Weighed(Move move, double worth, double risk, Objection objection) {
  /** The risk of a choice of which none is known. */
  public static final double UNREAD = -1;

  /**
   * Whether the player knows what it risks.
   *
   * @return false for a player that reads nobody
   */
  public boolean read() {
    return risk >= 0;
  }
}
