package org.tallywall.core.rules;

/**
 * Jokers (section 4).
 *
 * @param own whether a player may redeem from own exposures
 * @param others whether a player may redeem from exposures of others
 * @param perTurn most exchanges in one turn
 * @param afterClaim whether one may exchange in a turn that began with a claim
 * @param discardClaimable whether a discarded joker may be claimed
 */
public record JokerRules(
    boolean own, boolean others, int perTurn, boolean afterClaim, boolean discardClaimable) {
  static JokerRules of(TableRules.Values values) {
    boolean on = values.is("joker.exchange", "ON");
    return new JokerRules(
        on || values.is("joker.exchange", "OWN_ONLY"),
        on || values.is("joker.exchange", "OTHERS_ONLY"),
        values.numberOr("joker.exchangePerTurn", "UNLIMITED", Integer.MAX_VALUE),
        values.flag("joker.exchangeAfterClaim"),
        values.flag("joker.discardClaimable"));
  }
}
