package org.tallywall.core.rules;

/**
 * Payments (section 8), as multiples of the line's value.
 *
 * @param discarder what the discarder pays, 1 to 4
 * @param others what each other player pays on a discard, 0 or 1
 * @param selfDrawn what each player pays on a self-drawn win, 1 or 2
 * @param jokerless by how much a hand without jokers multiplies all, 1 or 2
 * @param excludes which hands are not multiplied for having no jokers
 * @param oneHand whether a discarder pays for all when only one line was possible
 * @param wallGame points to each live player in a wall game
 * @param diceDoubles whether all is doubled when the dice show a double
 */
public record ScoreRules(
    int discarder,
    int others,
    int selfDrawn,
    int jokerless,
    Excludes excludes,
    boolean oneHand,
    int wallGame,
    boolean diceDoubles) {
  /** Which hands are not multiplied for having no jokers. */
  public enum Excludes {
    /** Lines without a group of three or more, and those that the card excludes. */
    NO_GROUP_OF_3_PLUS,
    /** Only those that the card excludes. */
    CARD_FLAG,
    /** None. */
    NONE
  }

  static ScoreRules of(TableRules.Values values) {
    return new ScoreRules(
        values.number("score.discarder"),
        values.number("score.othersOnDiscard"),
        values.number("score.selfDrawn"),
        values.number("score.jokerless"),
        values.choice("score.jokerlessExcludes", Excludes.class),
        values.flag("score.oneHandRule"),
        values.number("score.wallGame"),
        values.flag("score.diceDoubles"));
  }
}
