package org.tallywall.core.rules;

import java.util.List;

/** What the switches mean that matter in play: claims, jokers, winning, dead hands. */
final class MeaningsOfPlay {
  private MeaningsOfPlay() {}

  static List<RuleMeaning> all() {
    return List.of(
        RuleMeaning.of(
            "east.heavenly",
            "Whether East may declare a hand that is complete as dealt, before the Charleston."),
        RuleMeaning.of(
            "east.earthlyBetweenRounds",
            "Whether East may declare a complete hand between the two rounds of passes."),
        RuleMeaning.of("claims.priority", "Who gets a discard that several players claim.")
            .word(
                "MAHJONG_THEN_TURN_ORDER",
                "whoever wins with it, else whoever is first in turn after the thrower")
            .word("TURN_ORDER_ONLY", "whoever is first in turn after the thrower"),
        RuleMeaning.of(
                "claims.firstExposedKeeps",
                "Whether the player who shows tiles first keeps the discard.")
            .word("NOT_APPLICABLE", "does not come up, because all answer at once")
            .word("REACTION_TIMES", "yes, with a reaction time for each player"),
        RuleMeaning.of(
            "claims.mahjongViaExchange",
            "Whether a claim for an exposure ranks as mahjong if a joker exchange then completes"
                + " the hand."),
        RuleMeaning.of(
            "claims.losingClaimsPublic",
            "Whether everybody learns who else claimed a discard, and for what."),
        RuleMeaning.of(
                "claims.lineFit",
                "Whether an exposure must fit a line of the card, together with those made before.")
            .word("STRICT", "yes, other claims are not offered")
            .word("LENIENT", "no, a player may expose what fits no line"),
        RuleMeaning.of(
            "claims.minNaturalsFromRack",
            "How many naturals from the rack at least go with a claimed tile; the rest may be"
                + " jokers."),
        RuleMeaning.of(
                "exposure.selfDrawn",
                "Whether a player may expose a group without claiming a tile for it.")
            .word("FORBIDDEN", "no")
            .word("ALLOWED", "yes"),
        RuleMeaning.of(
                "exposure.promote",
                "Whether a player may add a tile to an exposure made in an earlier turn.")
            .word("FORBIDDEN", "no")
            .word("ALLOWED", "yes"),
        RuleMeaning.of("joker.exchange", "From whose exposures a player may exchange a joker.")
            .word("ON", "from anybody's")
            .word("OFF", "from nobody's")
            .word("OWN_ONLY", "only from the player's own")
            .word("OTHERS_ONLY", "only from those of other players"),
        RuleMeaning.of(
                "joker.exchangePerTurn", "How many jokers a player may exchange in one turn.")
            .word("UNLIMITED", "any number"),
        RuleMeaning.of(
            "joker.exchangeAfterClaim",
            "Whether jokers may be exchanged in a turn that began with a claim."),
        RuleMeaning.of("joker.discardClaimable", "Whether a discarded joker may be claimed."),
        RuleMeaning.of("win.exchangePaidAs", "How a win by a joker exchange is paid.")
            .word("SELF_DRAWN", "as self-picked")
            .word("SINGLE", "each player pays the value once"),
        RuleMeaning.of("win.multiple", "Who wins if several players declare on the same discard.")
            .word("ONE_NEAREST", "whoever is first in turn after the thrower"),
        RuleMeaning.of(
            "win.autoBestLine",
            "Whether a hand that fits several lines always counts as the one that pays most."),
        RuleMeaning.of("win.mayDecline", "Whether a player with a complete hand may play on."),
        RuleMeaning.of("dead.calls", "Who calls a hand dead that can no longer be made.")
            .word("OFF", "nobody")
            .word("AUTO", "the table, after the first discard that lets everybody see it")
            .word("STRATEGY", "whichever player decides to"),
        RuleMeaning.of("dead.threeDead", "How a game ends in which three hands are dead.")
            .word("VOID", "void, and nobody pays")
            .word("WALL", "as a wall game"));
  }
}
