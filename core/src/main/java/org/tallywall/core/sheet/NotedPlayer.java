package org.tallywall.core.sheet;

import org.tallywall.core.play.ClaimChoice;
import org.tallywall.core.play.ForwardingPlayer;
import org.tallywall.core.play.PassChoice;
import org.tallywall.core.play.PassStep;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.TurnChoice;
import org.tallywall.core.random.RandomStream;

/**
 * A player whose every answer is noted with the question that it answers. Whether East declares a
 * hand that is complete before play is no question of a position sheet and is not noted.
 */
public final class NotedPlayer extends ForwardingPlayer {
  private final Listener listener;

  /**
   * Stands in front of a player.
   *
   * @param player who answers
   * @param listener hears every answer
   */
  public NotedPlayer(Player player, Listener listener) {
    super(player);
    this.listener = listener;
  }

  /** Hears each answer before the game goes on. */
  @FunctionalInterface
  public interface Listener {
    /**
     * A player answered.
     *
     * @param view what it knows; the game is still as it was when it was asked
     * @param moment the question
     * @param move the answer
     */
    void answered(SeatView view, Moment moment, Move move);
  }

  @Override
  public PassChoice pass(SeatView view, PassStep step, RandomStream random) {
    PassChoice choice = behind().pass(view, step, random);
    listener.answered(view, new Moment.Pass(step), Move.of(choice));
    return choice;
  }

  @Override
  public boolean stops(SeatView view, RandomStream random) {
    boolean yes = behind().stops(view, random);
    listener.answered(view, new Moment.Stop(), new Move.Stop(yes));
    return yes;
  }

  @Override
  public int courtesyNumber(SeatView view, RandomStream random) {
    int number = behind().courtesyNumber(view, random);
    listener.answered(view, new Moment.CourtesyAsk(), new Move.Courtesy(number));
    return number;
  }

  @Override
  public int[] courtesyTiles(SeatView view, int number, RandomStream random) {
    int[] tiles = behind().courtesyTiles(view, number, random);
    listener.answered(view, new Moment.CourtesyGive(number), Move.give(tiles));
    return tiles;
  }

  @Override
  public ClaimChoice claim(SeatView view, RandomStream random) {
    ClaimChoice choice = behind().claim(view, random);
    Moment offer = new Moment.Offer(view.offered(), view.offeredBy());
    listener.answered(view, offer, Move.of(choice));
    return choice;
  }

  @Override
  public TurnChoice turn(SeatView view, RandomStream random) {
    TurnChoice choice = behind().turn(view, random);
    Moment turn = new Moment.Turn(view.drawn(), view.claimedThisTurn());
    listener.answered(view, turn, Move.of(view, choice));
    return choice;
  }
}
