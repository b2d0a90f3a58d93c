package org.tallywall.strategies.read;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.Seats;
import org.tallywall.core.tile.Tile;
import org.tallywall.strategies.hand.NamedWeights;

/**
 * How likely a player wins on a tile that is thrown now, by all that can be seen of her ({@link
 * Tells}) and of the tile: a logit model (Cox, Journal of the Royal Statistical Society B 20, 1958,
 * 215-242, from memory). The table {@code tile-risk.txt} says by which command and from which games
 * it was made.
 */
public final class TileRisk {
  private static final String FILE = "tile-risk.txt";
  private static final int TELLS = Tells.names().size();

  /** A share of nothing is told apart; below this the share says no more. */
  private static final double LEAST_SHARE = 1e-4;

  private static final int MOST_LYING = 3;

  /**
   * What is looked at beside the tells, against a closed rack and against one that shows something.
   */
  private enum Sign {
    THREW_LATELY("threw it lately"),
    THREW_BEFORE("threw it before that"),
    LET_LIE_SINCE("let it lie since her last discard"),
    LET_LIE_BEFORE("let it lie in the turn before"),
    PASSED("passed it to the reader"),
    ONE_LIES("one lies"),
    TWO_LIE("two lie"),
    THREE_LIE("three lie"),
    NONE_UNSEEN("none is unseen"),
    ONE_UNSEEN("one is unseen"),
    FLOWER("a flower"),
    HONOR("a wind or dragon"),
    USE("logarithm of the lines that use it");

    private final String text;

    Sign(String text) {
      this.text = text;
    }
  }

  private static final int SIGNS = Sign.values().length;
  private static final int SHARE = TELLS + 2 * SIGNS;
  private static final List<String> NAMES = allNames();

  /** Read once; never changed. */
  private static final double[] FITTED = NamedWeights.read(TileRisk.class, FILE, NAMES);

  private final double[] weights;
  private final double[] fixed = new double[Seats.COUNT];
  private final Tells tells = new Tells();
  private final CardUse use = new CardUse();
  private final long[] threwLately = new long[Seats.COUNT];
  private final long[] threwBefore = new long[Seats.COUNT];
  private final long[] sinceHers = new long[Seats.COUNT];
  private final long[] beforeHers = new long[Seats.COUNT];
  private final long[] passed = new long[Seats.COUNT];
  private final double[] sign = new double[SIGNS];
  private SeatView view;

  /** By what was fitted to simulated games. */
  public TileRisk() {
    this(FITTED);
  }

  /**
   * By given weights.
   *
   * @param weights one for each of {@link #names()}
   */
  public TileRisk(double[] weights) {
    this.weights = weights.clone();
  }

