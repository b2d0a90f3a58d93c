package org.tallywall.strategies.player;

import java.util.Arrays;
import org.tallywall.core.play.OpenTable;
import org.tallywall.core.play.Position;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.Seats;
import org.tallywall.strategies.guess.Guess;
import org.tallywall.strategies.habit.KnowsHabit;
import org.tallywall.strategies.hand.Foresight;
import org.tallywall.strategies.hand.RackJudge;
import org.tallywall.strategies.read.Revealed;
import org.tallywall.strategies.setting.SettingValues;

/**
 * What a yardstick knows of the table that lies open before it, and nothing beyond what its
 * settings name. How a discard wins is asked of the game itself ({@link OpenTable#winsOn}). Racks
 * and draws are known in play only, not in the passes, where tiles still go round.
 */
final class Knowledge implements Foresight, Revealed {
  private static final RackJudge.KindTest ANY = kind -> true;

  private final KnowsHabit habit;
  private OpenTable table;
  private int seat;
  private boolean inPlay;

  /**
   * Knowledge of no table yet.
   *
   * @param habit what is known
   */
  Knowledge(KnowsHabit habit) {
    this.habit = habit;
  }

  /**
   * What a player knows that is to be made of some settings, but is never shown a table.
   *
   * @param values its settings
   * @return nothing
   * @throws IllegalArgumentException if it is to know something; {@link KnowingPlayer} makes it
   */
  static Knowledge none(SettingValues values) {
    if (KnowsHabit.of(values).any()) {
      throw new IllegalArgumentException("who is to know something must be shown the table");
    }
    return new Knowledge(KnowsHabit.NOTHING);
  }

  /**
   * Takes up a table.
   *
   * @param open the live table of the game that begins
   */
  void sitAt(OpenTable open) {
    table = open;
  }

  /** Takes up a question of the passes. */
  void inPasses() {
    inPlay = false;
  }

  /**
   * Takes up a question in play.
   *
   * @param view what the seat knows
   */
  void inPlay(SeatView view) {
    seat = view.seat();
    inPlay = true;
  }

  /**
   * How hidden tiles are guessed, what is known of them put where it lies.
   *
   * @param guess what guesses the rest
   * @return the guess itself where nothing of them is known
   */
  Guess guess(Guess guess) {
    return habit.racks() || habit.nextDraws() > 0 ? new KnownTiles(this, guess) : guess;
  }

  /**
   * Puts the racks of the others where they lie, if they are known.
   *
   * @param into takes them
   * @return whether they are known
   */
  boolean layRacks(Position into) {
    for (int other = 0; habit.racks() && other < Seats.COUNT; other++) {
      if (other != seat) {
        table.view(other).copyRack(into.rack(other));
      }
    }
    return habit.racks();
  }

  /**
   * Whether anything is known.
   *
   * @return false for a fair player
   */
  boolean any() {
    return habit.any();
  }

  /**
   * Which kinds may be thrown: where the winning tile is never thrown, those on which nobody who
   * shows enough exposures would win.
   *
   * @param view what the seat knows, in its turn
   * @param away how many tiles away its rack is
   * @return a test that holds until the next question
   */
  RackJudge.KindTest thrown(SeatView view, int away) {
    if (!habit.neverTheWinningTile() || away < habit.away()) {
      return ANY;
    }
    long wins = 0;
    for (int other = 0; other < Seats.COUNT; other++) {
      if (other != view.seat() && view.exposures(other).size() >= habit.exposures()) {
        wins |= table.winsOn(other);
      }
    }
    long kept = wins;
    return kind -> (kept >>> kind & 1) == 0;
  }

  @Override
  public boolean readiness() {
    return habit.whoIsOneAway();
  }

  @Override
  public boolean waits() {
    return habit.knowsWaits();
  }

  @Override
  public boolean ready(int other) {
    return other != seat && table.winsOn(other) != 0;
  }

  @Override
  public boolean winsOn(int other, int kind) {
    return other != seat && (table.winsOn(other) >>> kind & 1) != 0;
  }

  @Override
  public int[] draws(SeatView view, boolean throwsFirst) {
    if (habit.nextDraws() == 0 || !inPlay) {
      return Foresight.NONE;
    }
    int from = table.deal().size() - table.wallLeft();
    int drawer = throwsFirst ? view.seat() : view.offeredBy();
    int[] draws = new int[habit.nextDraws()];
    int found = 0;
    for (int at = 0; at < table.wallLeft() && found < draws.length; at++) {
      drawer = nextLive(view, drawer);
      if (drawer == view.seat()) {
        draws[found++] = table.deal().tile(from + at);
      }
    }
    return Arrays.copyOf(draws, found);
  }

  private static int nextLive(SeatView view, int seat) {
    int next = Seats.right(seat);
    while (view.dead(next)) {
      next = Seats.right(next);
    }
    return next;
  }

  @Override
  public int elsewhere(int kind) {
    int held = 0;
    for (int other = 0; habit.racks() && inPlay && other < Seats.COUNT; other++) {
      held += other == seat ? 0 : table.view(other).held(kind);
    }
    return held;
  }
}
