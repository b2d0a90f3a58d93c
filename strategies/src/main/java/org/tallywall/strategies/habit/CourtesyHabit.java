package org.tallywall.strategies.habit;

import java.util.List;
import org.tallywall.core.play.PassStep;
import org.tallywall.core.play.SeatView;

/** The courtesy pass: how many tiles to offer across, and which to give. */
final class CourtesyHabit {
  private static final String AT_MOST = "passes.courtesy-at-most";
  private static final String NONE_WHEN = "passes.courtesy-none-when-away-at-most";
  private static final String ALL_WHEN = "passes.courtesy-all-when-away-at-least";
  private static final String TILES = "passes.courtesy-tiles";
  private static final String DANGEROUS = "dangerous-first";

  private final Giving giving;
  private final CardUse use = new CardUse();
  private final int most;
  private final int noneWhen;
  private final int allWhen;
  private final boolean dangerousFirst;

  CourtesyHabit(Giving giving, SettingValues values) {
    this.giving = giving;
    most = values.whole(AT_MOST);
    noneWhen = values.whole(NONE_WHEN);
    allWhen = values.whole(ALL_WHEN);
    dangerousFirst = values.word(TILES).equals(DANGEROUS);
  }

  static List<Setting> settings() {
    return List.of(
        Setting.number(
            AT_MOST,
            "3",
            "0",
            "3",
            "offer so many strangers across at most (\"limit courtesy when settled\")"),
        Setting.number(
            NONE_WHEN,
            "-1",
            "-1",
            "14",
            "offer nothing across when so few tiles away; -1 sets no bound (\"refuse courtesy when"
                + " settled\")"),
        Setting.number(
            ALL_WHEN,
            "15",
            "1",
            "15",
            "offer the most, strangers or not, when so many tiles away; 15 never does (\"offer"
                + " when far\")"),
        Setting.word(
            TILES,
            "give the strangers that are missed least, or first those of them that most of the"
                + " card uses, so that they need not be thrown later",
            "strangers",
            DANGEROUS));
  }

  int number(SeatView view) {
    giving.begin(view);
    if (giving.away() <= noneWhen) {
      return 0;
    }
    return giving.away() >= allWhen ? most : giving.strangers(most);
  }

  int[] tiles(SeatView view, int number) {
    giving.begin(view, PassStep.ACROSS_1.to(view.seat()), 0);
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
