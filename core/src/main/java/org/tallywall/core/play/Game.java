package org.tallywall.core.play;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.tallywall.core.rules.Settlement;
import org.tallywall.core.tile.Exposure;
import org.tallywall.core.tile.Tile;

/**
 * Plays games from the deal to the end. It asks the players, allows only legal moves, and tells a
 * listener every event. The course of a game depends on the setup, the deal and the players alone.
 * One object plays many games, one after the other; it is not safe for use by several threads.
 */
public final class Game {
  private final GameState state;
  private final Player[] players;
  private final GameListener listener;
  private final Settlement settlement;
  private final Charleston charleston;
  private final ClaimWindow window;
  private final DeadCalls deadCalls;
  private final boolean aims;
  private boolean paysForAll;

  /**
   * A table at which games can be played.
   *
   * @param setup the card and the rules
   * @param players four players, East first
   * @param listener hears the events
   */
  public Game(TableSetup setup, List<? extends Player> players, GameListener listener) {
    if (players.size() != Seats.COUNT) {
      throw new IllegalArgumentException("four players sit at a table, not " + players.size());
    }
    this.state = new GameState(setup);
    this.players = players.toArray(new Player[0]);
    this.listener = listener;
    this.settlement = new Settlement(setup.rules());
    this.charleston = new Charleston(state, this.players, listener, this::eastDeclares);
    this.window = new ClaimWindow(state, this.players, settlement);
    this.deadCalls = new DeadCalls(state);
    this.aims = listener.wantsAims();
  }

  /** A yardstick may sit at several tables in turn, so it is shown this one before each game. */
  private void layOpen() {
    for (Player player : players) {
      if (player instanceof SeesOpenTable yardstick) {
        yardstick.sitAt(state);
      }
    }
  }

  /**
   * Plays one deal to its end.
   *
   * @param deal the wall and the dice; its tiles must be those of the rules
   * @return how it ended
   * @throws IllegalMoveException if a player answers with a move that is not legal
   */
  public Outcome play(Deal deal) {
    if (deal.size() != state.setup.rules().tiles().size()) {
      throw new IllegalArgumentException(
          "the wall has "
              + deal.size()
              + " tiles, the rules "
              + state.setup.rules().tiles().size());
    }
    layOpen();
    state.begin(deal);
    listener.began(state);
    askAims(AimMoment.AFTER_DEAL);
    Outcome outcome = course();
    askAims(AimMoment.AT_END);
    listener.ended(outcome);
    return outcome;
  }

  private Outcome course() {
    boolean heavenly = state.setup.rules().win().heavenly();
    if ((heavenly && eastDeclares()) || charleston.play()) {
      return win(Seats.EAST, WinBy.DEAL, GameState.NONE, GameState.NONE);
    }
    askAims(AimMoment.AFTER_PASSES);
    return turns(Seats.EAST, WinBy.DEAL, false);
  }

  /**
   * Plays on from a position to the end. The listener hears what happens from there, but neither
   * the beginning nor the end. Where the position is a turn that began with a claim, the seat who
   * threw the claimed tile is not known and does not matter before the next win.
   *
   * @param position the position, with every hidden tile filled in
   * @return how it ended
   * @throws IllegalMoveException if a player answers with a move that is not legal
   * @throws IllegalArgumentException if the position lies at a moment of the passes that the rules
   *     do not have
   */
  public Outcome playOn(Position position) {
    layOpen();
    state.begin(position);
    paysForAll = false;
    if (position.passing() != null) {
      return charleston.playFrom(position.passing())
          ? win(Seats.EAST, WinBy.DEAL, GameState.NONE, GameState.NONE)
          : turns(Seats.EAST, WinBy.DEAL, false);
    }
    SeatView seen = position.view();
    WinBy entry = seen.drawn() == GameState.NONE ? WinBy.DEAL : WinBy.DRAW;
    return turns(seen.seat(), entry, seen.offered() != GameState.NONE);
  }

