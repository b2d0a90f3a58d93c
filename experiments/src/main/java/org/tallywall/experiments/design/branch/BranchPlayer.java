package org.tallywall.experiments.design.branch;

import java.util.List;
import org.tallywall.core.hand.RackMeter;
import org.tallywall.core.play.ClaimChoice;
import org.tallywall.core.play.ForwardingPlayer;
import org.tallywall.core.play.PassChoice;
import org.tallywall.core.play.PassStep;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.Seats;
import org.tallywall.core.play.TurnChoice;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;

/**
 * A player that plays as another does, but for one decision at most. While it looks, it notes the
 * first decision whose position fits a square; told to, it takes an option at that decision.
 */
final class BranchPlayer extends ForwardingPlayer {
  private static final int NOT_NOW = -1;

  /** Where no tiles are passed. */
  private static final int NO_PASS = 0;

  private final BranchMoment moment;
  private final Cells cells;
  private final RackMeter meter = new RackMeter();
  private final NearestClaim claims = new NearestClaim();
  private final Rack rack = new Rack();
  private final int[] position = new int[Feature.values().length];
  private final int anyAway;
  private final int line;
  private Option option;
  private boolean looks;
  private int decisions;
  private int branchAt = NOT_NOW;
  private int cell = Cells.NONE;
  private int wall;

  /**
   * A player.
   *
   * @param inner decides everything else
   * @param moment the kind of decision
   * @param cells how positions are sorted
   * @param line a line's place on the card, at which the player must aim, or -1 for any
   */
  BranchPlayer(Player inner, BranchMoment moment, Cells cells, int line) {
    super(inner);
    this.line = line;
    this.moment = moment;
    this.cells = cells;
    this.anyAway = cells.values().getOrDefault(Feature.AWAY, List.of(0)).get(0);
  }

  /** Begins a game in which the first decision that fits a square is looked for. */
  void look() {
    looks = true;
    decisions = 0;
    option = null;
    branchAt = NOT_NOW;
    cell = Cells.NONE;
  }

  /** Begins a game in which an option is taken at the decision that was found. */
  void take(Option taken) {
    looks = false;
    decisions = 0;
    option = taken;
  }

  /** Begins a game in which the inner player decides everything. */
  void rest() {
    take(null);
  }

  /** The square of the decision that was found, or {@link Cells#NONE}. */
  int cell() {
    return cell;
  }

  /** Tiles left in the wall at that decision. */
  int wall() {
    return wall;
  }

  /**
   * Whether the option is to be taken now. Only a game played to look is searched: what comes up
   * while another player's options are tried never happened in it.
   */
  private boolean decides(SeatView view, int pass) {
    int now = decisions++;
    if (looks && branchAt == NOT_NOW) {
      position[Feature.PASS.ordinal()] = pass;
      note(view, now);
    }
    return option != null && now == branchAt;
  }

  private void note(SeatView view, int now) {
    int square = square(view);
    if (square != Cells.NONE && (moment != BranchMoment.CLAIM || helps(view))) {
      cell = square;
      branchAt = now;
      wall = view.wallLeft();
    }
  }

  /** Whether a claim would bring the hand nearer; else there is nothing to decide. */
  private boolean helps(SeatView view) {
    return claims.find(view) != ClaimChoice.nothing();
  }

  private int square(SeatView view) {
    int most = 0;
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      if (seat != view.seat() && !view.dead(seat)) {
        most = Math.max(most, view.exposures(seat).size());
      }
    }
    position[Feature.EXPOSURES.ordinal()] = most;
    position[Feature.WALL.ordinal()] = view.wallLeft();
    position[Feature.AWAY.ordinal()] = anyAway;
    position[Feature.PAIRS.ordinal()] = pairs(view);
    position[Feature.JOKERS.ordinal()] = view.held(Tile.JOKER);
    if (cells.of(position) == Cells.NONE || (line >= 0 && behind().aim(view) != line)) {
      return Cells.NONE;
    }
    view.copyRack(rack);
    meter.hold(rack, view.reach(view.seat()));
    position[Feature.AWAY.ordinal()] = meter.least();
    return cells.of(position);
  }

  private static int pairs(SeatView view) {
    int pairs = 0;
    for (int kind = 0; kind < Tile.NATURALS; kind++) {
      pairs += view.held(kind) >= 2 ? 1 : 0;
    }
    return pairs;
  }

  @Override
  public TurnChoice turn(SeatView view, RandomStream random) {
    TurnChoice usual = behind().turn(view, random);
    boolean asked = moment == BranchMoment.DISCARD && usual instanceof TurnChoice.Discard;
    return asked && decides(view, NO_PASS) ? option.turn(usual, view, random) : usual;
  }

  @Override
  public ClaimChoice claim(SeatView view, RandomStream random) {
    ClaimChoice usual = behind().claim(view, random);
    boolean asked = moment == BranchMoment.CLAIM && !view.complete();
    return asked && decides(view, NO_PASS)
        ? option.claim(usual, claims.find(view), view, random)
        : usual;
  }

  @Override
  public PassChoice pass(SeatView view, PassStep step, RandomStream random) {
    PassChoice usual = behind().pass(view, step, random);
    boolean asked = moment == BranchMoment.PASS;
    return asked && decides(view, step.number()) ? option.pass(usual, view, step, random) : usual;
  }

  @Override
  public boolean stops(SeatView view, RandomStream random) {
    boolean usual = behind().stops(view, random);
    boolean asked = moment == BranchMoment.STOP;
    return asked && decides(view, NO_PASS) ? option.stops(usual, view, random) : usual;
  }
}
