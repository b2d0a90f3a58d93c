package org.tallywall.strategies.habit;

import java.util.List;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.tile.Tile;
import org.tallywall.strategies.hand.RackJudge;
import org.tallywall.strategies.read.OpponentReader;
import org.tallywall.strategies.setting.Setting;
import org.tallywall.strategies.setting.SettingValues;

/**
 * Of two tiles that the own hand hardly misses, throws the one that nobody's exposures can use.
 * What has just gone round unclaimed is thrown as it is.
 */
public final class ColderHabit {
  static final Setting<Double> WITHIN =
      Setting.decimal("discards.colder-within")
          .from(0.0)
          .to(1.0)
          .usual(0.0)
          .says(
              "gives up this much of the rack's worth at most, as a share, to throw a tile that no "
                  + "hand left by an exposure can use instead of one that some can; 0 does not mind "
                  + "(\"of two useless tiles the colder one goes\")");

  private final double within;

  /**
   * The habit.
   *
   * @param values the settings named {@code discards.…}
   */
  public ColderHabit(SettingValues values) {
    within = values.get(WITHIN);
  }

  /**
   * The settings.
   *
   * @return in the order listed
   */
  public static List<Setting<?>> settings() {
    return List.of(WITHIN);
  }

  /**
   * Whether it minds, so that the others must be read.
   *
   * @return false at the usual setting
   */
  public boolean isOn() {
    return within > 0;
  }

  /**
   * The tile to throw.
   *
   * @param view what the seat knows, with 14 tiles
   * @param judge has judged the 14 tiles
   * @param reader has read the others
   * @param chosen the tile that would be thrown otherwise
   * @return its kind; the one chosen where none is colder and nearly as good to lose
   */
  public int instead(SeatView view, RackJudge judge, OpponentReader reader, int chosen) {
    boolean around = view.discards() > 0 && view.discardTile(view.discards() - 1) == chosen;
    if (!isOn() || around || !reader.hers(chosen, 1, 0)) {
      return chosen;
    }
    double enough = (1 - within) * judge.worthWithout(chosen);
    int found = chosen;
    double most = 0;
    for (int kind = 0; kind < Tile.NATURALS; kind++) {
      if (view.held(kind) > 0 && !reader.hers(kind, 1, 0)) {
        double left = judge.worthWithout(kind);
        if (left >= enough && left > most) {
          found = kind;
          most = left;
        }
      }
    }
    return found;
  }
}
