package org.tallywall.core.rules;

/**
 * Claiming a discard (3.3 to 3.5).
 *
 * @param mahjongFirst whether a mahjong claim beats every exposure claim
 * @param mahjongViaExchange whether an exposure claim that wins by an exchange ranks as mahjong
 * @param losingPublic whether players learn of claims that lost
 * @param strictFit whether an exposure must leave a line possible
 * @param naturalsFromRack least naturals that must come from the rack, 0 or 1
 */
public record ClaimRules(
    boolean mahjongFirst,
    boolean mahjongViaExchange,
    boolean losingPublic,
    boolean strictFit,
    int naturalsFromRack) {
  static ClaimRules of(TableRules.Values values) {
    return new ClaimRules(
        values.is("claims.priority", "MAHJONG_THEN_TURN_ORDER"),
        values.flag("claims.mahjongViaExchange"),
        values.flag("claims.losingClaimsPublic"),
        values.is("claims.lineFit", "STRICT"),
        values.number("claims.minNaturalsFromRack"));
  }
}
