package org.tallywall.experiments.deals;

import java.util.Arrays;
import java.util.List;
import org.tallywall.core.play.GameListener;
import org.tallywall.core.play.OpenTable;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.Seats;
import org.tallywall.strategies.habit.Defending;
import org.tallywall.strategies.habit.Stance;

/**
 * Notes at which event of a game each player came to each step of its defense for the first time:
 * the first discard that it chose in that step.
 */
public final class StanceListener implements GameListener {
  /** The step was not reached. */
  public static final int NEVER = -1;

  private static final int STEPS = Stance.values().length;

  private final CourseListener course;
  private final int[][] first = new int[Seats.COUNT][STEPS];
  private final Defending[] defenders = new Defending[Seats.COUNT];

  /**
   * A listener beside another.
   *
   * @param course hears the same games, and every event before this one does
   */
  StanceListener(CourseListener course) {
    this.course = course;
  }

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
    for (int[] seat : first) {
      Arrays.fill(seat, NEVER);
    }
  }

  @Override
  public void discarded(int seat, int tile) {
    if (defenders[seat] != null) {
      int step = defenders[seat].lastStance().ordinal();
      if (first[seat][step] == NEVER) {
        first[seat][step] = course.lastEvent();
      }
    }
  }

  /**
   * When a seat first came to a step.
   *
   * @param seat the seat
   * @param step the step
   * @return the event, from 0, or {@link #NEVER}
   */
  public int first(int seat, Stance step) {
    return first[seat][step.ordinal()];
  }
}
