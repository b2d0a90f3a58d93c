package org.tallywall.core.play;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.BooleanSupplier;
import org.tallywall.core.rules.PassRules;
import org.tallywall.core.rules.WinRules;
import org.tallywall.core.tile.Rack;

/** The passes before play (section 2). */
final class Charleston {
  private static final List<PassStep> FIRST =
      List.of(PassStep.RIGHT_1, PassStep.ACROSS_1, PassStep.LEFT_1);
  private static final List<PassStep> SECOND =
      List.of(PassStep.LEFT_2, PassStep.ACROSS_2, PassStep.RIGHT_2);
  private static final int MAJORITY = 3;

  private final GameState state;
  private final Player[] players;
  private final GameListener listener;
  private final PassRules rules;
  private final BooleanSupplier eastDeclares;

  /**
   * The passes of a game.
   *
   * @param state the game
   * @param players who sits where
   * @param listener hears the events
   * @param eastDeclares whether East, asked now, declares a complete hand
   */
  Charleston(
      GameState state, Player[] players, GameListener listener, BooleanSupplier eastDeclares) {
    this.state = state;
    this.players = players;
    this.listener = listener;
    this.rules = state.setup.rules().charleston();
    this.eastDeclares = eastDeclares;
  }

  /**
   * Plays the passes.
   *
   * @return whether East declared between the rounds
   */
  boolean play() {
    if (rules.first()) {
      return firstRound(0);
    }
    courtesyIfAny();
    return false;
  }

  /**
   * Plays the passes from a moment on.
   *
   * @param moment where they are taken up
   * @return whether East declared between the rounds
   * @throws IllegalArgumentException if the rules have no such moment
   */
  boolean playFrom(PassMoment moment) {
    if (moment instanceof PassMoment.Step at) {
      int first = FIRST.indexOf(at.step());
      require(rules.first(), "no tiles are passed (rule 2.1)");
      if (first >= 0) {
        return firstRound(first);
      }
      require(rules.second() != PassRules.Second.NONE, "there is no second round (rule 2.1)");
      secondRound(SECOND.indexOf(at.step()));
    } else if (moment instanceof PassMoment.Stop) {
      require(asksStop(), "nobody is asked whether to stop (rule 2.4)");
      require(
          !rules.stopBeforeSeeing(),
          "whether to stop is asked while the first left is still on its way (rule 2.4.2)");
      afterFirst(false);
    } else {
      require(rules.courtesy(), "no tiles are given across (rule 2.5)");
      courtesy(moment instanceof PassMoment.CourtesyAgreed agreed ? agreed : null);
    }
    return false;
  }

  private static void require(boolean held, String otherwise) {
    if (!held) {
      throw new IllegalArgumentException("by these rules " + otherwise);
    }
  }

  private boolean firstRound(int from) {
    boolean stopped = false;
    for (PassStep step : FIRST.subList(from, FIRST.size())) {
      PassChoice[] choices = ask(step);
      boolean askNow = step == PassStep.LEFT_1 && asksStop() && rules.stopBeforeSeeing();
      int stoppers = askNow ? askStop() : 0;
      move(step, choices);
      if (askNow) {
        stopped = tellStop(stoppers);
      }
    }
    WinRules win = state.setup.rules().win();
    if (win.earthlyBetween() && eastDeclares.getAsBoolean()) {
      return true;
    }
    afterFirst(stopped);
    return false;
  }

  private void afterFirst(boolean stoppedBefore) {
    boolean stopped = stoppedBefore;
    if (asksStop() && !rules.stopBeforeSeeing()) {
      stopped = tellStop(askStop());
    }
    secondRound(stopped || rules.second() == PassRules.Second.NONE ? SECOND.size() : 0);
  }

  private void secondRound(int from) {
    for (PassStep step : SECOND.subList(from, SECOND.size())) {
      move(step, ask(step));
    }
    courtesyIfAny();
  }

  private void courtesyIfAny() {
    if (rules.courtesy()) {
      courtesy(null);
    }
  }

