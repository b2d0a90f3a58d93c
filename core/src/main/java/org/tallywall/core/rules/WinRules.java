package org.tallywall.core.rules;

/**
 * Declaring mahjong (2.6, 5.2, 5.3).
 *
 * @param heavenly whether East may declare right after the deal
 * @param earthlyBetween whether East may declare between the two rounds of passes
 * @param exchangeSelfDrawn whether a win by exchange is paid as self-drawn, or singly by each
 * @param bestLine whether the best-paying line counts, or the one that the winner names
 * @param mayDecline whether a player may play on with a complete hand
 */
public record WinRules(
    boolean heavenly,
    boolean earthlyBetween,
    boolean exchangeSelfDrawn,
    boolean bestLine,
    boolean mayDecline) {
  static WinRules of(TableRules.Values values) {
    return new WinRules(
        values.flag("east.heavenly"),
        values.flag("east.earthlyBetweenRounds"),
        values.is("win.exchangePaidAs", "SELF_DRAWN"),
        values.flag("win.autoBestLine"),
        values.flag("win.mayDecline"));
  }
}
