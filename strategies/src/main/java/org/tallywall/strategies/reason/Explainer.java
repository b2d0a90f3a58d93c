package org.tallywall.strategies.reason;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.core.card.Line;
import org.tallywall.core.hand.HandMeter;
import org.tallywall.core.play.ClaimChoice;
import org.tallywall.core.play.LegalMoves;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.sheet.Move;
import org.tallywall.core.tile.Exposure;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;
import org.tallywall.strategies.habit.Defending;
import org.tallywall.strategies.habit.Judging;
import org.tallywall.strategies.habit.Stance;
import org.tallywall.strategies.habit.Weighed;
import org.tallywall.strategies.read.OpponentReader;

/**
 * Says why a player chose as it did. The line aimed at and the step of defense are the player's
 * own; the numbers are those that the view gives. Nothing is worked out unless this is asked, and
 * asking changes no answer.
 */
public final class Explainer {
  private static final int WHOLE = 14;

  private final SeatDistances distances = new SeatDistances();
  private final Opponents opponents = new Opponents();
  private final List<Reason> reasons = new ArrayList<>();

  /** An explainer, for one thread at a time. */
  public Explainer() {}

  /**
   * The reasons of a choice.
   *
   * @param view what the player knew, as it was when it chose
   * @param move what it chose
   * @param player who chose; it is asked what it aims at
   * @return the reasons, what it heads for first; never empty where anything can be aimed at
   */
  public List<Reason> reasons(SeatView view, Move move, Player player) {
    reasons.clear();
    if (move instanceof Move.Mahjong) {
      complete(view);
      return List.copyOf(reasons);
    }
    int aim = player.aim(view);
    if (move instanceof Move.Pass pass) {
      pass(view, pass, aim);
    } else if (move instanceof Move.Nothing) {
      nothing(view, aim, player);
    } else if (move instanceof Move.Claim claim) {
      claim(view, claim);
    } else if (move instanceof Move.Exchange exchange) {
      exchange(view, exchange);
    } else if (move instanceof Move.Discard discard) {
      discard(view, discard.tile(), player);
    } else {
      toSpare(view, aim);
    }
    aim(view, aim, player);
    return List.copyOf(reasons);
  }

  /** Comes first. */
  private void aim(SeatView view, int aim, Player player) {
    if (aim == Player.NO_AIM) {
      return;
    }
    distances.look(view);
    Reason.Aim found = handInMind(view, aim, player);
    if (found == null && view.offered() >= 0) {
      distances.countOffered(view);
      found = handInMind(view, aim, player);
    }
    if (found != null) {
      reasons.add(0, found);
    }
  }

  /** The hand that the player has in mind, or the nearest of its line; null where all are dead. */
  private Reason.Aim handInMind(SeatView view, int aim, Player player) {
    int own = player instanceof Judging judging ? judging.handInMind(view) : -1;
    Reason.Aim found = own < 0 ? null : distances.aim(own);
    int nearest = found == null ? distances.nearest(aim) : -1;
    return nearest < 0 ? found : distances.aim(nearest);
  }

  /** The dearest line that the tiles make, a claimed one among them. */
  private void complete(SeatView view) {
    Rack whole = new Rack();
    view.copyRack(whole);
    if (view.offered() >= 0) {
      whole.add(view.offered());
    }
    HandMeter meter = new HandMeter();
    meter.hold(whole);
    var reach = view.reach(view.seat());
    int best = -1;
    for (int hand = 0; hand < reach.size(); hand++) {
      if (meter.away(reach, hand) == 0
          && (best < 0 || line(view, reach.line(hand)).value() > line(view, best).value())) {
        best = reach.line(hand);
      }
    }
    if (best >= 0) {
      reasons.add(new Reason.Complete(best, line(view, best).value()));
    }
  }

  private static Line line(SeatView view, int line) {
    return view.table().hands().line(line);
  }

  private void pass(SeatView view, Move.Pass pass, int aim) {
    distances.look(view);
    int before = distances.least();
    pass.own().forEach(distances::give);
    went(before, distances.least());
    if (pass.blind() > 0) {
      reasons.add(new Reason.Blind(pass.blind()));
      toSpare(view, aim);
    }
  }

  /** What went off the rack was needed or not. */
  private void went(int before, int after) {
    if (before != HandMeter.NONE) {
      reasons.add(before == after ? new Reason.Unneeded(before) : new Reason.Costs(before, after));
    }
  }

