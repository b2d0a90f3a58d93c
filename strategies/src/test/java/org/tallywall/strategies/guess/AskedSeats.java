package org.tallywall.strategies.guess;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.tallywall.core.play.ClaimChoice;
import org.tallywall.core.play.ForwardingPlayer;
import org.tallywall.core.play.PassChoice;
import org.tallywall.core.play.PassStep;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.TurnChoice;
import org.tallywall.core.random.RandomStream;
import org.tallywall.strategies.TestTable;

/** Plays games and looks at every so many-th question, in the passes and in play. */
final class AskedSeats extends ForwardingPlayer {
  private final Look look;
  private final int every;
  private final int[] asked;

  /** Looks at a question. */
  @FunctionalInterface
  interface Look {
    /** A seat is asked. */
    void at(SeatView view, RandomStream random);
  }

  private AskedSeats(Player player, Look look, int every, int[] asked) {
    super(player);
    this.look = look;
    this.every = every;
    this.asked = asked;
  }

  /** Plays deals by five tables of rules in turn. */
  static void play(int deals, Supplier<Player> player, int every, Look look) {
    int[] asked = new int[1];
    for (int deal = 0; deal < deals; deal++) {
      List<Player> four = new ArrayList<>();
      for (int seat = 0; seat < 4; seat++) {
        four.add(new AskedSeats(player.get(), look, every, asked));
      }
      TestTable.play(deal, four);
    }
  }

  private void look(SeatView view, RandomStream random) {
    if (asked[0]++ % every == 0) {
      look.at(view, random);
    }
  }

  @Override
  public PassChoice pass(SeatView view, PassStep step, RandomStream random) {
    look(view, random);
    return super.pass(view, step, random);
  }

  @Override
  public boolean stops(SeatView view, RandomStream random) {
    look(view, random);
    return super.stops(view, random);
  }

  @Override
  public int courtesyNumber(SeatView view, RandomStream random) {
    look(view, random);
    return super.courtesyNumber(view, random);
  }

  @Override
  public ClaimChoice claim(SeatView view, RandomStream random) {
    look(view, random);
    return super.claim(view, random);
  }

  @Override
  public TurnChoice turn(SeatView view, RandomStream random) {
    look(view, random);
    return super.turn(view, random);
  }
}
