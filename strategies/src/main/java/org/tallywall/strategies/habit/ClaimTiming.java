package org.tallywall.strategies.habit;

import java.util.List;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.tile.Tile;

/** How early to claim: by the wall, the distance, the copies unseen and the groups finished. */
final class ClaimTiming {
  private static final String AWAY = "claims.when-away-at-most";
  private static final String WALL = "claims.not-before-wall";
  private static final String UNSEEN = "claims.when-unseen-at-most";
  private static final String GROUPS = "claims.with-groups-at-least";
  private static final int GROUP = 3;

  private final int away;
  private final int wall;
  private final int unseen;
  private final int groups;

  ClaimTiming(SettingValues values) {
    away = values.whole(AWAY);
    wall = values.whole(WALL);
    unseen = values.whole(UNSEEN);
    groups = values.whole(GROUPS);
  }

  static List<Setting> settings() {
    return List.of(
        Setting.number(
            AWAY, "14", "0", "14", "claim only from so many tiles away (\"do not claim early\")"),
        Setting.number(
            WALL,
            "99",
            "0",
            "99",
            "claim only with so many tiles left in the wall, or fewer (\"do not claim early\")"),
        Setting.number(
            UNSEEN,
            "16",
            "0",
            "16",
            "claim a tile only when at most so many more of its kind are unseen (\"two out of a"
                + " pung's tile: take the third\")"),
        Setting.number(
            GROUPS,
            "1",
            "1",
            "4",
            "claim only when so many groups are finished then, three of a kind on the rack counted"
                + " (\"wait for the second or third group\")"));
  }

  /** Whether it is too early before anything is judged. */
  boolean tooEarly(SeatView view) {
    return view.wallLeft() > wall || view.unseen(view.offered()) > unseen;
  }

  /** Whether a rack is too far off. */
  boolean tooFar(int distance) {
    return distance > away;
  }

  /** Whether a claim leaves too few groups finished. */
  boolean tooFewGroups(Laying laying) {
    int finished = laying.view().exposures(laying.view().seat()).size() + 1;
    for (int kind = 0; kind < Tile.NATURALS && finished < groups; kind++) {
      finished += laying.rack().held(kind) >= GROUP ? 1 : 0;
    }
    return finished < groups;
  }
}
