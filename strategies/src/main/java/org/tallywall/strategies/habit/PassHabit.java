package org.tallywall.strategies.habit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.tallywall.core.play.LegalMoves;
import org.tallywall.core.play.PassChoice;
import org.tallywall.core.play.PassStep;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.sheet.Move;
import org.tallywall.core.tile.Tile;
import org.tallywall.strategies.hand.RackJudge;
import org.tallywall.strategies.setting.Setting;
import org.tallywall.strategies.setting.SettingValues;

/** The Charleston: what to pass, when to stop, how many to offer across. */
public final class PassHabit {
  static final Setting<Integer> BLIND_AWAY =
      Setting.whole("passes.blind-when-away-at-most")
          .from(0)
          .to(14)
          .usual(0)
          .says(
              "passes blind, where that is allowed, rather than a tile that a hand in mind uses, "
                  + "when this many tiles away or nearer; 0 does so only for tiles of the nearest hand");

  private static final Setting<Boolean> BLIND =
      Setting.onOff("passes.blind-when-short")
          .usual(true)
          .says(
              "with fewer than three tiles to spare, passes the rest blind where that is allowed "
                  + "(\"a blind pass tells the table that you are far along\")");
  private static final int PASSED = 3;

  private final Giving giving;
  private final StopHabit stop;
  private final CourtesyHabit courtesy;
  private final boolean blind;
  private final int blindAway;

  /**
   * The habit.
   *
   * @param judge judges racks
   * @param values the settings named {@code passes.…}
   */
  public PassHabit(RackJudge judge, SettingValues values) {
    giving = new Giving(judge, values);
    stop = new StopHabit(giving, values);
    courtesy = new CourtesyHabit(giving, values);
    blind = values.get(BLIND);
    blindAway = values.get(BLIND_AWAY);
  }

  /**
   * The settings.
   *
   * @return in the order listed
   */
  public static List<Setting<?>> settings() {
    List<Setting<?>> all = new ArrayList<>(Giving.settings());
    all.add(BLIND);
    all.add(BLIND_AWAY);
    all.addAll(StopHabit.settings());
    all.addAll(CourtesyHabit.settings());
    return List.copyOf(all);
  }

  /**
   * Which tiles to pass.
   *
   * @param view what the seat knows
   * @param step the pass
   * @return a legal pass
   */
  public PassChoice pass(SeatView view, PassStep step) {
    giving.begin(view, step, passesAfter(step));
    int most = blind ? LegalMoves.blindMost(view.table().rules(), step) : 0;
    int beside = giving.away() <= blindAway ? 0 : giving.beside();
    int[] own = new int[PASSED];
    int count = 0;
    while (count < PASSED) {
      int kind = giving.next();
      boolean needed = kind == Tile.JOKER || (count >= beside && !giving.stranger(kind));
      if (count >= PASSED - most && needed) {
        break;
      }
      own[count++] = kind;
      giving.give(kind);
    }
    return PassChoice.of(Arrays.copyOf(own, count));
  }

  /**
   * The tiles that can go most easily.
   *
   * @param view what the seat knows
   * @param step the pass
   * @param most how many at most
   * @return one by one, the one missed least first
   */
  public List<Weighed> weigh(SeatView view, PassStep step, int most) {
    List<Weighed> all = new ArrayList<>();
    giving.begin(view, step, passesAfter(step));
    for (int kind = giving.next(); all.size() < most && kind >= 0; kind = giving.next()) {
      Move one = new Move.Pass(List.of(kind), 0);
      all.add(new Weighed(one, giving.kept(kind), Weighed.UNREAD, Objection.NONE));
      giving.give(kind);
    }
    return all;
  }

  private static int passesAfter(PassStep step) {
    return switch (step) {
      case RIGHT_1 -> 3;
      case ACROSS_1 -> 2;
      case LEFT_1, LEFT_2, ACROSS_2 -> 1;
      case RIGHT_2 -> 0;
    };
  }

  /**
   * Whether to stop the second round.
   *
   * @param view what the seat knows
   * @return true to stop
   */
  public boolean stops(SeatView view) {
    return stop.stops(view);
  }

  /**
   * How many tiles to offer across.
   *
   * @param view what the seat knows
   * @return 0 to 3
   */
  public int courtesyNumber(SeatView view) {
    return courtesy.number(view);
  }

  /**
   * Which tiles to give across.
   *
   * @param view what the seat knows
   * @param number how many
   * @return their kinds
   */
  public int[] courtesyTiles(SeatView view, int number) {
    return courtesy.tiles(view, number);
  }
}
