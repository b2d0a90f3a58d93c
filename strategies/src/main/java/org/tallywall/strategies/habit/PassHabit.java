package org.tallywall.strategies.habit;

import java.util.Arrays;
import java.util.List;
import org.tallywall.core.play.LegalMoves;
import org.tallywall.core.play.PassChoice;
import org.tallywall.core.play.PassStep;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.tile.Tile;
import org.tallywall.strategies.hand.RackJudge;

/** The Charleston: what to pass, when to stop, how many to offer across. */
public final class PassHabit {
  private static final String NAME = "passes.";
  private static final int PASSED = 3;
  private static final int HAND = 14;
  private static final int SLACK = 2;

  /** A tile is a stranger if the rack without it keeps this share of its worth. */
  private static final double STRANGER = 0.98;

  private final RackJudge judge;
  private final boolean keepFlowers;
  private final boolean keepPairs;
  private final boolean blind;
  private final int stopStrangers;
  private final int stopJokers;
  private final int courtesyMost;

  /**
   * The habit.
   *
   * @param judge judges racks
   * @param values the settings named {@code passes.…}
   */
  public PassHabit(RackJudge judge, SettingValues values) {
    this.judge = judge;
    keepFlowers = values.flag(NAME + "keep-flowers");
    keepPairs = values.flag(NAME + "keep-pairs");
    blind = values.flag(NAME + "blind-when-short");
    stopStrangers = values.whole(NAME + "stop-when-strangers-at-most");
    stopJokers = values.whole(NAME + "stop-with-jokers-at-least");
    courtesyMost = values.whole(NAME + "courtesy-at-most");
  }

  /**
   * The settings.
   *
   * @return in the order listed
   */
  public static List<Setting> settings() {
    return List.of(
        Setting.flag(
            NAME + "keep-flowers",
            false,
            "pass no flower while another tile can go (\"do not pass flowers\")"),
        Setting.flag(
            NAME + "keep-pairs",
            false,
            "break no pair while another tile can go (\"do not pass pairs\")"),
        Setting.flag(
            NAME + "blind-when-short",
            true,
            "with fewer than three strangers pass the rest blind, where that is allowed"),
        Setting.number(
            NAME + "stop-when-strangers-at-most",
            "2",
            "-1",
            "13",
            "stop the second round with so few tiles to spare; -1 never stops (\"stop if fewer"
                + " than three can be spared\")"),
        Setting.number(
            NAME + "stop-with-jokers-at-least",
            "9",
            "1",
            "9",
            "stop the second round with so many jokers; 9 never does (\"three jokers: stop the"
                + " passes\")"),
        Setting.number(
            NAME + "courtesy-at-most", "3", "0", "3", "offer so many strangers across at most"));
  }

  /**
   * Which tiles to pass.
   *
   * @param view what the seat knows
   * @param step the pass
   * @return a legal pass
   */
  public PassChoice pass(SeatView view, PassStep step) {
    judge.look(view, SLACK, passesAfter(step));
    int most = blind ? LegalMoves.blindMost(view.table().rules(), step) : 0;
    double whole = judge.worth();
    int beside = beside(view);
    int[] own = new int[PASSED];
    int count = 0;
    while (count < PASSED) {
      int kind = next(view);
      boolean needed = kind == Tile.JOKER || (count >= beside && !stranger(kind, whole));
      if (count >= PASSED - most && needed) {
        break;
      }
      own[count++] = kind;
      judge.take(kind);
    }
    return PassChoice.of(Arrays.copyOf(own, count));
  }

  private static int passesAfter(PassStep step) {
    return switch (step) {
      case RIGHT_1 -> 3;
      case ACROSS_1 -> 2;
      case LEFT_1, LEFT_2, ACROSS_2 -> 1;
      case RIGHT_2 -> 0;
    };
  }

  private int next(SeatView view) {
    int kind =
        judge.leastMissed(
            other ->
                !(keepFlowers && other == Tile.FLOWER)
                    && !(keepPairs && other < Tile.JOKER && view.held(other) >= 2));
    return kind >= 0 && kind != Tile.JOKER ? kind : judge.leastMissed();
  }

  private boolean stranger(int kind, double whole) {
    return kind != Tile.JOKER && judge.worthWithout(kind) >= STRANGER * whole;
  }

  /** Tiles that stand beside the nearest hand, however well they would do for another. */
  private int beside(SeatView view) {
    return view.rackSize() - HAND + judge.least();
  }

  /** Tiles to spare, counted up to a number. */
  private int strangers(SeatView view, int most) {
    judge.look(view, SLACK, 0);
    double whole = judge.worth();
    int count = 0;
    while (count < most) {
      int kind = next(view);
      if (kind < 0 || !stranger(kind, whole)) {
        break;
      }
      count++;
      judge.take(kind);
    }
    return count;
  }

  /**
   * Whether to stop the second round.
   *
   * @param view what the seat knows
   * @return true to stop
   */
  public boolean stops(SeatView view) {
    if (view.held(Tile.JOKER) >= stopJokers) {
      return true;
    }
    return strangers(view, stopStrangers + 1) <= stopStrangers && beside(view) <= stopStrangers;
  }

  /**
   * How many tiles to offer across.
   *
   * @param view what the seat knows
   * @return 0 to 3
   */
  public int courtesyNumber(SeatView view) {
    return strangers(view, courtesyMost);
  }

  /**
   * Which tiles to give across.
   *
   * @param view what the seat knows
   * @param number how many
   * @return their kinds
   */
  public int[] courtesyTiles(SeatView view, int number) {
    judge.look(view, SLACK, 0);
    int[] tiles = new int[number];
    for (int at = 0; at < number; at++) {
      tiles[at] = next(view);
      judge.take(tiles[at]);
    }
    return tiles;
  }
}
