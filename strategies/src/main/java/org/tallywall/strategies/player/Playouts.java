package org.tallywall.strategies.player;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.function.Supplier;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.Seats;
import org.tallywall.core.random.RandomStream;
import org.tallywall.strategies.guess.Guess;
import org.tallywall.strategies.playout.FirstAnswer;
import org.tallywall.strategies.playout.Playout;

/**
 * Compares choices by playing the rest of the game out after each, from the same guesses of the
 * hidden tiles and with the same luck.
 */
final class Playouts {
  private final Playout playout;
  private final Effort effort;

  /**
   * Playouts.
   *
   * @param hidden guesses hidden tiles
   * @param inner make the players that play on, one kind after the other
   * @param effort how much is tried
   */
  Playouts(Guess hidden, List<Supplier<Player>> inner, Effort effort) {
    playout =
        new Playout(
            hidden, inner.stream().map(kind -> Collections.nCopies(Seats.COUNT, kind)).toList());
    this.effort = effort;
  }

  /** Sets the first answer of a playout. */
  @FunctionalInterface
  interface Choose {
    /**
     * Sets it.
     *
     * @param player who gives the answer
     * @param choice which of the choices, from 0
     */
    void first(FirstAnswer player, int choice);
  }

  /**
   * The best of several choices; the first unless another is surely better.
   *
   * @param view what the seat knows
   * @param random the numbers that came with the question
   * @param choices how many choices there are
   * @param choose sets the first answer of a player to a choice
   * @return the choice, from 0
   */
  int best(SeatView view, RandomStream random, int choices, Choose choose) {
    playout.begin(view, random);
    GainsOverUsual found = new GainsOverUsual(choices);
    List<Integer> tried = new ArrayList<>();
    for (int choice = 1; choice < choices; choice++) {
      tried.add(choice);
    }
    int left = effort.playouts();
    int world = 0;
    boolean more = !tried.isEmpty();
    while (more) {
      more = effort.halving() && tried.size() > 1;
      int rounds = Math.max(1, left / ((more ? 2 : 1) * (tried.size() + 1)));
      for (int until = world + rounds; world < until; world++) {
        play(view.seat(), world, tried, choose, found);
      }
      left -= rounds * (tried.size() + 1);
      if (more) {
        keepBetterHalf(tried, found);
        more = !tried.isEmpty() && left > tried.size();
      }
    }
    return surelyBest(tried, found);
  }

  /** Plays on after the usual choice and after each that is tried, in one world. */
  private void play(int seat, int world, List<Integer> tried, Choose choose, GainsOverUsual found) {
    playout.world(world);
    int usual = points(seat, 0, choose);
    for (int choice : tried) {
      found.add(choice, points(seat, choice, choose) - usual);
    }
  }

  private int points(int seat, int choice, Choose choose) {
    return playout.after(own -> choose.first(own, choice)).points().get(seat);
  }

  /** Leaves the better half, one at least, of those that look better than the usual choice. */
  private static void keepBetterHalf(List<Integer> tried, GainsOverUsual found) {
    int most = Math.max(1, tried.size() / 2);
    tried.removeIf(choice -> found.mean(choice) <= 0);
    tried.sort(Comparator.comparingDouble(choice -> -found.mean(choice)));
    while (tried.size() > most) {
      tried.remove(tried.size() - 1);
    }
  }

  private int surelyBest(List<Integer> tried, GainsOverUsual found) {
    int best = 0;
    for (int choice : tried) {
      boolean sure = found.surelyBetter(choice, effort.surerBy());
      if (sure && (best == 0 || found.mean(choice) > found.mean(best))) {
        best = choice;
      }
    }
    return best;
  }
}
