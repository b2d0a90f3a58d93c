package org.tallywall.experiments.review;

/**
 * What came of one choice. Shares and points are those of the seat that chose. The ranges of a
 * choice hold each by itself at {@link Review#confidence()}; those of {@code toBest} and {@code
 * cost} hold for all choices together. All hold at every look.
 *
 * @param choice the choice
 * @param games games played after it
 * @param points points per game
 * @param wins share of games won
 * @param throwsIt share of games in which the seat threw the tile that somebody won on
 * @param wallGames share of games that nobody won
 * @param toBest points per game more than after the choice that did best, in the same worlds; below
 *     0 it is behind. {@link Ranged#ZERO} for that one itself
 * @param cost what it costs to take this and not the best choice, whichever that is, in points per
 *     game: never below 0, and 0 to something where they cannot be told apart
 * @param verdict what that comes to
 * @param line the line most often won with, by its place on the card, or {@link #NO_LINE}
 * @param wonWith games won with it
 * @param droppedOut whether it was tried no further when it was clearly behind
 */
public record ChoiceResult(
    Considered choice,
    long games,
    Ranged points,
    Ranged wins,
    Ranged throwsIt,
    Ranged wallGames,
    Ranged toBest,
    Ranged cost,
    Verdict verdict,
    int line,
    long wonWith,
    boolean droppedOut) {
  /** No game was won. */
  public static final int NO_LINE = -1;
}