  private static List<String> allNames() {
    List<String> names = new ArrayList<>(Tells.names());
    for (String shows : List.of("closed: ", "shows: ")) {
      for (Sign sign : Sign.values()) {
        names.add(shows + sign.text);
      }
    }
    names.add("share of what she may wait for, logarithm");
    names.add("share of what she may wait for, logarithm squared");
    names.add("share of what she may wait for is nothing");
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
   * @param seat what the seat that looks knows
   */
  public void look(SeatView seat) {
    view = seat;
    use.count(seat.table().hands());
    Arrays.fill(threwLately, 0);
    Arrays.fill(threwBefore, 0);
    Arrays.fill(sinceHers, 0);
    Arrays.fill(beforeHers, 0);
    int[] own = new int[Seats.COUNT];
    int last = seat.discards() - (seat.offered() >= 0 ? 2 : 1);
    for (int at = last; at >= 0; at--) {
      long bit = 1L << seat.discardTile(at);
      for (int other = 0; other < Seats.COUNT; other++) {
        if (seat.discardSeat(at) == other) {
          threwLately[other] |= own[other] < 2 ? bit : 0;
          threwBefore[other] |= own[other] < 2 ? 0 : bit;
          own[other]++;
        } else {
          sinceHers[other] |= own[other] == 0 ? bit : 0;
          beforeHers[other] |= own[other] == 1 ? bit : 0;
        }
      }
    }
    readPasses();
  }

  private void readPasses() {
    Arrays.fill(passed, 0);
    for (SeatView.PassSeen pass : view.passes()) {
      boolean courtesy = pass.step() == null;
      int giver = courtesy ? Seats.across(view.seat()) : pass.step().from(view.seat());
      if (pass.blind().get(giver) == 0) {
        for (int kind : pass.received()) {
          passed[giver] |= 1L << kind;
        }
      }
    }
  }

  /**
   * Looks at one opponent, before she is asked about.
   *
   * @param other her seat
   * @param reader has read her
   */
  public void look(int other, OpponentReader reader) {
    tells.look(view, other, reader);
    fixed[other] = 0;
    for (int at = 0; at < TELLS; at++) {
      fixed[other] += weights[at] * tells.value(at);
    }
  }

  private void signs(int other, int kind) {
    sign[Sign.THREW_LATELY.ordinal()] = threwLately[other] >>> kind & 1;
    sign[Sign.THREW_BEFORE.ordinal()] = threwBefore[other] >>> kind & 1;
    sign[Sign.LET_LIE_SINCE.ordinal()] = sinceHers[other] >>> kind & 1;
    sign[Sign.LET_LIE_BEFORE.ordinal()] = beforeHers[other] >>> kind & 1;
    sign[Sign.PASSED.ordinal()] = passed[other] >>> kind & 1;
    int lying = view.faceUp(kind);
    sign[Sign.ONE_LIES.ordinal()] = lying == 1 ? 1 : 0;
    sign[Sign.TWO_LIE.ordinal()] = lying == 2 ? 1 : 0;
    sign[Sign.THREE_LIE.ordinal()] = lying >= MOST_LYING ? 1 : 0;
    int unseen = view.unseen(kind);
    sign[Sign.NONE_UNSEEN.ordinal()] = unseen == 0 ? 1 : 0;
    sign[Sign.ONE_UNSEEN.ordinal()] = unseen == 1 ? 1 : 0;
    sign[Sign.FLOWER.ordinal()] = kind == Tile.FLOWER ? 1 : 0;
    sign[Sign.HONOR.ordinal()] = kind >= Tile.NORTH && kind < Tile.FLOWER ? 1 : 0;
    sign[Sign.USE.ordinal()] = StrictMath.log1p(use.of(kind));
  }

  /**
   * The chance that an opponent who was looked at wins on a tile that is thrown now.
   *
   * @param other her seat
   * @param kind a natural kind
   * @param share the share of what she may be waiting for that is this kind, where she shows
   *     exposures
   * @return 0 to 1
   */
  public double chance(int other, int kind, double share) {
    signs(other, kind);
    boolean shows = !view.exposures(other).isEmpty();
    int from = TELLS + (shows ? SIGNS : 0);
    double sum = fixed[other];
    for (int at = 0; at < SIGNS; at++) {
      sum += weights[from + at] * sign[at];
    }
    if (shows) {
      double log = StrictMath.log(Math.max(LEAST_SHARE, share));
      sum += weights[SHARE] * log + weights[SHARE + 1] * log * log;
      sum += share == 0 ? weights[SHARE + 2] : 0;
    }
    return 1 / (1 + StrictMath.exp(-sum));
  }

  /**
   * The numbers that the model looks at, for an opponent who was looked at.
   *
   * @param other her seat
   * @param kind a natural kind
   * @param share the share of what she may be waiting for that is this kind
   * @return one for each of {@link #names()}
   */
  public double[] seen(int other, int kind, double share) {
    double[] seen = new double[NAMES.size()];
    for (int at = 0; at < TELLS; at++) {
      seen[at] = tells.value(at);
    }
    signs(other, kind);
    boolean shows = !view.exposures(other).isEmpty();
    System.arraycopy(sign, 0, seen, TELLS + (shows ? SIGNS : 0), SIGNS);
    if (shows) {
      double log = StrictMath.log(Math.max(LEAST_SHARE, share));
      seen[SHARE] = log;
      seen[SHARE + 1] = log * log;
      seen[SHARE + 2] = share == 0 ? 1 : 0;
    }
    return seen;
  }
}
