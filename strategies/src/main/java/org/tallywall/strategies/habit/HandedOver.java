package org.tallywall.strategies.habit;

import java.util.Arrays;
import java.util.List;
import org.tallywall.core.play.PassStep;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.tile.Tile;
import org.tallywall.strategies.setting.Setting;
import org.tallywall.strategies.setting.SettingValues;

/**
 * What one player gets from the seat, in this pass and in those before, and what she should not get
 * together. Tiles passed on blind are not known and not counted.
 */
final class HandedOver {
  static final Setting<Boolean> NO_PAIR =
      Setting.onOff("passes.no-pair-to-one")
          .usual(false)
          .says(
              "gives no player two of the same tile while it has another tile to spare (\"never "
                  + "hand one player a pair\")");
  private static final Setting<Boolean> NO_THREE =
      Setting.onOff("passes.no-three-related-to-one")
          .usual(false)
          .says(
              "passes three winds, three dragons or three tiles of a suit together only when it "
                  + "has no other tile to spare (\"do not pass a pretty trio\")");
  private static final Setting<Boolean> NO_FAMILY =
      Setting.onOff("passes.no-family-twice")
          .usual(false)
          .says(
              "gives no player more winds, dragons, flowers or tiles of a suit after she got some "
                  + "in an earlier pass, while it has other tiles to spare");

  static final Setting<Boolean> NO_HONORS =
      Setting.onOff("passes.no-honors-together")
          .usual(false)
          .says(
              "passes three winds or three dragons together only when it has no other tile to "
                  + "spare");

  private final boolean noPair;
  private final boolean noThree;
  private final boolean noFamily;
  private final boolean noHonors;
  private final int[] kinds = new int[Tile.KINDS];
  private final int[] now = new int[TileFamilies.COUNT];
  private final boolean[] before = new boolean[TileFamilies.COUNT];

  HandedOver(SettingValues values) {
    noPair = values.get(NO_PAIR);
    noThree = values.get(NO_THREE);
    noFamily = values.get(NO_FAMILY);
    noHonors = values.get(NO_HONORS);
  }

  static List<Setting<?>> settings() {
    return List.of(NO_PAIR, NO_THREE, NO_FAMILY, NO_HONORS);
  }

  boolean minds() {
    return noPair || noThree || noFamily || noHonors;
  }

  /**
   * A pass begins.
   *
   * @param view what the seat knows
   * @param to who gets the tiles
   */
  void begin(SeatView view, int to) {
    Arrays.fill(kinds, 0);
    Arrays.fill(now, 0);
    Arrays.fill(before, false);
    for (SeatView.PassSeen pass : view.passes()) {
      PassStep step = pass.step();
      if (step != null && step.to(view.seat()) == to) {
        for (int kind : pass.given()) {
          kinds[kind]++;
          if (kind < Tile.NATURALS) {
            before[TileFamilies.of(kind)] = true;
          }
        }
      }
    }
  }

  /** One more tile goes to her. */
  void give(int kind) {
    kinds[kind]++;
    if (kind < Tile.NATURALS) {
      now[TileFamilies.of(kind)]++;
    }
  }

  /** Whether she may get a natural tile beside what she has had. */
  boolean mayGet(int kind) {
    int family = TileFamilies.of(kind);
    return !(noPair && kinds[kind] > 0)
        && !(noThree && now[family] >= 2)
        && !(noHonors && TileFamilies.isHonors(family) && now[family] >= 2)
        && !(noFamily && before[family]);
  }
}
