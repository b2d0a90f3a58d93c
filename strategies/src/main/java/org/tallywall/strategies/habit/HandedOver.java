package org.tallywall.strategies.habit;

import java.util.Arrays;
import java.util.List;
import org.tallywall.core.play.PassStep;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.tile.Tile;

/**
 * What one player gets from the seat, in this pass and in those before, and what she should not get
 * together. Tiles passed on blind are not known and not counted.
 */
final class HandedOver {
  private static final String NO_PAIR = "passes.no-pair-to-one";
  private static final String NO_THREE = "passes.no-three-related-to-one";
  private static final String NO_FAMILY = "passes.no-family-twice";

  private final boolean noPair;
  private final boolean noThree;
  private final boolean noFamily;
  private final int[] kinds = new int[Tile.KINDS];
  private final int[] now = new int[TileFamilies.COUNT];
  private final boolean[] before = new boolean[TileFamilies.COUNT];

  HandedOver(SettingValues values) {
    noPair = values.flag(NO_PAIR);
    noThree = values.flag(NO_THREE);
    noFamily = values.flag(NO_FAMILY);
  }

  static List<Setting> settings() {
    return List.of(
        Setting.flag(
            NO_PAIR,
            false,
            "give no player two tiles of a kind while another stranger can go (\"never hand one player a"
                + " pair\")"),
        Setting.flag(
            NO_THREE,
            false,
            "give three winds, three dragons or three tiles of a suit in one pass only where no"
                + " other stranger can go (\"do not pass a pretty trio\")"),
        Setting.flag(
            NO_FAMILY,
            false,
            "give no player winds, dragons, flowers or tiles of a suit again that got some in an"
                + " earlier pass, while other strangers can go"));
  }

  boolean minds() {
    return noPair || noThree || noFamily;
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
        && !(noFamily && before[family]);
  }
}
