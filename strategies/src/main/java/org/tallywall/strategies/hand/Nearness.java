package org.tallywall.strategies.hand;

import java.util.Arrays;
import org.tallywall.core.hand.HandMeter;
import org.tallywall.core.hand.NearHands;
import org.tallywall.core.hand.RackMeter;
import org.tallywall.core.hand.Reach;
import org.tallywall.core.hand.TileBits;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;

/**
 * Judges a rack by distance alone: which line is fewest tiles away, and which tiles it can spare.
 *
 * <p>Hands that are dead for the rack are left out; a tile that another offers counts as one that
 * can be had. Between lines at the same distance the one with more ways at that distance is aimed
 * at, then the one that pays more, then the first on the card. A tile is spared the more easily the
 * fewer ways want it: first those of the line aimed at, then those of other lines as near, then
 * those one tile further. Chances are not judged.
 */
public final class Nearness {
  private static final int SLACK = 1;
  private static final long AIMED = 1_000_000_000_000L;
  private static final long AS_NEAR = 1_000_000L;
  private static final long JOKER = 1L << Tile.JOKER;
  private static final long NEVER = Long.MAX_VALUE;

  private final RackMeter imagining = new RackMeter();
  private final HandMeter narrowing = new HandMeter();
  private final NearHands near = new NearHands();
  private final Rack rack = new Rack();
  private final Rack judged = new Rack();
  private final Obtainable obtainable = new Obtainable();
  private int judgedSlack = -1;
  private Reach reach;
  private SeatView view;
  private final TileBits last = new TileBits();
  private final long[] worth = new long[Tile.KINDS];
  private boolean worthKnown;
  private int aim;
  private int ways;

  /** Nothing judged yet. */
  public Nearness() {}

  /**
   * Judges the own rack as it is.
   *
   * @param seat what the seat knows
   */
  public void look(SeatView seat) {
    look(seat, SLACK);
  }

  /**
   * Judges the own rack as it is, but looks for the nearest hands only: the least distance and the
   * aim are the same, tiles are told apart less finely.
   *
   * @param seat what the seat knows
   */
  public void glance(SeatView seat) {
    look(seat, 0);
  }

  private void look(SeatView seat, int slack) {
    view = seat;
    seat.copyRack(rack);
    judge(seat.reach(seat.seat()), true, slack);
  }

  /**
   * Judges a rack that the seat might have, by its nearest hands only.
   *
   * @param seat what the seat knows
   * @param tiles the concealed tiles it would have
   * @param possible the hands that its exposures would leave
   */
  public void glance(SeatView seat, Rack tiles, Reach possible) {
    view = seat;
    rack.set(tiles);
    judge(possible, false, 0);
  }

  private void judge(Reach possible, boolean own, int slack) {
    Obtainable.Change change = obtainable.count(view);
    boolean again = possible == reach && judgedSlack >= 0;
    boolean same = again && change == Obtainable.Change.NONE && rack.equals(judged);
    if (same && slack == judgedSlack) {
      return;
    }
    boolean narrowed = again && slack == 0 && change != Obtainable.Change.MORE && narrow();
    if (!narrowed) {
      RackMeter meter = own ? view.meter() : imagined(possible);
      meter.obtainable(obtainable.counts());
      meter.nearest(slack, near);
    }
    reach = possible;
    judgedSlack = slack;
    judged.set(rack);
    worthKnown = false;
    choose();
  }

  /**
   * Looks for the nearest hands among those that were, where the rack has lost no more than a tile
   * and no more of any kind can be had: no other hand can have come nearer.
   *
   * @return whether any of them is as near as it was
   */
  private boolean narrow() {
    int lost = judged.total() - rack.total();
    if (lost < 0 || lost > 1 || !rack.isPartOf(judged)) {
      return false;
    }
    narrowing.obtainable(obtainable.counts());
    narrowing.hold(rack);
    return narrowing.narrow(reach, near);
  }

