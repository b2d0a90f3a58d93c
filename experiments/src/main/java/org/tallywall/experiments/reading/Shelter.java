package org.tallywall.experiments.reading;

import java.util.List;

/**
 * How safe a tile is from one seat.
 *
 * @param fromWin why she cannot finish a hand with it, not even by a joker exchange after a claim
 * @param fromClaim why she cannot claim it for an exposure
 * @param outOf where {@code fromWin} is {@link Proof#OUT}: the kinds of which too few are out of
 *     view for the hands that need the tile; empty where no few kinds say it
 * @param wentBy whether her rack has not changed since she threw one or let one go by; evidence
 *     only
 * @param threw whether she threw one herself at any time; evidence only
 */
public record Shelter(
    Proof fromWin, Proof fromClaim, List<Integer> outOf, boolean wentBy, boolean threw) {
  /**
   * Copies the list.
   *
   * @param fromWin why she cannot finish a hand with it
   * @param fromClaim why she cannot claim it for an exposure
   * @param outOf kinds of which too few are out of view
   * @param wentBy whether her rack has not changed since one went by
   * @param threw whether she threw one
   */
  public Shelter {
    outOf = List.copyOf(outOf);
  }

  /**
   * Whether it is a fact that she cannot win on it.
   *
   * @return true if so
   */
  public boolean cannotWin() {
    return fromWin != Proof.NONE;
  }

  /**
   * Whether it is a fact that she cannot take it at all.
   *
   * @return true if so
   */
  public boolean cannotTake() {
    return cannotWin() && fromClaim != Proof.NONE;
  }
}
