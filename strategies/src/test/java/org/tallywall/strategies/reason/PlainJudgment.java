package org.tallywall.strategies.reason;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.sheet.Move;
import org.tallywall.core.tile.Tile;
import org.tallywall.strategies.habit.AimHabit;
import org.tallywall.strategies.habit.Judging;
import org.tallywall.strategies.habit.ReadHabit;
import org.tallywall.strategies.habit.Weighed;
import org.tallywall.strategies.hand.RackJudge;
import org.tallywall.strategies.player.HabitPlayer;
import org.tallywall.strategies.read.OpponentReader;
import org.tallywall.strategies.setting.SettingValues;

/** What a player with the usual settings thinks of its tiles, asked of a judge and a reader. */
final class PlainJudgment {
  private static final double NEAR = 1e-9;

  private final SeatView view;
  private final Judging player;
  private final RackJudge judge;
  private final OpponentReader reader;

  PlainJudgment(SeatView view, Player player) {
    this.view = view;
    this.player = (Judging) player;
    SettingValues usual = SettingValues.standard(HabitPlayer.watchful());
    judge = AimHabit.rackJudge(usual);
    judge.look(view, 2, 0);
    reader = ReadHabit.reader(usual);
    reader.look(view);
  }

  /** Whether the cause is what the judge, the reader and the table say. */
  boolean agrees(Reason.Rather rather, Move.Discard move) {
    int tile = rather.tile();
    int other = rather.other();
    boolean order = tile == move.tile() && other != tile && view.held(other) > 0 && everyKindOnce();
    return order && agrees(rather.cause(), tile, other);
  }

  private boolean agrees(Reason.Cause cause, int tile, int other) {
    if (cause instanceof Reason.Cause.Needed needed) {
      return same(kept(tile), 1)
          && kept(other) < 1
          && view.table().hands().line(needed.line()) != null
          && wants(needed.line(), other);
    } else if (cause instanceof Reason.Cause.KeepsMore more) {
      return same(more.kept(), kept(tile))
          && same(more.otherKept(), kept(other))
          && more.kept() > more.otherKept();
    } else if (cause instanceof Reason.Cause.Safer safer) {
      return same(safer.risk(), risk(tile))
          && same(safer.otherRisk(), risk(other))
          && safer.risk() < safer.otherRisk();
    } else if (cause instanceof Reason.Cause.MoreOut out) {
      return out.faceUp() == view.faceUp(tile)
          && out.otherFaceUp() == view.faceUp(other)
          && out.faceUp() > out.otherFaceUp();
    }
    return cause instanceof Reason.Cause.Otherwise || Math.abs(kept(tile) - kept(other)) < 0.001;
  }

  /** Some hand of the line that can still be made needs all that is held of a tile. */
  private boolean wants(int line, int tile) {
    PlainFacts facts = new PlainFacts(view);
    var hands = view.table().hands();
    for (int hand = 0; hand < hands.size(); hand++) {
      if (hands.lineOf(hand) == line
          && facts.possible(hand, facts.own)
          && (tile == Tile.JOKER || facts.rest(hand, tile, facts.own) >= facts.held[tile])) {
        return true;
      }
    }
    return false;
  }

  private boolean everyKindOnce() {
    List<Integer> named = new ArrayList<>();
    for (Weighed one : player.discards(view)) {
      int kind = ((Move.Discard) one.move()).tile();
      boolean told = same(one.worth(), kept(kind)) && (!one.read() || same(one.risk(), risk(kind)));
      if (named.contains(kind) || !told) {
        return false;
      }
      named.add(kind);
    }
    for (int kind = 0; kind < Tile.KINDS; kind++) {
      if (view.held(kind) > 0 != named.contains(kind)) {
        return false;
      }
    }
    return true;
  }

  private double kept(int tile) {
    return judge.worth() == 0 ? 1 : judge.worthWithout(tile) / judge.worth();
  }

  private double risk(int tile) {
    double none = 1;
    for (int other = 0; other < 4; other++) {
      none *= other == view.seat() ? 1 : 1 - reader.winChance(other, tile);
    }
    return 1 - none;
  }

  private static boolean same(double one, double other) {
    return Math.abs(one - other) < NEAR;
  }
}