  private boolean eastDeclares() {
    return state.wins.complete(Seats.EAST)
        && (!state.setup.rules().win().mayDecline()
            || players[Seats.EAST].declares(
                state.views[Seats.EAST], state.decision(Question.DECLARE, Seats.EAST)));
  }

  private void askAims(AimMoment moment) {
    if (aims) {
      for (int seat = 0; seat < Seats.COUNT; seat++) {
        askAim(seat, moment);
      }
    }
  }

  private void askAim(int seat, AimMoment moment) {
    if (aims && !state.dead[seat] && listener.wantsAimsOf(seat)) {
      state.asked = seat;
      int line = players[seat].aim(state.views[seat]);
      if (line != Player.NO_AIM && (line < 0 || line >= state.setup.hands().lines())) {
        throw new IllegalMoveException(
            seat, "it says that it aims at line " + line + ", which the card does not have");
      }
      listener.aimed(seat, moment, line);
    }
  }

  private Outcome turns(int first, WinBy firstEntry, boolean windowOpen) {
    int seat = windowOpen ? state.offeredBy : first;
    WinBy entry = firstEntry;
    int from = GameState.NONE;
    boolean discarded = windowOpen;
    while (true) {
      Outcome ended = discarded ? null : turnAndCalls(seat, entry, from);
      if (ended != null) {
        return ended;
      }
      discarded = false;
      int claimant = window.open();
      if (claimant != GameState.NONE) {
        from = state.offeredBy;
        if (window.granted() instanceof ClaimChoice.Mahjong win) {
          return win(claimant, WinBy.DISCARD, from, win.line());
        }
        expose(claimant, (ClaimChoice.Expose) window.granted());
        seat = claimant;
        entry = WinBy.DISCARD;
      } else if (state.wallLeft() == 0) {
        return end(Outcome.How.WALL_GAME);
      } else {
        state.closeWindow();
        seat = nextLive(seat);
        listener.drew(seat, state.draw(seat));
        entry = WinBy.DRAW;
        from = GameState.NONE;
      }
    }
  }

  private Outcome turnAndCalls(int seat, WinBy entry, int from) {
    Outcome won = turn(seat, entry, from);
    return won != null ? won : callDead();
  }

  private int nextLive(int seat) {
    int next = Seats.right(seat);
    while (state.dead[next]) {
      next = Seats.right(next);
    }
    return next;
  }

  /** One turn up to the discard; a win ends it. */
  private Outcome turn(int seat, WinBy entry, int from) {
    boolean completeOnEntry = state.wins.complete(seat);
    while (true) {
      boolean complete = state.wins.complete(seat);
      TurnChoice choice =
          complete && !state.setup.rules().win().mayDecline()
              ? TurnChoice.mahjong()
              : players[seat].turn(state.views[seat], state.decision(Question.TURN, seat));
      if (choice instanceof TurnChoice.Discard discard) {
        if (!LegalMoves.mayDiscard(state.views[seat], discard.tile())) {
          throw new IllegalMoveException(
              seat,
              "the rack holds no " + LegalMoves.name(discard.tile()) + " to discard (rule 3.2)");
        }
        state.discard(seat, discard.tile());
        listener.discarded(seat, discard.tile());
        askAim(seat, AimMoment.IN_PLAY);
        return null;
      } else if (choice instanceof TurnChoice.Exchange exchange) {
        exchange(seat, exchange);
      } else if (choice instanceof TurnChoice.Mahjong win) {
        if (!complete
            || (win.line() >= 0 && state.wins.best(seat, -1, win.line(), settlement) < 0)) {
          throw new IllegalMoveException(
              seat, "the 14 tiles are not a hand of the card, or not of that line (rule 5.2)");
        }
        return completeOnEntry
            ? win(seat, entry, from, win.line())
            : win(seat, WinBy.EXCHANGE, GameState.NONE, win.line());
      } else {
        throw new IllegalMoveException(seat, "no answer in its turn");
      }
    }
  }

