package org.tallywall.core.play;

import java.util.Locale;
import org.tallywall.core.rules.ClaimRules;
import org.tallywall.core.rules.Settlement;
import org.tallywall.core.rules.TableRules;
import org.tallywall.core.rules.WallRules;
import org.tallywall.core.tile.Tile;

/**
 * The window between a discard and the next draw: who may claim is asked, all at once, and one
 * claim is granted at most (rules 3.4 and 3.5).
 */
final class ClaimWindow {
  private final GameState state;
  private final Player[] players;
  private final TableRules rules;
  private final Settlement settlement;
  private final ViaExchange viaExchange;
  private final ClaimChoice[] answers = new ClaimChoice[Seats.COUNT];
  private int winner;
  private int also;
  private int alsoMahjong;

  /**
   * The windows of a game.
   *
   * @param state the game
   * @param players who sits where
   * @param settlement tells what a line pays
   */
  ClaimWindow(GameState state, Player[] players, Settlement settlement) {
    this.state = state;
    this.players = players;
    this.rules = state.setup.rules();
    this.settlement = settlement;
    this.viaExchange = new ViaExchange(state);
  }

  /**
   * Opens the window on the latest discard and decides.
   *
   * @return the seat whose claim is granted, or {@link GameState#NONE}
   */
  int open() {
    winner = GameState.NONE;
    also = 0;
    alsoMahjong = 0;
    int tile = state.offered;
    if (tile == Tile.JOKER && !rules.jokers().discardClaimable()) {
      return winner;
    }
    boolean mahjong = mahjongAllowed();
    boolean expose = exposeAllowed();
    if (!mahjong && !expose) {
      return winner;
    }
    boolean any = false;
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      answers[seat] = null;
      if (seat != state.offeredBy && !state.dead[seat]) {
        boolean complete = state.wins.completeWith(seat, tile);
        ask(seat, mahjong && complete, expose && (mahjong || !complete));
        any |= answers[seat] != null;
      }
    }
    if (any) {
      decide();
    }
    return winner;
  }

  /**
   * Which seats may declare mahjong on the latest discard; nobody is asked.
   *
   * @return a mask of seats
   */
  int mayWin() {
    int tile = state.offered;
    boolean claimable = tile != Tile.JOKER || rules.jokers().discardClaimable();
    int seats = 0;
    for (int seat = 0; seat < Seats.COUNT && claimable && mahjongAllowed(); seat++) {
      boolean other = seat != state.offeredBy && !state.dead[seat];
      seats |= other && state.wins.completeWith(seat, tile) ? 1 << seat : 0;
    }
    return seats;
  }

  private boolean mahjongAllowed() {
    return mahjongAllowed(state);
  }

  /** Whether mahjong may be declared on a discard, as the wall stands. */
  static boolean mahjongAllowed(GameState state) {
    TableRules rules = state.setup.rules();
    boolean cold = state.inLastWall() && rules.wall().cold() != WallRules.Cold.OFF;
    boolean last = state.wallLeft() == 0 && rules.wall().finalClaim() == WallRules.FinalClaim.NONE;
    return !cold && !last;
  }

  private boolean exposeAllowed() {
    boolean cold = state.inLastWall() && rules.wall().cold() == WallRules.Cold.NO_CLAIM;
    boolean last = state.wallLeft() == 0 && rules.wall().finalClaim() != WallRules.FinalClaim.ANY;
    return !cold && !last;
  }

  private void ask(int seat, boolean complete, boolean expose) {
    if (complete && !rules.win().mayDecline()) {
      answers[seat] = ClaimChoice.mahjong();
      return;
    }
    if (!complete && !(expose && couldExpose(seat))) {
      return;
    }
    SeatView view = state.views[seat];
    ClaimChoice answer = players[seat].claim(view, state.decision(Question.CLAIM, seat));
    if (answer == null) {
      throw new IllegalMoveException(seat, "no answer to the discard on offer");
    }
    if (answer instanceof ClaimChoice.Mahjong win) {
      checkMahjong(seat, complete, win);
      answers[seat] = answer;
    } else if (answer instanceof ClaimChoice.Expose laid) {
      if (!expose || !LegalMoves.mayExpose(view, kind(laid), laid.size(), laid.jokers())) {
        throw new IllegalMoveException(
            seat,
            String.format(
                Locale.ROOT,
                "%s may not be claimed for %d tiles with %d jokers (rule 3.3)",
                Tile.symbol(state.offered),
                laid.size(),
                laid.jokers()));
      }
      answers[seat] = answer;
    }
  }

  private void checkMahjong(int seat, boolean complete, ClaimChoice.Mahjong win) {
    boolean named = win.line() != ClaimChoice.Mahjong.BEST_LINE;
    if (!complete || (named && state.wins.best(seat, state.offered, win.line(), settlement) < 0)) {
      throw new IllegalMoveException(
          seat, "the 14 tiles are not a hand of the card, or not of that line (rule 5.2)");
    }
  }

  /** A quick look whether any exposure could be legal, before a player is troubled. */
  private boolean couldExpose(int seat) {
    int tile = state.offered;
    SeatView view = state.views[seat];
    if (tile == Tile.JOKER) {
      return !LegalMoves.exposures(view).isEmpty();
    }
    int naturals = view.held(tile);
    int jokers = view.held(Tile.JOKER);
    int most = Math.min(6, 1 + naturals + jokers);
    if (most < 3 || naturals < rules.claims().naturalsFromRack()) {
      return false;
    }
    most = Math.min(most, view.rackSize());
    for (int size = 3; size <= most; size++) {
      int needed = Math.max(0, size - 1 - naturals);
      if (LegalMoves.mayExpose(view, tile, size, needed)) {
        return true;
      }
    }
    return false;
  }

  private int kind(ClaimChoice.Expose laid) {
    return laid.kind() == ClaimChoice.Expose.AS_OFFERED ? state.offered : laid.kind();
  }

  private void decide() {
    ClaimRules claims = rules.claims();
    int first = GameState.NONE;
    int firstMahjong = GameState.NONE;
    for (int turn = 1; turn < Seats.COUNT; turn++) {
      int seat = state.offeredBy + turn & 3;
      if (answers[seat] != null) {
        first = first == GameState.NONE ? seat : first;
        boolean ranksAsMahjong = claims.mahjongFirst() && ranksAsMahjong(seat);
        if (ranksAsMahjong && firstMahjong == GameState.NONE) {
          firstMahjong = seat;
        }
      }
    }
    winner = firstMahjong != GameState.NONE ? firstMahjong : first;
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      if (answers[seat] != null && seat != winner) {
        lose(seat);
      }
    }
  }

  private boolean ranksAsMahjong(int seat) {
    return answers[seat] instanceof ClaimChoice.Mahjong
        || (rules.claims().mahjongViaExchange()
            && answers[seat] instanceof ClaimChoice.Expose laid
            && viaExchange.wins(seat, kind(laid), laid));
  }

  private void lose(int seat) {
    boolean mahjong = answers[seat] instanceof ClaimChoice.Mahjong;
    if (mahjong) {
      alsoMahjong |= 1 << seat;
    } else {
      also |= 1 << seat;
    }
    if (rules.claims().losingPublic()) {
      state.talk.lost(seat, state.offered, mahjong);
    }
  }

  /** The granted claim. */
  ClaimChoice granted() {
    return answers[winner];
  }

  /** Mask of seats whose exposure claim lost. */
  int also() {
    return also;
  }

  /** Mask of seats whose mahjong claim lost. */
  int alsoMahjong() {
    return alsoMahjong;
  }
}
