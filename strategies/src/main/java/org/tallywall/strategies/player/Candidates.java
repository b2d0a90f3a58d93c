package org.tallywall.strategies.player;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.core.play.ClaimChoice;
import org.tallywall.core.play.LegalMoves;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.Seats;
import org.tallywall.core.play.TurnChoice;
import org.tallywall.core.tile.Tile;
import org.tallywall.strategies.habit.AimHabit;
import org.tallywall.strategies.habit.DefenseHabit;
import org.tallywall.strategies.hand.RackJudge;
import org.tallywall.strategies.read.OpponentReader;
import org.tallywall.strategies.setting.SettingValues;

/**
 * The choices that a player tries out: the usual one, and others that a sound player might make as
 * well.
 *
 * <p>A discard is tried only where the hand without it keeps a share of the worth that it keeps
 * without the tile it misses least, and where it is no tile that the defense keeps: playouts by
 * players who neither plan nor defend would at times praise both. A claim is tried where a target
 * wants the tile and draws enough are left.
 */
final class Candidates {
  private static final int SLACK = 2;

  /** Share of an opponent's live hands that must want a tile for it to count as hers. */
  private static final double HERS = 0.25;

  private final RackJudge judge;
  private final OpponentReader reader = new OpponentReader();
  private final DefenseHabit defense;
  private final WorthTrying worth;
  private final int most;
  private final double share;

  /**
   * Candidates.
   *
   * @param values settings of a watchful player
   * @param worth which decisions are tried at all
   * @param most choices at most, the usual one among them
   * @param share share of the worth that a discard must leave, 0 to 1; with 0 the defense keeps no
   *     tile from being tried either
   */
  Candidates(SettingValues values, WorthTrying worth, int most, double share) {
    this.judge = AimHabit.rackJudge(values);
    this.defense = new DefenseHabit(values);
    this.worth = worth;
    this.most = most;
    this.share = share;
  }

  /**
   * Answers to a discard: the usual one, none, and exposures with the fewest jokers.
   *
   * @param view what the seat knows
   * @param usual the usual answer
   * @return that one first
   */
  List<ClaimChoice> claims(SeatView view, ClaimChoice usual) {
    List<ClaimChoice> choices = new ArrayList<>(List.of(usual));
    judge.look(view, SLACK, 0);
    boolean claimed = usual instanceof ClaimChoice.Expose;
    boolean wanted = claimed || (judge.wantsNow(view.offered()) && enoughDraws(view));
    if (!worth.at(view, judge.least()) || !wanted) {
      return choices;
    }
    if (claimed) {
      choices.add(ClaimChoice.nothing());
    }
    int size = 0;
    for (ClaimChoice choice : LegalMoves.exposures(view)) {
      boolean next = choice instanceof ClaimChoice.Expose laid && laid.size() > size;
      if (next && choices.size() < most) {
        size = ((ClaimChoice.Expose) choice).size();
        if (!choice.equals(usual)) {
          choices.add(choice);
        }
      }
    }
    return choices;
  }

  /** Whether as many draws are left as the hand lacks tiles. */
  private boolean enoughDraws(SeatView view) {
    return view.wallLeft() / Seats.COUNT >= judge.least();
  }

  /**
   * Discards: the usual one, then those that the rack misses least.
   *
   * @param view what the seat knows
   * @param usual the usual tile
   * @return that one first
   */
  List<TurnChoice> discards(SeatView view, int usual) {
    List<TurnChoice> choices = new ArrayList<>(List.of(TurnChoice.discard(usual)));
    judge.look(view, SLACK, 0);
    if (!worth.at(view, judge.least())) {
      return choices;
    }
    reader.look(view);
    double enough = share * judge.worthWithout(judge.leastMissed());
    boolean[] named = new boolean[Tile.KINDS];
    named[usual] = true;
    while (choices.size() < most) {
      int kind = judge.leastMissed(other -> !named[other]);
      if (kind < 0 || named[kind] || judge.worthWithout(kind) < enough) {
        break;
      }
      named[kind] = true;
      if (share == 0 || !keeps(kind)) {
        choices.add(TurnChoice.discard(kind));
      }
    }
    return choices;
  }

  /** Whether the defense keeps a tile, by how far the hand is away. */
  private boolean keeps(int kind) {
    int feared = defense.fearedExposures();
    int away = judge.least();
    if (away >= defense.holdBackAway()) {
      return reader.hers(kind, feared, HERS);
    }
    return away > 1 ? !reader.exposureOnly(kind, feared) : reader.surelyWanted(kind);
  }
}
