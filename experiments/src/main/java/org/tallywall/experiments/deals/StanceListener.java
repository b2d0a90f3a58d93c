package org.tallywall.experiments.deals;

import java.util.Arrays;
import java.util.List;
import org.tallywall.core.play.GameListener;
import org.tallywall.core.play.OpenTable;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.Seats;
import org.tallywall.strategies.habit.Defending;
import org.tallywall.strategies.habit.Stance;

/** Notes when each player came to each step of its defence for the first time in a game. */
public final class StanceListener implements GameListener {
  /** The step was not reached. */
  public static final int NEVER = -1;

  private static final int STEPS = Stance.values().length;

  private final int[][] firstWall = new int[Seats.COUNT][STEPS];
  private final Defending[] defenders = new Defending[Seats.COUNT];
  private OpenTable table;

  /** Notes of a game that has not begun. */
  public StanceListener() {}

  /**
   * Four players sit down.
   *
   * @param players East first
   */
  public void sit(List<? extends Player> players) {
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      defenders[seat] = players.get(seat) instanceof Defending defending ? defending : null;
    }
  }

  @Override
  public void began(OpenTable open) {
    table = open;
    for (int[] seat : firstWall) {
      Arrays.fill(seat, NEVER);
    }
  }

  @Override
  public void discarded(int seat, int tile) {
    if (defenders[seat] != null) {
      int step = defenders[seat].lastStance().ordinal();
      if (firstWall[seat][step] == NEVER) {
        firstWall[seat][step] = table.wallLeft();
      }
    }
  }

  /**
   * Tiles left in the wall when a seat first came to a step.
   *
   * @param seat the seat
   * @param step the step
   * @return 0 or more, or {@link #NEVER}
   */
  public int firstWall(int seat, Stance step) {
    return firstWall[seat][step.ordinal()];
  }
}
