package org.tallywall.experiments.run;

import java.util.Arrays;
import java.util.List;
import org.tallywall.core.play.GameListener;
import org.tallywall.core.play.OpenTable;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.Seats;
import org.tallywall.strategies.habit.Defending;
import org.tallywall.strategies.habit.Stance;

/** Notes when each player came to each step of its defence for the first time in a game. */
final class StanceListener implements GameListener {
  /** The step was not reached. */
  static final int NEVER = -1;

  private static final int STEPS = Stance.values().length;

  private final int[][] firstWall = new int[Seats.COUNT][STEPS];
  private final Defending[] defenders = new Defending[Seats.COUNT];
  private OpenTable table;

  /** Four players sit down. */
  void sit(List<? extends Player> players) {
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

  /** Tiles left in the wall when a seat first came to a step, or {@link #NEVER}. */
  int firstWall(int seat, Stance step) {
    return firstWall[seat][step.ordinal()];
  }
}
