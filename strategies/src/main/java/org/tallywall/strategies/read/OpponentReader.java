package org.tallywall.strategies.read;

import java.util.Arrays;
import org.tallywall.core.hand.HandMeter;
import org.tallywall.core.hand.Lack;
import org.tallywall.core.hand.Reach;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.Seats;
import org.tallywall.core.rules.TableRules;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;

/**
 * Reads what the exposures of the others leave possible, and which tiles those hands still want.
 *
 * <p>A hand counts as live for an opponent if it holds all her exposures and the rest can still be
 * had: not more copies discarded, exposed or held by the reader than leave enough. All live hands
 * count alike; discards and passes of hers are not read. An opponent without exposures is not read
 * at all.
 */
public final class OpponentReader {
  private static final double USUAL_VALUE = 25;

  /** Values that throwing the winning tile costs more than somebody else's throwing it later. */
  private static final double EXTRA_PAID = 1.5;

  private final HandMeter meter = new HandMeter();
  private final Rack nothing = new Rack();
  private final Lack rest = new Lack();
  private final int[] obtainable = new int[Tile.KINDS];
  private final int[] live = new int[Seats.COUNT];
  private final int[] lines = new int[Seats.COUNT];
  private final int[][] wanted = new int[Seats.COUNT][Tile.KINDS];
  private final int[][] wantedNatural = new int[Seats.COUNT][Tile.KINDS];
  private final int[] value = new int[Seats.COUNT];
  private SeatView view;

  /** A reader that has read nothing. */
  public OpponentReader() {}

  /**
   * Reads all opponents.
   *
   * @param seat what the seat knows
   */
  public void look(SeatView seat) {
    view = seat;
    TableRules rules = seat.table().rules();
    for (int kind = 0; kind < Tile.NATURALS; kind++) {
      obtainable[kind] = rules.tiles().copies(kind) - seat.faceUp(kind) - seat.held(kind);
    }
    obtainable[Tile.JOKER] =
        rules.tiles().jokers() - seat.discarded(Tile.JOKER) - seat.held(Tile.JOKER);
    meter.obtainable(obtainable);
    meter.hold(nothing);
    for (int other = 0; other < Seats.COUNT; other++) {
      live[other] = 0;
      lines[other] = 0;
      value[other] = 0;
      if (other != seat.seat() && !seat.dead(other) && !seat.exposures(other).isEmpty()) {
        read(other, seat.reach(other));
      }
    }
  }

  private void read(int other, Reach reach) {
    Arrays.fill(wanted[other], 0);
    Arrays.fill(wantedNatural[other], 0);
    int line = -1;
    for (int hand = 0; hand < reach.size(); hand++) {
      if (!meter.dead(reach, hand)) {
        live[other]++;
        lines[other] += reach.line(hand) == line ? 0 : 1;
        line = reach.line(hand);
        value[other] += reach.hands().line(line).value();
        meter.lack(reach, hand, rest);
        for (int at = 0; at < rest.kinds(); at++) {
          wanted[other][rest.kind(at)]++;
          wantedNatural[other][rest.kind(at)] += rest.natural(at) > 0 ? 1 : 0;
        }
      }
    }
  }

  /**
   * How many hands are live for an opponent.
   *
   * @param other her seat
   * @return 0 where she shows nothing, or where all are dead
   */
  public int live(int other) {
    return live[other];
  }

  /**
   * How many lines are live for an opponent.
   *
   * @param other her seat
   * @return 0 where she shows nothing
   */
  public int lines(int other) {
    return lines[other];
  }

  /**
   * The share of an opponent's live hands that want a tile.
   *
   * @param other her seat
   * @param kind a natural kind
   * @return 0 to 1
   */
  public double share(int other, int kind) {
    return live[other] == 0 ? 0 : wanted[other][kind] / (double) live[other];
  }

  /**
   * Whether a tile is one of hers: some live hand of a seat with enough exposures wants it.
   *
   * @param kind a kind
   * @param exposures fewest exposures on one rack that make a player be feared
   * @return true if so
   */
  public boolean hers(int kind, int exposures) {
    for (int other = 0; other < Seats.COUNT; other++) {
      if (feared(other, exposures) && kind < Tile.NATURALS && wanted[other][kind] > 0) {
        return true;
      }
    }
    return false;
  }

  /**
   * Whether a tile can give feared players an exposure only: none of their live hands wants it for
   * a single or a pair, and none of them shows three exposures.
   *
   * @param kind a kind
   * @param exposures fewest exposures on one rack that make a player be feared
   * @return true if so; true too for a tile that none of them wants
   */
  public boolean exposureOnly(int kind, int exposures) {
    for (int other = 0; other < Seats.COUNT; other++) {
      if (feared(other, exposures)
          && kind < Tile.NATURALS
          && wanted[other][kind] > 0
          && (wantedNatural[other][kind] > 0 || view.exposures(other).size() > 2)) {
        return false;
      }
    }
    return true;
  }

  /**
   * Whether every live hand of some feared player wants a tile.
   *
   * @param kind a kind
   * @param exposures fewest exposures on one rack that make a player be feared
   * @return true if so
   */
  public boolean surelyWanted(int kind, int exposures) {
    for (int other = 0; other < Seats.COUNT; other++) {
      if (feared(other, exposures) && kind < Tile.NATURALS && wanted[other][kind] == live[other]) {
        return true;
      }
    }
    return false;
  }

  private boolean feared(int other, int exposures) {
    return live[other] > 0 && view.exposures(other).size() >= exposures;
  }

  /**
   * The chance that somebody wins on a tile, times what that costs the thrower.
   *
   * @param kind a kind
   * @param valueWeight how much more a dear line is feared than a cheap one, 0 to 1
   * @param lost what the thrower loses besides, since the game is over, in points
   * @return points, 0 for a joker
   */
  public double cost(int kind, double valueWeight, double lost) {
    if (kind >= Tile.NATURALS) {
      return 0;
    }
    double cost = 0;
    for (int other = 0; other < Seats.COUNT; other++) {
      if (other != view.seat() && !view.dead(other)) {
        int shown = view.exposures(other).size();
        double factor = WinRisk.factor(shown, view.wallLeft());
        double chance = shown == 0 ? factor : factor * share(other, kind);
        double worth = live[other] == 0 ? 1 : value[other] / (USUAL_VALUE * live[other]);
        double paid = EXTRA_PAID * USUAL_VALUE * (1 + valueWeight * (worth - 1));
        cost += chance * (paid + lost);
      }
    }
    return cost;
  }

  /**
   * How dangerous a tile is: the shares of the opponents' live hands that want it, the more exposed
   * counting more.
   *
   * @param kind a kind
   * @param valueWeight how much the value of her lines counts, 0 to 1
   * @return 0 for a joker or a tile that nobody seems to want
   */
  public double danger(int kind, double valueWeight) {
    double danger = 0;
    for (int other = 0; other < Seats.COUNT && kind < Tile.NATURALS; other++) {
      if (live[other] > 0) {
        int shown = view.exposures(other).size();
        double worth = value[other] / (25.0 * live[other]);
        danger += share(other, kind) * shown * shown * (1 + valueWeight * (worth - 1));
      }
    }
    return danger;
  }

  /**
   * The most exposures that one opponent shows.
   *
   * @return 0 to 4; dead hands do not count
   */
  public int mostExposures() {
    int most = 0;
    for (int other = 0; other < Seats.COUNT; other++) {
      if (other != view.seat() && !view.dead(other)) {
        most = Math.max(most, view.exposures(other).size());
      }
    }
    return most;
  }
}
