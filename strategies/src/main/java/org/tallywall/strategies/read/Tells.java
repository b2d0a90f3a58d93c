package org.tallywall.strategies.read;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.tile.Exposure;
import org.tallywall.core.tile.Tile;

/**
 * What everybody at the table can see of a player that tells how near she is, as numbers: what she
 * shows and how much wall is left, what she did in the passes, what she threw lately, and what she
 * let lie. {@link TileRisk} says what each counts for.
 */
public final class Tells {
  private static final int[] WALLS = {10, 30, 50, 70, 90};
  private static final int SHOWN = 4;
  private static final int BASE = SHOWN * WALLS.length;
  private static final List<String> NAMES = allNames();
  private static final int FIVE = 5;
  private static final int TWO = 2;
  private static final double WALL = 99;

  /** What is told beside exposures and wall. */
  private enum Tell {
    STOPPED("stopped the passes"),
    BLIND("passed blind"),
    BLIND_TILES("each tile passed blind"),
    ASKED_ONE("asked across for one"),
    ASKED_TWO("asked across for two"),
    ASKED_THREE("asked across for three"),
    REDEEMED("redeemed a joker"),
    REDEEMED_MORE("redeemed two or more"),
    JOKER_SHOWN("shows a joker"),
    FURTHER_JOKERS("each further joker shown"),
    THREW_JOKER("threw a joker"),
    THREW_FLOWER("threw a flower"),
    FLOWER_LATELY("threw a flower lately"),
    NEW_OF_FIVE("share of her last five that were new on the table"),
    NEW_OF_TWO("share of her last two that were new on the table"),
    NEW_BY_WALL("share of her last five that were new on the table, by the wall"),
    DISCARDS("each discard"),
    LOST_CLAIMS("claims that lost"),
    WANTED_THROWN("wanted tiles thrown lately"),
    WANTED_SINCE("wanted tiles let lie since"),
    WANTED_BEFORE("wanted tiles let lie before"),
    LIVE_HANDS("logarithm of her live hands"),
    ALL_DEAD("her hands are all dead");

    private final String text;

    Tell(String text) {
      this.text = text;
    }
  }

  private final double[] value = new double[NAMES.size()];
  private SeatView view;

  /** Nothing seen yet. */
  public Tells() {}

  private static List<String> allNames() {
    List<String> names = new ArrayList<>();
    for (int shown = 0; shown < SHOWN; shown++) {
      for (int wall : WALLS) {
        names.add("shows " + shown + ", wall " + wall);
      }
    }
    for (Tell tell : Tell.values()) {
      names.add(tell.text);
    }
    return List.copyOf(names);
  }

  /**
   * The names of the numbers; the first ones are about exposures and wall alone.
   *
   * @return in order
   */
  public static List<String> names() {
    return NAMES;
  }

  /**
   * How many of the numbers are about exposures and wall alone.
   *
   * @return a number
   */
  public static int base() {
    return BASE;
  }

  /**
   * Looks at a player.
   *
   * @param seat what the seat that looks knows
   * @param other whom it looks at
   * @param reader has read the others
   */
  public void look(SeatView seat, int other, OpponentReader reader) {
    view = seat;
    Arrays.fill(value, 0);
    columns(other);
    passes(other);
    jokers(other);
    discards(other, reader);
    if (!view.exposures(other).isEmpty()) {
      int live = reader.live(other);
      set(Tell.LIVE_HANDS, live == 0 ? 0 : StrictMath.log(live));
      set(Tell.ALL_DEAD, live == 0 ? 1 : 0);
    }
  }

  private void set(Tell tell, double number) {
    value[BASE + tell.ordinal()] = number;
  }