  private RackMeter imagined(Reach possible) {
    imagining.hold(rack, possible);
    return imagining;
  }

  private void choose() {
    aim = Player.NO_AIM;
    ways = 0;
    int line = Player.NO_AIM;
    int count = 0;
    for (int at = 0; at < near.count(); at++) {
      if (near.away(at) == near.least()) {
        int here = reach.line(near.hand(at));
        count = here == line ? count + 1 : 1;
        line = here;
        if (count > ways || (count == ways && value(line) > value(aim))) {
          aim = line;
          ways = count;
        }
      }
    }
  }

  private int value(int line) {
    return line < 0 ? 0 : reach.hands().line(line).value();
  }

  /**
   * How many tiles the rack is away from the nearest living hand.
   *
   * @return 0 to 14, or {@link HandMeter#NONE} where no hand can be made any more
   */
  public int least() {
    return near.least();
  }

  /**
   * The line aimed at.
   *
   * @return its place on the card, or {@link Player#NO_AIM}
   */
  public int aim() {
    return aim;
  }

  /**
   * How many ways of the line aimed at are at the least distance.
   *
   * @return 0 or more
   */
  public int ways() {
    return ways;
  }

  /**
   * The tile that is spared most easily. Of equals it is the one of which most lie face up, then
   * the first in the order of kinds.
   *
   * @param jokers whether a joker may be it
   * @return its kind, or -1 where the rack holds none that may be
   */
  public int mostSpare(boolean jokers) {
    weigh();
    int best = -1;
    long least = NEVER;
    for (long kinds = rack.kinds() & ~JOKER; kinds != 0; kinds &= kinds - 1) {
      int kind = Long.numberOfTrailingZeros(kinds);
      if (worth[kind] < least || (worth[kind] == least && moreFaceUp(kind, best))) {
        least = worth[kind];
        best = kind;
      }
    }
    return best < 0 && jokers && rack.jokers() > 0 ? Tile.JOKER : best;
  }

  private boolean moreFaceUp(int kind, int other) {
    return obtainable.faceUp(kind) > obtainable.faceUp(other);
  }

  /** Weighs, for each kind, the hands that want the last of its tiles. */
  private void weigh() {
    if (!worthKnown) {
      worthKnown = true;
      Arrays.fill(worth, 0);
      last.setLast(rack);
      for (int at = 0; at < near.count(); at++) {
        reach.addWanted(near.hand(at), last, weight(at), worth);
      }
    }
  }

  private long weight(int at) {
    boolean asNear = near.away(at) == near.least();
    return !asNear ? 1 : reach.line(near.hand(at)) == aim ? AIMED : AS_NEAR;
  }

  /**
   * Takes a tile out of the judged rack, so that the next most spare tile can be found. Distances
   * stay as they were judged.
   *
   * @param kind its kind
   */
  public void take(int kind) {
    rack.remove(kind);
    judgedSlack = -1;
    worth[kind] = 0;
    for (int at = 0; at < near.count() && rack.held(kind) > 0 && kind != Tile.JOKER; at++) {
      if (reach.wants(near.hand(at), kind, rack.held(kind))) {
        worth[kind] += weight(at);
      }
    }
  }

  /**
   * Whether one of the nearest hands wants a further tile of a kind. Where none does, no claim of
   * it can bring the rack nearer.
   *
   * @param kind a natural kind
   * @return true if one does
   */
  public boolean wantsNow(int kind) {
    int further = rack.held(kind) + 1;
    for (int at = 0; at < near.count(); at++) {
      if (near.away(at) == near.least() && reach.wants(near.hand(at), kind, further)) {
        return true;
      }
    }
    return false;
  }

  /**
   * Whether no way of the line aimed at wants the last of a kind.
   *
   * @param kind a natural kind that is held
   * @return true for a stranger
   */
  public boolean stranger(int kind) {
    weigh();
    return worth[kind] < AIMED;
  }
}
