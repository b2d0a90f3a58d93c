package org.tallywall.strategies.hand;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.Seats;

/**
 * How likely a seat wins the game before anybody else does, by what its rack is worth to its judge,
 * the tiles left in the wall and what all have laid open: a logit model (Cox, Journal of the Royal
 * Statistical Society B 20, 1958, 215-242, from memory). The table {@code win-hope.txt} says by
 * which command and from which games it was made; none of them was played on a card of this
 * project.
 *
 * <p>What a rack is worth after a discard is all that differs from tile to tile, so one look serves
 * a whole turn.
 */
public final class WinHope {
  private static final String FILE = "win-hope.txt";
  private static final int[] WALLS = {0, 5, 10, 20, 35, 50, 70, 90};
  private static final int MOST_SHOWN = 3;

  /** Less than that much is worth nothing. */
  private static final double NOTHING = 1e-9;

  private static final List<String> NAMES = allNames();

  /** Read once; never changed. */
  private static final double[] FITTED = NamedWeights.read(WinHope.class, FILE, NAMES);

  private final double[] weights;
  private double fixed;
  private double slope;

  /** By what was fitted to simulated games. */
  public WinHope() {
    this(FITTED);
  }

  /**
   * By given weights.
   *
   * @param weights one for each of {@link #names()}
   */
  public WinHope(double[] weights) {
    this.weights = weights.clone();
  }

  private static List<String> allNames() {
    List<String> names = new ArrayList<>();
    for (int tiles : WALLS) {
      names.add("wall " + tiles);
    }
    for (int tiles : WALLS) {
      names.add("worth, wall " + tiles);
    }
    names.add("worth squared");
    for (int shown = 1; shown <= MOST_SHOWN; shown++) {
      names.add("another shows " + shown);
    }
    names.add("exposures of the others");
    names.add("exposures of the others, by the wall");
    for (int shown = 1; shown <= MOST_SHOWN; shown++) {
      names.add("shows " + shown);
    }
    return List.copyOf(names);
  }

  /**
   * What the model looks at.
   *
   * @return names, in order
   */
  public static List<String> names() {
    return NAMES;
  }

  /**
   * Looks at the table.
   *
   * @param view what the seat knows
   */
  public void look(SeatView view) {
    double[] seen = new double[NAMES.size()];
    table(view, seen);
    fixed = 0;
    slope = 0;
    for (int at = 0; at < WALLS.length; at++) {
      fixed += weights[at] * seen[at];
      slope += weights[WALLS.length + at] * seen[at];
    }
    for (int at = 2 * WALLS.length + 1; at < seen.length; at++) {
      fixed += weights[at] * seen[at];
    }
  }

  /**
   * The chance to win.
   *
   * @param worth what the rack is worth to the judge, with 13 tiles
   * @return 0 to 1
   */
  public double chance(double worth) {
    double log = log(worth);
    double sum = fixed + slope * log + weights[2 * WALLS.length] * log * log;
    return 1 / (1 + StrictMath.exp(-sum));
  }

  /**
   * The numbers that the model looks at.
   *
   * @param view what the seat knows
   * @param worth what the rack is worth to the judge, with 13 tiles
   * @return one for each of {@link #names()}
   */
  public static double[] seen(SeatView view, double worth) {
    double[] seen = new double[NAMES.size()];
    table(view, seen);
    double log = log(worth);
    for (int at = 0; at < WALLS.length; at++) {
      seen[WALLS.length + at] = seen[at] * log;
    }
    seen[2 * WALLS.length] = log * log;
    return seen;
  }

  private static double log(double worth) {
    return StrictMath.log(Math.max(NOTHING, worth));
  }

  private static void table(SeatView view, double[] seen) {
    int last = WALLS.length - 1;
    int left = Math.min(WALLS[last], view.wallLeft());
    int at = 0;
    while (at < last - 1 && left > WALLS[at + 1]) {
      at++;
    }
    double part = (left - WALLS[at]) / (double) (WALLS[at + 1] - WALLS[at]);
    seen[at] = 1 - part;
    seen[at + 1] = part;
    int most = 0;
    int all = 0;
    for (int other = 0; other < Seats.COUNT; other++) {
      if (other != view.seat() && !view.dead(other)) {
        most = Math.max(most, view.exposures(other).size());
        all += view.exposures(other).size();
      }
    }
    int next = 2 * WALLS.length;
    if (most > 0) {
      seen[next + Math.min(MOST_SHOWN, most)] = 1;
    }
    next += MOST_SHOWN + 1;
    seen[next] = all;
    seen[next + 1] = all * left / (double) WALLS[last];
    int own = view.exposures(view.seat()).size();
    if (own > 0) {
      seen[next + 1 + Math.min(MOST_SHOWN, own)] = 1;
    }
  }
}
