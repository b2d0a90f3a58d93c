package org.tallywall.core.rules;

import java.util.List;

/** What the switches mean that matter before the first discard: tiles, wall, passes. */
final class MeaningsBeforePlay {
  private MeaningsBeforePlay() {}

  static List<RuleMeaning> all() {
    return List.of(
        RuleMeaning.of("tiles.flowers", "How many flowers are in the set."),
        RuleMeaning.of("tiles.jokers", "How many jokers are in the set."),
        RuleMeaning.of(
            "tiles.blanks",
            "How many blank tiles are in the set, which players trade for discards on the table."),
        RuleMeaning.of("deal.rotateEast", "Who is East in the next game.")
            .word("RIGHT_EVERY_GAME", "the player to the right, after every game")
            .word("KEEP_IF_WINS", "East again after winning, else the player to the right"),
        RuleMeaning.of(
                "wall.lastSegment",
                "How many tiles make up the last wall, which matters only if the wall is hot or"
                    + " cold.")
            .word("DICE", "two for each point of East's dice")
            .word("NONE", "none, so that no tile is hot and no claim is forbidden"),
        RuleMeaning.of(
                "wall.hot",
                "Whether a player who throws a winning tile during the last wall pays for the whole"
                    + " table.")
            .word("OFF", "no, the thrower pays as usual")
            .word(
                "PAY_ALL_IF_UNACCOUNTED",
                "yes, unless the other tiles of that kind were on the table or in the thrower's"
                    + " rack"),
        RuleMeaning.of(
            "wall.hotFlowerNeeds",
            "How many other flowers must be on the table or in the thrower's rack, so that a"
                + " flower is not hot."),
        RuleMeaning.of("wall.cold", "Which claims are forbidden during the last wall.")
            .word("OFF", "none")
            .word("NO_MAHJONG_CLAIM", "whoever would win on a discard may not claim it")
            .word("NO_CLAIM", "nobody may claim a discard"),
        RuleMeaning.of(
                "wall.finalDiscard.claim",
                "What a discard may be claimed for when no tile is left in the wall.")
            .word("ANY", "mahjong or an exposure")
            .word("MAHJONG_ONLY", "mahjong only")
            .word("NONE", "nothing"),
        RuleMeaning.of("charleston.first", "Whether the first round of passes is played.")
            .word("COMPULSORY", "yes: right, across and left")
            .word("NONE", "no, and no second round either"),
        RuleMeaning.of("charleston.second", "Whether the second round of passes is played.")
            .word("ANY_PLAYER_MAY_STOP", "yes, unless a player stops it")
            .word("COMPULSORY", "always")
            .word("NONE", "never")
            .word("MAJORITY", "yes, unless at least three players stop it"),
        RuleMeaning.of(
                "charleston.stopTiming", "When players say whether they stop the second round.")
            .word("AFTER_SEEING_FIRST_LEFT", "with the tiles of the third pass in hand")
            .word("BEFORE_SEEING_FIRST_LEFT", "before they look at the tiles of the third pass"),
        RuleMeaning.of("charleston.stopReveal", "Whose stop the table hears of.")
            .word("FIRST_STOPPER", "of those who stopped, the first in turn order from East")
            .word("ALL", "everybody who stopped")
            .word("NOBODY", "nobody's"),
        RuleMeaning.of("charleston.blind", "In which passes a player may pass tiles on unseen.")
            .word("FIRST_LEFT_AND_LAST_RIGHT", "in the last pass of each round")
            .word("NONE", "in none")
            .word("ALL_PASSES", "in all six"),
        RuleMeaning.of(
            "charleston.blindMax", "How many tiles at most a player may pass on unseen in a pass."),
        RuleMeaning.of("charleston.courtesy", "Whether there is a courtesy pass.")
            .word("LOWER_NUMBER", "yes, with as many tiles as the player who wants fewer asks for")
            .word("NONE", "no"),
        RuleMeaning.of("charleston.courtesyReveal", "Which courtesy numbers the whole table hears.")
            .word("BOTH_NUMBERS", "those of both players across from each other")
            .word("LOWER_ONLY", "only the lower one"),
        RuleMeaning.of(
            "charleston.jokersMayPass", "Whether jokers may be passed, against the usual rules."),
        RuleMeaning.of(
                "charleston.pool",
                "Whether unwanted tiles may be traded in a common pool after the Charleston.")
            .word("OFF", "no")
            .word("MUSH", "yes, up to three, for as many from the mixed pool"));
  }
}