  private PassChoice[] ask(PassStep step) {
    PassChoice[] choices = new PassChoice[Seats.COUNT];
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      choices[seat] = players[seat].pass(state.views[seat], step, state.decision(step, seat));
      String fault = LegalMoves.passFault(state.views[seat], step, choices[seat]);
      if (fault != null) {
        throw new IllegalMoveException(seat, fault);
      }
    }
    return choices;
  }

  private void move(PassStep step, PassChoice[] choices) {
    BlindPasses moves = new BlindPasses(state, step, choices);
    List<Integer> blind = new ArrayList<>();
    for (PassChoice choice : choices) {
      blind.add(choice.blind());
    }
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      Rack rack = state.racks[seat];
      for (int tile : choices[seat].own()) {
        rack.remove(tile);
      }
      moves.received(seat).forEach(rack::add);
      state.wins.forget(seat);
      state.talk.passed(
          seat,
          new SeatView.PassSeen(
              step, list(choices[seat].own()), moves.received(seat), List.copyOf(blind)));
    }
    state.events += Seats.COUNT;
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      listener.passed(step, seat, choices[seat].own(), moves.forwarded(seat));
    }
  }

  private boolean asksStop() {
    return rules.second() == PassRules.Second.ANY_PLAYER_MAY_STOP
        || rules.second() == PassRules.Second.MAJORITY;
  }

  private int askStop() {
    int stoppers = 0;
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      if (players[seat].stops(state.views[seat], state.decision(Question.STOP, seat))) {
        stoppers |= 1 << seat;
      }
    }
    return stoppers;
  }

  private boolean tellStop(int stoppers) {
    boolean stopped =
        rules.second() == PassRules.Second.MAJORITY
            ? Integer.bitCount(stoppers) >= MAJORITY
            : stoppers != 0;
    for (int seat = 0; seat < Seats.COUNT && stopped; seat++) {
      boolean heard =
          rules.reveal() == PassRules.Reveal.ALL
              || (rules.reveal() == PassRules.Reveal.FIRST_STOPPER
                  && seat == Integer.numberOfTrailingZeros(stoppers));
      if (heard && (stoppers >> seat & 1) != 0) {
        state.talk.stopped(seat);
      }
    }
    state.events++;
    listener.stopAsked(stoppers);
    return stopped;
  }

  private void courtesy(PassMoment.CourtesyAgreed agreed) {
    int[] asked = new int[Seats.COUNT];
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      asked[seat] =
          agreed != null && seat % 2 == agreed.seat() % 2 ? agreed.number() : courtesyNumber(seat);
      if (asked[seat] < 0 || asked[seat] > 3) {
        throw new IllegalMoveException(
            seat, "a courtesy number is 0 to 3, not " + asked[seat] + " (rule 2.5.1)");
      }
    }
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      hear(seat, asked);
    }
    int[][] given = new int[Seats.COUNT][];
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      int number = Math.min(asked[seat], asked[Seats.across(seat)]);
      given[seat] = number == 0 ? new int[0] : courtesyTiles(seat, number);
    }
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      swap(seat, given[seat], given[Seats.across(seat)]);
    }
    state.events += 2;
    for (int low = 0; low < 2; low++) {
      int high = Seats.across(low);
      listener.courtesy(low, new int[] {asked[low], asked[high]}, given[low], given[high]);
    }
  }

  private int courtesyNumber(int seat) {
    return players[seat].courtesyNumber(
        state.views[seat], state.decision(Question.COURTESY_NUMBER, seat));
  }

  private int[] courtesyTiles(int seat, int number) {
    int[] tiles =
        players[seat].courtesyTiles(
            state.views[seat], number, state.decision(Question.COURTESY_TILES, seat));
    if (tiles == null || tiles.length != number) {
      throw new IllegalMoveException(
          seat, "the courtesy pass takes " + number + " tiles (rule 2.5.1)");
    }
    String fault = LegalMoves.tilesFault(state.views[seat], tiles);
    if (fault != null) {
      throw new IllegalMoveException(seat, fault);
    }
    int[] sorted = tiles.clone();
    Arrays.sort(sorted);
    return sorted;
  }

  private void hear(int seat, int[] asked) {
    int other = asked[Seats.across(seat)];
    boolean heard = rules.bothNumbers() || asked[seat] <= other;
    state.talk.asked(seat, heard ? asked[seat] : -1);
  }

  private void swap(int seat, int[] given, int[] received) {
    Rack rack = state.racks[seat];
    for (int tile : given) {
      rack.remove(tile);
    }
    for (int tile : received) {
      rack.add(tile);
    }
    state.wins.forget(seat);
    state.talk.passed(
        seat, new SeatView.PassSeen(null, list(given), list(received), List.of(0, 0, 0, 0)));
  }

  private static List<Integer> list(int[] tiles) {
    Integer[] boxed = new Integer[tiles.length];
    Arrays.setAll(boxed, at -> tiles[at]);
    return List.of(boxed);
  }
}
