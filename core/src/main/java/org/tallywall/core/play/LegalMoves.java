package org.tallywall.core.play;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.core.rules.JokerRules;
import org.tallywall.core.rules.PassRules;
import org.tallywall.core.rules.TableRules;
import org.tallywall.core.tile.Exposure;
import org.tallywall.core.tile.Tile;

/** What the rules allow a seat to do, worked out from what the seat itself can see. */
public final class LegalMoves {
  private LegalMoves() {}

  /**
   * How many tiles may be passed on blind in a pass (rule 2.3).
   *
   * @param rules the table's rules
   * @param step the pass
   * @return 0 to 3
   */
  public static int blindMost(TableRules rules, PassStep step) {
    PassRules passes = rules.charleston();
    return switch (passes.blind()) {
      case NONE -> 0;
      case ALL_PASSES -> passes.blindMost();
      case FIRST_LEFT_AND_LAST_RIGHT -> step.endsRound() ? passes.blindMost() : 0;
    };
  }

  /**
   * Whether a kind may be passed: jokers may not (rule 2.1.2), unless the table says so or the rack
   * has fewer than three naturals.
   *
   * @param view what the seat knows
   * @param kind a kind, 0 to 35
   * @return true if one of it may be passed; whether it is held is not looked at
   */
  public static boolean passable(SeatView view, int kind) {
    return kind != Tile.JOKER
        || view.table().rules().charleston().jokersMayPass()
        || view.rackSize() - view.held(Tile.JOKER) < 3;
  }

  /**
   * Why a pass is not legal.
   *
   * @param view what the seat knows
   * @param step the pass
   * @param choice the answer
   * @return the reason, or null where it is legal
   */
  static String passFault(SeatView view, PassStep step, PassChoice choice) {
    if (choice == null || choice.blind() < 0 || choice.own().length + choice.blind() != 3) {
      return "a pass is three tiles, the blind ones included (rule 2.1.1)";
    }
    int most = blindMost(view.table().rules(), step);
    if (choice.blind() > most) {
      return "in " + step.text() + " at most " + most + " tiles may be blind (rule 2.3.1)";
    }
    return tilesFault(view, choice.own());
  }

  /**
   * Why some tiles may not be given away.
   *
   * @param view what the seat knows
   * @param tiles their kinds
   * @return the reason, or null where they may
   */
  static String tilesFault(SeatView view, int[] tiles) {
    for (int tile : tiles) {
      if (tile < 0 || tile >= Tile.KINDS) {
        return tile + " is not a tile";
      }
      if (count(tile, tiles) > view.held(tile)) {
        return "the rack holds " + view.held(tile) + " of " + Tile.symbol(tile);
      }
      if (!passable(view, tile)) {
        return "a joker may not be passed (rule 2.1.2)";
      }
    }
    return null;
  }

  /** Whether the rack holds a tile of a kind, which need not be one. */
  static boolean mayDiscard(SeatView view, int kind) {
    return kind >= 0 && kind < Tile.KINDS && view.held(kind) > 0;
  }

  /** A tile in words, or the number given where it is none. */
  static String name(int kind) {
    return kind >= 0 && kind < Tile.KINDS ? Tile.symbol(kind) : "tile number " + kind;
  }

  private static int count(int tile, int[] tiles) {
    int count = 0;
    for (int other : tiles) {
      count += other == tile ? 1 : 0;
    }
    return count;
  }

  /**
   * Whether a joker of an exposure may be redeemed now (rule 4.4).
   *
   * @param view what the seat knows, in its own turn
   * @param owner whose exposure
   * @param index which of the owner's exposures, from 0
   * @return true if it may
   */
  public static boolean mayExchange(SeatView view, int owner, int index) {
    if (owner < 0 || owner >= Seats.COUNT) {
      return false;
    }
    List<Exposure> exposures = view.exposures(owner);
    if (index < 0 || index >= exposures.size()) {
      return false;
    }
    Exposure exposure = exposures.get(index);
    return exposure.jokers() > 0
        && view.held(exposure.kind()) > 0
        && exchangeAllowed(view, owner == view.seat());
  }

  private static boolean exchangeAllowed(SeatView view, boolean own) {
    JokerRules jokers = view.table().rules().jokers();
    return (own ? jokers.own() : jokers.others())
        && (jokers.afterClaim() || !view.claimedThisTurn())
        && view.exchangesThisTurn() < jokers.perTurn();
  }

  /**
   * Whether the tile on offer may be claimed for an exposure of that form (rules 3.3.5 to 3.3.11).
   *
   * @param view what the seat knows
   * @param kind the kind that the group shows
   * @param size number of tiles, 3 to 6
   * @param jokers jokers from the rack
   * @return true if it may
   */
  public static boolean mayExpose(SeatView view, int kind, int size, int jokers) {
    TableRules rules = view.table().rules();
    boolean jokerOffered = view.offered() == Tile.JOKER;
    if (jokerOffered ? !rules.jokers().discardClaimable() : kind != view.offered()) {
      return false;
    }
    int naturals = size - 1 - jokers;
    int least = Math.max(rules.claims().naturalsFromRack(), jokerOffered ? 1 : 0);
    boolean tilesThere =
        kind >= 0
            && kind < Tile.NATURALS
            && size >= 3
            && size <= 6
            && jokers >= 0
            && naturals >= least
            && naturals <= view.held(kind)
            && jokers <= view.held(Tile.JOKER);
    if (!tilesThere || view.rackSize() - (size - 1) < 1) {
      return false;
    }
    boolean anyJoker = jokers > 0 || jokerOffered;
    return !rules.claims().strictFit()
        || (view.reach(view.seat()).openSizes(kind, anyJoker) >> size & 1) != 0;
  }

  /**
   * All exposures for which the tile on offer may be claimed.
   *
   * @param view what the seat knows
   * @return the claims, by kind, size and jokers in ascending order
   */
  public static List<ClaimChoice> exposures(SeatView view) {
    List<ClaimChoice> claims = new ArrayList<>();
    boolean joker = view.offered() == Tile.JOKER;
    int from = joker ? 0 : view.offered();
    int to = joker ? Tile.NATURALS - 1 : view.offered();
    for (int kind = from; kind <= to; kind++) {
      for (int size = 3; size <= 6; size++) {
        for (int jokers = 0; jokers < size; jokers++) {
          if (mayExpose(view, kind, size, jokers)) {
            claims.add(
                joker
                    ? new ClaimChoice.Expose(kind, size, jokers)
                    : ClaimChoice.expose(size, jokers));
          }
        }
      }
    }
    return claims;
  }

  /**
   * All that a seat may do in its turn. The list is never empty.
   *
   * @param view what the seat knows, with 14 tiles
   * @return exchanges, then mahjong if complete, then discards
   */
  public static List<TurnChoice> turn(SeatView view) {
    List<TurnChoice> choices = new ArrayList<>();
    for (int owner = 0; owner < Seats.COUNT; owner++) {
      for (int index = 0; index < view.exposures(owner).size(); index++) {
        if (mayExchange(view, owner, index)) {
          choices.add(TurnChoice.exchange(owner, index));
        }
      }
    }
    if (view.complete()) {
      choices.add(TurnChoice.mahjong());
    }
    for (int kind = 0; kind < Tile.KINDS; kind++) {
      if (view.held(kind) > 0) {
        choices.add(TurnChoice.discard(kind));
      }
    }
    return choices;
  }
}
