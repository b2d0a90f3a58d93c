package org.tallywall.strategies.habit;

import java.util.List;
import org.tallywall.core.hand.Lack;
import org.tallywall.core.hand.Reach;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.tile.Rack;
import org.tallywall.strategies.hand.LineWeights;
import org.tallywall.strategies.hand.RackJudge;
import org.tallywall.strategies.setting.Setting;
import org.tallywall.strategies.setting.SettingValues;

/**
 * When to change the line. A seat remembers nothing, so its line is read off what it sees: it is
 * the best line of its tiles without the one just drawn, or of its 13 tiles while another's discard
 * is on offer. Another line must then be better by a factor, or is left aside altogether.
 *
 * <p>How often the line was changed is counted backwards from the seat's own discards: they are put
 * back on the rack one after the other, and each time that another line becomes the nearest one
 * counts as a change. Tiles drawn in between cannot be told apart and stay on the rack throughout,
 * so a change to a line whose tiles were drawn late is seen only by what was thrown for it.
 *
 * <p>During the passes, and before a seat has drawn or been offered anything, every line is free.
 */
final class LineChange implements LineWeights {
  private static final Setting<Double> BETTER_BY =
      Setting.decimal("aim.change-when-better-by")
          .from(1.0)
          .to(10.0)
          .usual(1.0)
          .says(
              "changes lines only for one that is worth this many times as much (\"stay with your "
                  + "line\")");
  private static final Setting<Integer> AT_MOST =
      Setting.whole("aim.changes-at-most")
          .from(0)
          .to(9)
          .usual(9)
          .says(
              "changes lines at most this many times, as far as its own discards show; 9 sets no "
                  + "limit (\"change early or not at all\")");
  private static final Setting<Integer> WALL =
      Setting.whole("aim.no-change-below-wall")
          .from(0)
          .to(100)
          .usual(0)
          .says(
              "never changes lines with fewer than this many tiles in the wall (\"change early or "
                  + "not at all\")");
  private static final int ANY = 9;
  private static final int SLACK = 2;

  private final RackJudge judge;
  private final LineDistances distances = new LineDistances();
  private final Rack rack = new Rack();
  private final double betterBy;
  private final int atMost;
  private final int wall;
  private Reach reach;
  private int line;
  private boolean settled;

  /**
   * When to change.
   *
   * @param judge judges the tiles that the seat had before, used for nothing else
   * @param values the settings
   */
  LineChange(RackJudge judge, SettingValues values) {
    this.judge = judge;
    betterBy = values.get(BETTER_BY);
    atMost = values.get(AT_MOST);
    wall = values.get(WALL);
  }

  static List<Setting<?>> settings() {
    return List.of(BETTER_BY, AT_MOST, WALL);
  }

  static boolean neutral(SettingValues values) {
    return values.get(BETTER_BY) == 1 && values.get(AT_MOST) == ANY && values.get(WALL) == 0;
  }

  @Override
  public void begin(SeatView view, Rack judged, Reach possible) {
    reach = possible;
    line = Player.NO_AIM;
    if (view.drawn() >= 0 || view.offered() >= 0) {
      takeFormer(view);
      judge.look(view, rack, view.reach(view.seat()), SLACK, 0);
      line = judge.aim();
      settled = view.wallLeft() < wall || (atMost < ANY && changes(view) >= atMost);
    }
  }

  private void takeFormer(SeatView view) {
    view.copyRack(rack);
    if (view.drawn() >= 0 && rack.held(view.drawn()) > 0) {
      rack.remove(view.drawn());
    }
  }

  private int changes(SeatView view) {
    Reach own = view.reach(view.seat());
    distances.measure(view, rack, own);
    int nearest = distances.nearest(line);
    int changes = 0;
    for (int at = view.discards() - 1; at >= 0; at--) {
      if (view.discardSeat(at) == view.seat()) {
        rack.add(view.discardTile(at));
        distances.measure(view, rack, own);
        int before = distances.nearest(nearest);
        changes += before == nearest ? 0 : 1;
        nearest = before;
      }
    }
    return changes;
  }

  @Override
  public double of(int hand, Lack lack, int naturals) {
    if (line == Player.NO_AIM) {
      return 1;
    }
    boolean kept = reach.line(hand) == line;
    return settled ? kept ? 1 : AllWeights.LEFT_ASIDE : kept ? betterBy : 1;
  }
}
