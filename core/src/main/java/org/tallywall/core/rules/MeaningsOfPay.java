package org.tallywall.core.rules;

import java.util.List;

/** What the switches mean that say who pays how much, and those of the whole session. */
final class MeaningsOfPay {
  private MeaningsOfPay() {}

  static List<RuleMeaning> all() {
    return List.of(
        RuleMeaning.of(
            "score.discarder",
            "How many times the value of the hand the player pays who threw the winning tile."),
        RuleMeaning.of(
            "score.othersOnDiscard",
            "How many times the value the other two losers pay for a win on a discard."),
        RuleMeaning.of(
            "score.selfDrawn", "How many times the value each player pays for a self-picked win."),
        RuleMeaning.of(
            "score.jokerless", "How many times as much is paid for a hand without jokers."),
        RuleMeaning.of(
                "score.jokerlessExcludes", "Which hands earn nothing extra for having no jokers.")
            .word(
                "NO_GROUP_OF_3_PLUS",
                "those of singles and pairs alone, and lines that the card excludes")
            .word("CARD_FLAG", "only lines that the card excludes")
            .word("NONE", "none"),
        RuleMeaning.of(
            "score.oneHandRule",
            "Whether the thrower pays for all if the winner's exposures left only one line"
                + " possible."),
        RuleMeaning.of(
            "score.wallGame",
            "How many points each player whose hand is not dead gets in a wall game."),
        RuleMeaning.of(
            "score.kitty",
            "How many points each player puts into a pot after a wall game, for the next winner."),
        RuleMeaning.of(
            "score.doubleAfterWall", "Whether the game after a wall game is paid double."),
        RuleMeaning.of(
            "score.diceDoubles", "Whether everything is paid double if East's dice show a double."),
        RuleMeaning.of("score.pieLimit", "How many points at most a player can lose in a session.")
            .word("NONE", "any number"),
        RuleMeaning.of("players", "How many players sit at the table."));
  }
}
