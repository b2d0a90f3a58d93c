package org.tallywall.experiments.reading;

/**
 * How safe a tile is from one seat.
 *
 * @param fromWin why she cannot finish a hand with it, not even by a joker exchange after a claim
 * @param fromClaim why she cannot claim it for an exposure
 * @param wentBy whether her rack has not changed since she threw one or let one go by; evidence
 *     only
 * @param threw whether she threw one herself at any time; evidence only
 */
public record Shelter(Proof fromWin, Proof fromClaim, boolean wentBy, boolean threw) {
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