  private void toSpare(SeatView view, int aim) {
    distances.look(view);
    int away = aim == Player.NO_AIM ? distances.least() : distances.least(aim);
    if (away != HandMeter.NONE) {
      int exposed = view.exposures(view.seat()).stream().mapToInt(Exposure::size).sum();
      int held = view.rackSize() + exposed;
      reasons.add(new Reason.ToSpare(Math.max(0, held - (WHOLE - away))));
    }
  }

  private void nothing(SeatView view, int aim, Player player) {
    if (aim != Player.NO_AIM && line(view, aim).concealed()) {
      reasons.add(new Reason.Concealed(aim));
    }
    distances.look(view);
    int without = distances.least();
    int with = HandMeter.NONE;
    for (ClaimChoice choice : LegalMoves.exposures(view)) {
      ClaimChoice.Expose laid = (ClaimChoice.Expose) choice;
      expose(view, laid.kind(), laid.size(), laid.jokers());
      with = Math.min(with, distances.least());
    }
    if (with != HandMeter.NONE && without != HandMeter.NONE) {
      boolean nearer = with < without;
      reasons.add(
          nearer ? new Reason.WouldBring(without, with) : new Reason.NothingNearer(without, with));
      if (nearer && player instanceof Judging judging) {
        leftClaim(view, judging.claims(view));
      }
    }
  }

  /** Why the claim that is worth most was left, of those that the player could think of. */
  private void leftClaim(SeatView view, List<Weighed> all) {
    Weighed best = null;
    for (Weighed one : all) {
      boolean better = best == null || one.worth() > best.worth();
      best = one.move() instanceof Move.Claim && better ? one : best;
    }
    if (best != null) {
      Move.Claim claim = (Move.Claim) best.move();
      distances.look(view);
      int lines = distances.lines();
      expose(view, view.offered(), claim.size(), claim.jokers());
      reasons.add(
          new Reason.LeftClaim(
              claim.size(),
              claim.jokers(),
              best.objection(),
              best.worth(),
              lines,
              distances.lines()));
    }
  }

  private void expose(SeatView view, int shown, int size, int jokers) {
    int kind = shown == ClaimChoice.Expose.AS_OFFERED ? view.offered() : shown;
    boolean joker = view.offered() == Tile.JOKER;
    int open = joker ? jokers + 1 : jokers;
    distances.look(view);
    distances.expose(
        kind, size - 1 - jokers, jokers, view.reachWith(Exposure.of(kind, size, open)));
  }

  private void claim(SeatView view, Move.Claim claim) {
    distances.look(view);
    int before = distances.least();
    if (view.offered() == Tile.JOKER) {
      return;
    }
    expose(view, view.offered(), claim.size(), claim.jokers());
    nearer(before, distances.least());
    reasons.add(new Reason.JokersKept(distances.jokers()));
  }

  private void nearer(int before, int after) {
    if (after < before) {
      reasons.add(new Reason.Nearer(before, after));
    } else {
      went(before, after);
    }
  }

  private void exchange(SeatView view, Move.Exchange exchange) {
    distances.look(view);
    int before = distances.least();
    distances.lay(exchange.tile());
    distances.takeJoker();
    reasons.add(new Reason.Redeems(exchange.tile(), exchange.owner(), distances.jokers()));
    nearer(before, distances.least());
  }

  private void discard(SeatView view, int tile, Player player) {
    distances.look(view);
    int before = distances.least();
    if (player instanceof Defending defending && defending.lastStance() != Stance.OWN_HAND) {
      reasons.add(
          new Reason.Step(
              defending.lastStance(),
              before,
              view.wallLeft() / 4,
              OpponentReader.mostExposures(view)));
    }
    Reason.Rather rather =
        player instanceof Judging judging ? Deciding.between(view, tile, judging) : null;
    if (rather != null) {
      reasons.add(rather);
    }
    safety(view, tile);
    Reason.Dead dead = distances.dead(tile);
    if (dead != null) {
      reasons.add(dead);
    }
    distances.lay(tile);
    int after = distances.least();
    if (rather == null || after != before) {
      went(before, after);
    }
  }

  private void safety(SeatView view, int tile) {
    int last = view.discards() - 1;
    if (tile == Tile.JOKER) {
      reasons.add(new Reason.NobodyTakesIt());
    } else if (last >= 0 && view.discardTile(last) == tile) {
      reasons.add(new Reason.JustWentRound(tile));
    }
    int copies = view.table().rules().tiles().copies(tile);
    if (tile != Tile.JOKER && view.faceUp(tile) == copies - 1) {
      reasons.add(new Reason.LastOfItsKind(tile, copies - 1));
    }
    opponents.explain(view, tile, reasons);
  }
}