  /** Straight lines between the columns of the wall: two of them share 1 between them. */
  private void columns(int other) {
    int row = Math.min(SHOWN - 1, view.exposures(other).size()) * WALLS.length;
    double place = (view.wallLeft() - WALLS[0]) / (double) (WALLS[1] - WALLS[0]);
    int last = WALLS.length - 1;
    if (place <= 0 || place >= last) {
      value[row + (place <= 0 ? 0 : last)] = 1;
    } else {
      int at = (int) place;
      value[row + at] = 1 - (place - at);
      value[row + at + 1] = place - at;
    }
  }

  private void passes(int other) {
    int blind = 0;
    for (SeatView.PassSeen pass : view.passes()) {
      blind += pass.blind().get(other);
    }
    set(Tell.STOPPED, view.stoppers().contains(other) ? 1 : 0);
    set(Tell.BLIND, blind > 0 ? 1 : 0);
    set(Tell.BLIND_TILES, blind);
    switch (view.courtesyAsked(other)) {
      case 1 -> set(Tell.ASKED_ONE, 1);
      case 2 -> set(Tell.ASKED_TWO, 1);
      case 3 -> set(Tell.ASKED_THREE, 1);
      default -> {}
    }
  }

  private void jokers(int other) {
    int redeemed = 0;
    for (SeatView.ExchangeSeen exchange : view.exchanges()) {
      redeemed += exchange.seat() == other ? 1 : 0;
    }
    set(Tell.REDEEMED, redeemed > 0 ? 1 : 0);
    set(Tell.REDEEMED_MORE, redeemed > 1 ? 1 : 0);
    int shown = 0;
    for (Exposure exposure : view.exposures(other)) {
      shown += exposure.jokers();
    }
    set(Tell.JOKER_SHOWN, shown > 0 ? 1 : 0);
    set(Tell.FURTHER_JOKERS, Math.max(0, shown - 1));
    int lost = 0;
    for (SeatView.LostClaim claim : view.lostClaims()) {
      lost += claim.seat() == other ? 1 : 0;
    }
    set(Tell.LOST_CLAIMS, lost);
  }

  private void discards(int other, OpponentReader reader) {
    int own = 0;
    int newOfFive = 0;
    int newOfTwo = 0;
    double thrown = 0;
    double since = 0;
    double before = 0;
    int last = view.discards() - (view.offered() >= 0 ? 2 : 1);
    for (int at = last; at >= 0; at--) {
      int kind = view.discardTile(at);
      double wanted = reader.wanted(other, kind);
      if (view.discardSeat(at) == other) {
        own++;
        if (own <= FIVE) {
          int fresh = first(at) ? 1 : 0;
          newOfFive += fresh;
          newOfTwo += own <= TWO ? fresh : 0;
          thrown += own <= TWO ? wanted : 0;
          if (kind == Tile.FLOWER) {
            set(Tell.FLOWER_LATELY, 1);
          }
        }
        if (kind == Tile.FLOWER) {
          set(Tell.THREW_FLOWER, 1);
        } else if (kind == Tile.JOKER) {
          set(Tell.THREW_JOKER, 1);
        }
      } else if (own == 0) {
        since += wanted;
      } else if (own == 1) {
        before += wanted;
      }
    }
    double fresh = own == 0 ? 0 : newOfFive / (double) Math.min(FIVE, own);
    set(Tell.NEW_OF_FIVE, fresh);
    set(Tell.NEW_BY_WALL, fresh * view.wallLeft() / WALL);
    set(Tell.NEW_OF_TWO, own == 0 ? 0 : newOfTwo / (double) Math.min(TWO, own));
    set(Tell.DISCARDS, own);
    set(Tell.WANTED_THROWN, thrown);
    set(Tell.WANTED_SINCE, since);
    set(Tell.WANTED_BEFORE, before);
  }

  private boolean first(int at) {
    for (int before = 0; before < at; before++) {
      if (view.discardTile(before) == view.discardTile(at)) {
        return false;
      }
    }
    return true;
  }

  /**
   * The number at a place.
   *
   * @param at place among the names
   * @return the number, 0 where there is nothing to tell
   */
  public double value(int at) {
    return value[at];
  }
}
