package org.tallywall.strategies.habit;

import java.util.List;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.tile.Tile;
import org.tallywall.strategies.setting.Setting;
import org.tallywall.strategies.setting.SettingValues;

/**
 * How early to claim: by the wall, the distance, the copies unseen and the groups finished; the
 * first exposure may have a wall and a distance of its own.
 */
final class ClaimTiming {
  static final Setting<Integer> AWAY =
      Setting.whole("claims.when-away-at-most")
          .from(0)
          .to(14)
          .usual(14)
          .says(
              "claims for an exposure only when this many tiles away or nearer (\"do not claim "
                  + "early\")");
  private static final Setting<Integer> WALL =
      Setting.whole("claims.not-before-wall")
          .from(0)
          .to(99)
          .usual(99)
          .says(
              "claims for an exposure only with this many tiles left in the wall or fewer (\"do "
                  + "not claim early\")");
  private static final Setting<Integer> FIRST_AWAY =
      Setting.whole("claims.first-exposure.when-away-at-most")
          .from(0)
          .to(14)
          .usual(14)
          .says("makes its first exposure only when this many tiles away or nearer");
  private static final Setting<Integer> FIRST_WALL =
      Setting.whole("claims.first-exposure.not-before-wall")
          .from(0)
          .to(99)
          .usual(99)
          .says("makes its first exposure only with this many tiles left in the wall or fewer");
  private static final Setting<Integer> UNSEEN =
      Setting.whole("claims.when-unseen-at-most")
          .from(0)
          .to(16)
          .usual(16)
          .says(
              "claims a tile only with at most this many more of its kind unseen (\"two out of a "
                  + "pung's tile: take the third\")");
  private static final Setting<Integer> GROUPS =
      Setting.whole("claims.with-groups-at-least")
          .from(1)
          .to(4)
          .usual(1)
          .says(
              "claims only with this many groups finished, the claim and any three alike on the "
                  + "rack counted (\"wait for the second or third group\")");
  private static final int GROUP = 3;

  private final int away;
  private final int wall;
  private final int firstAway;
  private final int firstWall;
  private final int unseen;
  private final int groups;

  ClaimTiming(SettingValues values) {
    away = values.get(AWAY);
    wall = values.get(WALL);
    firstAway = values.get(FIRST_AWAY);
    firstWall = values.get(FIRST_WALL);
    unseen = values.get(UNSEEN);
    groups = values.get(GROUPS);
  }

  static List<Setting<?>> settings() {
    return List.of(AWAY, WALL, FIRST_AWAY, FIRST_WALL, UNSEEN, GROUPS);
  }

  /** Whether it is too early before anything is judged. */
  boolean tooEarly(SeatView view) {
    int latest = showsNothing(view) ? Math.min(wall, firstWall) : wall;
    return view.wallLeft() > latest || view.unseen(view.offered()) > unseen;
  }

  /** Whether a rack is too far off. */
  boolean tooFar(SeatView view, int distance) {
    return distance > (showsNothing(view) ? Math.min(away, firstAway) : away);
  }

  private static boolean showsNothing(SeatView view) {
    return view.exposures(view.seat()).isEmpty();
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
