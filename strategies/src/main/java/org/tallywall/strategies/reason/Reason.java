package org.tallywall.strategies.reason;

import java.util.List;
import org.tallywall.strategies.habit.Objection;
import org.tallywall.strategies.habit.Stance;

/**
 * A reason for a choice, with its numbers. This is the whole list. Distances count the hands that
 * can still be made; seats are 0 to 3, tiles are kinds, lines are places on the card.
 */
public sealed interface Reason {
  /**
   * What the player heads for.
   *
   * @param line the line
   * @param hand the hand of it that the player has in mind, its place among all of the card
   * @param away how far that hand is from the tiles as they are, 0 to 14; what is held of it is 14
   *     less that
   * @param missing the kinds of tiles that bring the rack closer to the hand, as in {@link
   *     Missing#tiles}
   * @param filled how many of them jokers on the rack stand for
   */
  record Aim(int line, int hand, int away, List<Integer> missing, int filled) implements Reason {
    /**
     * Copies the list.
     *
     * @param line the line
     * @param hand the hand
     * @param away how far it is
     * @param missing what it is missing
     * @param filled how many of them jokers stand for
     */
    public Aim {
      missing = List.copyOf(missing);
    }
  }

  /**
   * Why a tile goes rather than the next that the player would throw.
   *
   * @param tile the tile that goes
   * @param other the next one
   * @param cause what decided
   */
  record Rather(int tile, int other, Cause cause) implements Reason {}

  /** What decides between two tiles. */
  sealed interface Cause {
    /**
     * A line in mind needs the other tile, and none the one that goes.
     *
     * @param line the line; of several the one that counts most
     */
    record Needed(int line) implements Cause {}

    /**
     * Both are needed, but the player judges that more is left without the one that goes.
     *
     * @param kept the share of the rack's worth that is left without it, 0 to 1
     * @param otherKept the same without the other
     */
    record KeepsMore(double kept, double otherKept) implements Cause {}

    /**
     * The one that goes is less likely to be won on, by the player's judgment.
     *
     * @param risk the chance that somebody wins on it, 0 to 1
     * @param otherRisk the same of the other
     */
    record Safer(double risk, double otherRisk) implements Cause {}

    /**
     * No hand in mind needs either, and of the one that goes more lie face up.
     *
     * @param faceUp how many of it lie face up
     * @param otherFaceUp how many of the other
     */
    record MoreOut(int faceUp, int otherFaceUp) implements Cause {}

    /** No hand in mind needs either; one had to be first. */
    record Either() implements Cause {}

    /** Something that this judgment does not show: one of the player's habits, or a trial. */
    record Otherwise() implements Cause {}
  }

  /**
   * Nobody who shows an exposure can want the tile.
   *
   * @param showing how many other players show one, 1 to 3
   */
  record NobodyWants(int showing) implements Reason {}

  /**
   * A claim that would have brought a hand nearer was left, and why.
   *
   * @param size tiles of the exposure
   * @param jokers jokers in it
   * @param objection why it was left; {@link Objection#NONE} where it was overlooked
   * @param times how many times as much the rack would be worth with it, by the player's judgment
   * @param lines how many lines can still be made as it is
   * @param linesLeft how many could be made with it
   */
  record LeftClaim(
      int size, int jokers, Objection objection, double times, int lines, int linesLeft)
      implements Reason {}

  /**
   * The tiles make a hand.
   *
   * @param line the line, of several the dearest
   * @param value its printed value in points
   */
  record Complete(int line, int value) implements Reason {}

  /**
   * What goes is not needed: the rack is as near without it.
   *
   * @param away how far the nearest hand is, with and without
   */
  record Unneeded(int away) implements Reason {}

  /**
   * What goes is needed, but something has to go.
   *
   * @param from how far the nearest hand was
   * @param to how far it is afterwards
   */
  record Costs(int from, int to) implements Reason {}

  /**
   * The rack comes nearer to a hand.
   *
   * @param from how far the nearest hand was
   * @param to how far it is afterwards
   */
  record Nearer(int from, int to) implements Reason {}

  /**
   * No claim of the tile on offer brings a hand nearer.
   *
   * @param without how far the nearest hand is as it is
   * @param with how far it would be at best with a claim
   */
  record NothingNearer(int without, int with) implements Reason {}

  /**
   * A claim would have brought a hand nearer and was left nevertheless.
   *
   * @param without how far the nearest hand is as it is
   * @param with how far it would be at best with a claim
   */
  record WouldBring(int without, int with) implements Reason {}

  /**
   * The line aimed at must stay concealed.
   *
   * @param line the line
   */
  record Concealed(int line) implements Reason {}

  /**
   * How many tiles stand beside the nearest hand of the line aimed at. A player may keep some of
   * them for another hand.
   *
   * @param tiles 0 to 14
   */
  record ToSpare(int tiles) implements Reason {}

  /**
   * Tiles that go on unseen, since more of one's own cannot be spared.
   *
   * @param tiles 1 to 3
   */
  record Blind(int tiles) implements Reason {}

  /**
   * Jokers that stay on the rack.
   *
   * @param jokers 0 or more
   */
  record JokersKept(int jokers) implements Reason {}

  /**
   * The tile buys a joker.
   *
   * @param tile the natural given
   * @param owner whose exposure it is
   * @param jokers how many jokers the rack holds afterwards
   */
  record Redeems(int tile, int owner, int jokers) implements Reason {}

  /**
   * A hand that wants the tile, and looks as near as any, cannot be made any more.
   *
   * @param line its line
   * @param tile the tile of which too few are left
   * @param inView how many of that tile are face up or on the rack
   */
  record Dead(int line, int tile, int inView) implements Reason {}

  /**
   * An opponent with two exposures or more can want the tile.
   *
   * @param seat her seat
   * @param lines how many lines are left to her
   */
  record HerTile(int seat, int lines) implements Reason {}

  /**
   * An opponent with two exposures or more cannot want the tile.
   *
   * @param seat her seat
   * @param lines how many lines are left to her
   */
  record NotHers(int seat, int lines) implements Reason {}

  /**
   * All others of the kind lie face up.
   *
   * @param tile the tile
   * @param faceUp how many others lie face up
   */
  record LastOfItsKind(int tile, int faceUp) implements Reason {}

  /**
   * The same tile was thrown last, and nobody claimed it.
   *
   * @param tile the tile
   */
  record JustWentRound(int tile) implements Reason {}

  /** Nobody can take a joker. */
  record NobodyTakesIt() implements Reason {}

  /**
   * The step of defense in which the player is.
   *
   * @param stance the step
   * @param away how far the nearest hand is
   * @param draws own draws left: the tiles in the wall divided by four, rounded down
   * @param exposures the most exposures on one other rack
   */
  record Step(Stance stance, int away, int draws, int exposures) implements Reason {}
}