  private void exchange(int seat, TurnChoice.Exchange exchange) {
    SeatView view = state.views[seat];
    if (!LegalMoves.mayExchange(view, exchange.owner(), exchange.exposure())) {
      throw new IllegalMoveException(
          seat,
          String.format(
              Locale.ROOT,
              "no joker may be redeemed from exposure %d of seat %d now (rule 4.4)",
              exchange.exposure(),
              exchange.owner()));
    }
    int tile = state.exposures(exchange.owner()).get(exchange.exposure()).kind();
    state.exchange(seat, exchange.owner(), exchange.exposure());
    listener.exchanged(seat, exchange.owner(), exchange.exposure(), tile);
  }

  private void expose(int seat, ClaimChoice.Expose choice) {
    int tile = state.offered;
    int from = state.offeredBy;
    int kind = choice.kind() == ClaimChoice.Expose.AS_OFFERED ? tile : choice.kind();
    int jokers = choice.jokers() + (tile == Tile.JOKER ? 1 : 0);
    Exposure laid = Exposure.of(kind, choice.size(), jokers);
    paysForAll = PayAll.applies(state, seat);
    state.takeDiscard();
    state.closeWindow();
    state.expose(seat, tile, laid);
    listener.claimed(seat, from, tile, laid, window.also(), window.alsoMahjong());
  }

  private Outcome callDead() {
    if (!state.setup.rules().dead().called()) {
      return null;
    }
    for (int seat : deadCalls.call()) {
      state.events++;
      listener.died(seat);
    }
    if (state.liveSeats() > 1) {
      return null;
    }
    return end(state.setup.rules().dead().threeVoid() ? Outcome.How.VOID : Outcome.How.WALL_GAME);
  }

  private Outcome end(Outcome.How how) {
    state.events++;
    state.closeWindow();
    boolean[] live = new boolean[Seats.COUNT];
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      live[seat] = how == Outcome.How.WALL_GAME && !state.dead[seat];
    }
    return new Outcome(how, null, boxed(settlement.wallGame(live)), state.wallLeft());
  }

  private Outcome win(int seat, WinBy by, int from, int named) {
    int extra = state.offered;
    boolean bestLine = state.setup.rules().win().bestLine();
    int hand = state.wins.best(seat, extra, bestLine ? -1 : named, settlement);
    int line = state.setup.hands().lineOf(hand);
    int jokers = state.wins.jokers(seat, extra);
    Settlement.Way way =
        way(by, extra == GameState.NONE ? paysForAll : PayAll.applies(state, seat));
    boolean doubleDice = state.deal().die(0) == state.deal().die(1);
    int unit = settlement.unit(state.setup.hands().line(line), jokers);
    int[] points = settlement.win(seat, from, way, unit, doubleDice);
    boolean onOffer = extra != GameState.NONE;
    state.events++;
    listener.declared(
        seat, by, from, onOffer ? window.also() : 0, onOffer ? window.alsoMahjong() : 0);
    boolean jokerless = settlement.jokerless(state.setup.hands().line(line), jokers);
    Outcome.Win win = new Outcome.Win(seat, by, from, line, hand, jokers, jokerless);
    return new Outcome(Outcome.How.MAHJONG, win, boxed(points), state.wallLeft());
  }

  private static Settlement.Way way(WinBy by, boolean discarderPaysAll) {
    return switch (by) {
      case DRAW, DEAL -> Settlement.Way.SELF_DRAWN;
      case EXCHANGE -> Settlement.Way.EXCHANGE;
      case DISCARD -> discarderPaysAll ? Settlement.Way.DISCARD_PAYING_ALL : Settlement.Way.DISCARD;
    };
  }

  private static List<Integer> boxed(int[] points) {
    return Arrays.stream(points).boxed().toList();
  }

  /**
   * The seat that was asked last, for the report of a fault.
   *
   * @return 0 to 3
   */
  public int lastAsked() {
    return state.asked;
  }
}
