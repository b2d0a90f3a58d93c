package org.tallywall.strategies.habit;

import java.util.List;
import org.tallywall.core.play.SeatView;
import org.tallywall.strategies.read.CardUse;
import org.tallywall.strategies.setting.Setting;
import org.tallywall.strategies.setting.SettingValues;

/** The courtesy pass: how many tiles to offer across, and which to give. */
final class CourtesyHabit {
  static final Setting<Integer> AT_MOST =
      Setting.whole("passes.courtesy-at-most")
          .from(0)
          .to(3)
          .usual(3)
          .says(
              "offers at most this many tiles in the courtesy pass "
                  + "(\"limit courtesy when settled\")");
  private static final Setting<Integer> NONE_WHEN =
      Setting.whole("passes.courtesy-none-when-away-at-most")
          .from(-1)
          .to(14)
          .usual(-1)
          .says(
              "offers nothing in the courtesy pass when this many tiles away or nearer; -1 sets no "
                  + "limit (\"refuse courtesy when settled\")");
  private static final Setting<Integer> ALL_WHEN =
      Setting.whole("passes.courtesy-all-when-away-at-least")
          .from(1)
          .to(15)
          .usual(15)
          .says(
              "offers as many tiles as it may in the courtesy pass, needed or not, when this many "
                  + "tiles away or further; 15 never does (\"offer when far\")");
  private static final Setting<CourtesyTiles> TILES =
      Setting.choice("passes.courtesy-tiles", CourtesyTiles.class)
          .usual(CourtesyTiles.STRANGERS)
          .says(
              "gives in the courtesy pass: the tiles it misses least (strangers), the tiles to "
                  + "spare that most of the card uses, so that it need not throw them later "
                  + "(dangerous-first)");

  private final Giving giving;
  private final CardUse use = new CardUse();
  private final int most;
  private final int noneWhen;
  private final int allWhen;
  private final boolean dangerousFirst;

  CourtesyHabit(Giving giving, SettingValues values) {
    this.giving = giving;
    most = values.get(AT_MOST);
    noneWhen = values.get(NONE_WHEN);
    allWhen = values.get(ALL_WHEN);
    dangerousFirst = values.get(TILES) == CourtesyTiles.DANGEROUS_FIRST;
  }

  static List<Setting<?>> settings() {
    return List.of(AT_MOST, NONE_WHEN, ALL_WHEN, TILES);
  }

  int number(SeatView view) {
    giving.begin(view);
    if (giving.away() <= noneWhen) {
      return 0;
    }
    return giving.away() >= allWhen ? most : giving.strangers(most);
  }

  int[] tiles(SeatView view, int number) {
    giving.beginCourtesy(view);
    use.count(view.table().hands());
    int[] tiles = new int[number];
    for (int at = 0; at < number; at++) {
      int kind = dangerousFirst ? giving.mostUsedStranger(use) : -1;
      tiles[at] = kind >= 0 ? kind : giving.next();
      giving.give(tiles[at]);
    }
    return tiles;
  }
}
